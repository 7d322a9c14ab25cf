import { EVENING_TAG } from './tag.ts';

type Engine = typeof import('./evening/tell-this-evening.ts');

declare const self: ServiceWorkerGlobalScope & {
  /** What the engine's file leaves behind. */
  readonly evening?: Engine;
};

/** Not among TypeScript's own yet. Source: WICG Periodic Background Synchronization. */
interface PeriodicSyncEvent extends ExtendableEvent {
  readonly tag: string;
}

// The platform wakes us when it likes. The engine is ten times this worker, so it is a file of its
// own: a worker that only serves the app is not to read it. A service worker may fetch no script once
// it is installed, but may run again what it ran while it was. Source: W3C Service Workers Nightly,
// `importScripts(urls)`.
const ENGINE = 'evening.js';

self.addEventListener('install', () => {
  try {
    importScripts(ENGINE);
  } catch {
    // Without reminders, the app is still served.
  }
});

self.addEventListener('periodicsync', (event) => {
  const { tag } = event as PeriodicSyncEvent;
  if (tag !== EVENING_TAG) return;
  importScripts(ENGINE);
  (event as PeriodicSyncEvent).waitUntil(self.evening?.tellThisEvening() ?? Promise.resolve());
});

self.addEventListener('notificationclick', (event) => {
  event.notification.close();
  event.waitUntil(openTonight());
});

/** In the window that is open, where one is: what is half typed there is kept. */
async function openTonight(): Promise<void> {
  const url = `${self.registration.scope}#/tonight`;
  const [open] = await self.clients.matchAll({ type: 'window' });
  if (open) await (await open.navigate(url))?.focus();
  else await self.clients.openWindow(url);
}
