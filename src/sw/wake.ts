import { EVENING_TAG } from './tag.ts';

declare const self: ServiceWorkerGlobalScope;

/** Not among TypeScript's own yet. Source: WICG Periodic Background Synchronization. */
interface PeriodicSyncEvent extends ExtendableEvent {
  readonly tag: string;
}

// The platform wakes us when it likes. The engine lies in this file too, since a service worker can
// fetch no module later, but it is run only now: where it is broken, the app is still served.
self.addEventListener('periodicsync', (event) => {
  const { tag } = event as PeriodicSyncEvent;
  if (tag !== EVENING_TAG) return;
  (event as PeriodicSyncEvent).waitUntil(
    import('./evening/tell-this-evening.ts').then(({ tellThisEvening }) => tellThisEvening()),
  );
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
