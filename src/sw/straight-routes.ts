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

/** Where the build puts every file whose name is its hash. */
const HASHED = 'assets/';

/**
 * Routes to the files that keep their names, each for itself, and one for all that are named by
 * their hash: the browser reads every route again at each start, before it asks for the page.
 *
 * For an address that is not in its cache the browser turns to the network, so all else is left to
 * the worker.
 */
export function straightRoutes(
  scope: string,
  entries: readonly Entry[],
  caches: { readonly front: string; readonly hashed: string },
): readonly StraightRoute[] {
  const route = (url: string, cacheName: string, further = ''): StraightRoute => ({
    condition: {
      urlPattern: { pathname: exactly(new URL(url, scope).pathname) + further, search: '' },
    },
    source: { cacheName },
  });
  return [
    route('', caches.front),
    ...changingFiles(entries).map((url) => route(url, caches.front)),
    route(HASHED, caches.hashed, '*'),
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
