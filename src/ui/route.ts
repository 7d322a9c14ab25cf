import { computed, signal } from '@preact/signals';

// Routes live behind the hash, so that the app runs from any folder of any host and reloads offline.

const current = (): string => decodeURIComponent(location.hash.slice(1)) || '/tonight';

export const path = signal(current());

addEventListener('hashchange', () => {
  path.value = current();
  scrollTo(0, 0);
});

/** The parts of the route: `#/rack/k-…` is `['rack', 'k-…']`. */
export const parts = computed(() => path.value.split('/').filter((part) => part !== ''));

/**
 * Whether a route is a label's code, as the phone's own camera opens it: `#/7KQ2M9X`. Screens are
 * named in lower case and codes printed in upper case.
 */
export const looksLikeCode = ([first = '']: readonly string[]): boolean =>
  /^[0-9A-Z]{7}$/.test(first);

export const go = (to: string): void => {
  location.hash = to;
};

/** Without a step in the history: going back must not lead here again. */
export const goInstead = (to: string): void => location.replace(`#${to}`);

export function goBack(): void {
  if (history.length > 1) history.back();
  else go('/tonight');
}

/** What a label's link begins with, wherever this copy of the app is served from. */
export const linkBase = (): string => `${location.origin}${location.pathname}`;
