/**
 * Hands a file to the system's share sheet where there is one, else saves it as a download.
 *
 * Resolves to false when the keeper turned away.
 */
export async function saveFile(
  name: string,
  contents: string | Blob,
  type: 'text/plain' | 'text/calendar' | 'text/csv' | 'application/zip' = 'text/plain',
): Promise<boolean> {
  const file = new File([contents], name, { type });
  // Absent on most desktops, whatever the types say.
  const canShare =
    (navigator.canShare as unknown) !== undefined && navigator.canShare({ files: [file] });
  if (canShare) {
    try {
      await navigator.share({ files: [file], title: name });
      return true;
    } catch (error) {
      if (error instanceof DOMException && error.name === 'AbortError') return false;
      // Sharing failed, as after a slow start: a download still works.
    }
  }
  const url = URL.createObjectURL(file);
  const link = document.createElement('a');
  link.href = url;
  link.download = name;
  link.click();
  // Revoked later: some browsers begin the download only after this turn.
  setTimeout(() => URL.revokeObjectURL(url), 60_000);
  return true;
}
