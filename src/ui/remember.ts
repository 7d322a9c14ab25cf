// Small things this browser remembers for the screens: light, camera, half-typed forms. Never records.

/** Reads a remembered text. A browser that refuses storage remembers nothing. */
export function remembered(key: string): string | undefined {
  try {
    return localStorage.getItem(`nightdrop.${key}`) ?? undefined;
  } catch {
    return undefined;
  }
}

/** Remembers a text, or forgets it. Written at once: a draft must survive the next moment. */
export function remember(key: string, value: string | undefined): void {
  try {
    if (value === undefined || value === '') localStorage.removeItem(`nightdrop.${key}`);
    else localStorage.setItem(`nightdrop.${key}`, value);
  } catch {
    // A private window: the draft lives as long as the screen.
  }
}

/** Tells what another tab of this browser remembers from now on. */
export function followRemembered(key: string, tell: (value: string | null) => void): void {
  addEventListener('storage', (event) => {
    if (event.key === `nightdrop.${key}`) tell(event.newValue);
  });
}
