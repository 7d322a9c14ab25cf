import { signal } from '@preact/signals';
import { registerSW } from 'virtual:pwa-register';
import type { Updates } from '../ui/Frame.tsx';

const LOOK_EVERY_MS = 3_600_000;
/** First the screen: what registers is fetched, and caches all the rest, once that stands. */
const REGISTER_AFTER_MS = 1_000;

/**
 * Registers the service worker and watches for a new version.
 *
 * A new version waits for the keeper's word. Half-filled forms are kept as they are typed, so that
 * a reload loses none.
 */
export function watchForUpdates(): Updates {
  const ready = signal(false);
  let change: ReturnType<typeof registerSW> | undefined;
  setTimeout(() => {
    change = registerSW({
      onNeedRefresh() {
        ready.value = true;
      },
      onRegisteredSW(_url, registration) {
        // An installed app can stay open for weeks.
        if (registration) setInterval(() => void registration.update(), LOOK_EVERY_MS);
      },
    });
  }, REGISTER_AFTER_MS);
  return { ready, apply: () => void change?.(true) };
}
