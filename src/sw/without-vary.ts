/**
 * A file as it is kept: without `Vary`. Some hosts vary their files by `Origin`, which the page's own
 * scripts send and the install does not, so that a file kept with it would not be found again.
 *
 * An answer that is an error is not kept at all.
 */
export function withoutVary(response: Response): Response | null {
  if (response.status >= 400) return null;
  const headers = new Headers(response.headers);
  headers.delete('vary');
  const { status, statusText } = response;
  return new Response(response.body, { status, statusText, headers });
}
