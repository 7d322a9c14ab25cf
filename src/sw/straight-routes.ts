// Where the browser can be told beforehand which cache answers for which address, it opens the app
// without starting this worker first. A browser that cannot be told asks the worker, as ever.
// Source: W3C Service Workers Nightly, `InstallEvent.addRoutes`.

/** One file of this build, as the build lists it; without a revision where its name has a hash. */
export type Entry = string | { readonly url: string; readonly revision: string | null };

interface StraightRoute {
  readonly condition: { readonly urlPattern: { readonly pathname: string; readonly search: '' } };
  readonly source: { readonly cacheName: string };
}

interface Routable extends ExtendableEvent {
  readonly addRoutes?: (routes: readonly StraightRoute[]) => Promise<void>;
}

const OURS = 'nightdrop-front-';

/** Files whose name stays while they change: the cache they answer from must be of one version. */
export const changingFiles = (entries: readonly Entry[]): readonly string[] =>
  entries.flatMap((entry) =>
    typeof entry !== 'string' && entry.revision !== null ? [entry.url] : [],
  );

/** A name for the front of this very build: any changed file gives another. */
export const frontName = (entries: readonly Entry[]): string =>
  OURS +
  entries
    .flatMap((entry) => (typeof entry === 'string' ? [] : [entry.revision ?? '']))
    .map((revision) => revision.slice(0, 6))
    .join('');

export const isOldFront = (name: string, current: string): boolean =>
  name.startsWith(OURS) && name !== current;

/**
 * Routes to exact addresses only. For an address that is not in its cache the browser would turn to
 * the network, so all else is left to the worker.
 */
export function straightRoutes(
  scope: string,
  entries: readonly Entry[],
  caches: { readonly front: string; readonly hashed: string },
): readonly StraightRoute[] {
  const route = (url: string, cacheName: string): StraightRoute => ({
    condition: { urlPattern: { pathname: exactly(new URL(url, scope).pathname), search: '' } },
    source: { cacheName },
  });
  const changing = changingFiles(entries);
  const hashed = entries
    .map((entry) => (typeof entry === 'string' ? entry : entry.url))
    .filter((url) => !changing.includes(url));
  return [
    route('', caches.front),
    ...changing.map((url) => route(url, caches.front)),
    ...hashed.map((url) => route(url, caches.hashed)),
  ];
}

/** Signs that mean something in a pattern, taken as themselves. */
const exactly = (path: string): string => path.replaceAll(/[\\:*?+(){}]/g, String.raw`\$&`);

/** Errors: none. A browser that refuses the routes goes the long way. */
export async function layRoutes(
  event: ExtendableEvent,
  routes: readonly StraightRoute[],
): Promise<void> {
  try {
    await (event as Routable).addRoutes?.(routes);
  } catch {
    // Another wording of the standard than ours.
  }
}
