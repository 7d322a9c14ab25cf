import { clientsClaim } from 'workbox-core';
import {
  cleanupOutdatedCaches,
  createHandlerBoundToURL,
  precacheAndRoute,
} from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';
import './wake.ts';

declare const self: ServiceWorkerGlobalScope & {
  /** Put in at build time: every file of this build. */
  readonly __WB_MANIFEST: (string | { url: string; revision: string | null })[];
};

// Everything is fetched at install, so that a version is here whole or not at all.
precacheAndRoute(self.__WB_MANIFEST);
cleanupOutdatedCaches();
registerRoute(new NavigationRoute(createHandlerBoundToURL('index.html')));

// The first visit works offline from its first minute, not only from the second visit.
clientsClaim();

// A waiting version takes over only when the page says so.
self.addEventListener('message', (event) => {
  if ((event.data as { type?: string } | undefined)?.type === 'SKIP_WAITING') {
    void self.skipWaiting();
  }
});
