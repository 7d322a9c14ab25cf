import { clientsClaim } from 'workbox-core';
import { cleanupOutdatedCaches, PrecacheController, PrecacheRoute } from 'workbox-precaching';
import { NavigationRoute, registerRoute } from 'workbox-routing';
import {
  changingFiles,
  frontName,
  isOldFront,
  layRoutes,
  straightRoutes,
  type Entry,
} from './straight-routes.ts';
import { withoutVary } from './without-vary.ts';
import './wake.ts';

declare const self: ServiceWorkerGlobalScope & {
  /** Put in at build time: every file of this build. */
  readonly __WB_MANIFEST: readonly Entry[];
};

const files = self.__WB_MANIFEST;
const { scope } = self.registration;
const kept = new PrecacheController({
  plugins: [{ cacheWillUpdate: ({ response }) => Promise.resolve(withoutVary(response)) }],
});
kept.addToCacheList([...files]);
const front = frontName(files);

// Everything is fetched at install, so that a version is here whole or not at all.
self.addEventListener('install', (event) => {
  const routes = straightRoutes(scope, files, { front, hashed: kept.strategy.cacheName });
  event.waitUntil(layRoutes(event, routes));
  event.waitUntil(kept.install(event).then(fillFront));
});
self.addEventListener('activate', (event) => {
  event.waitUntil(kept.activate(event));
  event.waitUntil(dropOldFronts());
});
cleanupOutdatedCaches();
registerRoute(new PrecacheRoute(kept));
registerRoute(new NavigationRoute(kept.createHandlerBoundToURL('index.html')));

/** The few files that keep their names, under the very addresses they are asked for by. */
async function fillFront(): Promise<void> {
  const cache = await caches.open(front);
  const keep = async (url: string, as: string): Promise<void> => {
    const response = await kept.matchPrecache(url);
    if (response) await cache.put(new URL(as, scope), response);
  };
  await Promise.all([keep('index.html', ''), ...changingFiles(files).map((url) => keep(url, url))]);
}

async function dropOldFronts(): Promise<void> {
  const names = await caches.keys();
  await Promise.all(
    names.filter((name) => isOldFront(name, front)).map((name) => caches.delete(name)),
  );
}

// The first visit works offline from its first minute, not only from the second visit.
clientsClaim();

// A waiting version takes over only when the page says so.
self.addEventListener('message', (event) => {
  if ((event.data as { type?: string } | undefined)?.type === 'SKIP_WAITING') {
    void self.skipWaiting();
  }
});
