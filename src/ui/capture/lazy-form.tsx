import { lazy } from '../lazy.tsx';

const load = async () => (await import('./CaptureForm.tsx')).CaptureForm;

/** The forms, apart from the screen that opens them: it stands before they are fetched. */
export const LazyForm = lazy(load, null);

/** How long the screen stands before its forms are fetched. */
const FETCH_AFTER_MS = 250;

/** Has the forms ready before a thumb asks for one; returns how to call it off. */
export function fetchFormsSoon(): () => void {
  const timer = setTimeout(() => {
    // Asked for again, and complained of, when one is opened.
    load().catch(() => undefined);
  }, FETCH_AFTER_MS);
  return () => clearTimeout(timer);
}
