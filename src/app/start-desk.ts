import { createDeskClient } from './desk-client.ts';

/** Imported before the screens, so that the desk opens its records while they are being read. */
export const desk = createDeskClient(
  // Where the page is served from its sources, nothing has started it yet.
  window.desk ??
    new Worker(new URL('../worker/worker.ts', import.meta.url), { type: 'module', name: 'desk' }),
);
