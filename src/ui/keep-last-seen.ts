import { effect } from '@preact/signals';
import type { Desk, DeskStatus } from '../domain/desk.ts';
import type { TonightView } from '../domain/views/tonight-view.ts';
import { firstLines, LAST_SEEN, writeLastSeen } from './last-seen.ts';
import { massUnit } from './mass-unit.ts';
import { remember } from './remember.ts';

/** How long nothing has changed before it is remembered anew: a tap must not wait for it. */
const QUIET_MS = 800;
/** And how long before the next night's list is worked out, which keeps the desk from other work. */
const AT_REST_MS = 6_000;

/**
 * Remembers tonight for the next start, a quiet moment after each change and when the page is left;
 * and the next night's list when all is at rest.
 *
 * `onFresh` is told each time the desk's own list has come.
 */
export function keepLastSeen(desk: Desk, build: string, onFresh: () => void): void {
  let status: DeskStatus | undefined;
  let timer: number | undefined;
  let unwatch: (() => void) | undefined;
  /** Asked for once and let go: kept open, it would be worked out again with every tap. */
  const askOnce = (list: 'tonight' | 'tomorrow', then: (view: TonightView) => void): void => {
    unwatch?.();
    unwatch = desk.watch(list, null, (view) => {
      unwatch?.();
      unwatch = undefined;
      then(view);
    });
  };
  const look = (): void => {
    clearTimeout(timer);
    timer = undefined;
    askOnce('tonight', (list) => {
      onFresh();
      void keep(list).catch(() => undefined); // What draws it did not come: another time.
    });
  };
  const keep = async (list: TonightView): Promise<void> => {
    if (!status) return;
    const of = status;
    const { firstSight } = await import('./first-sight.tsx');
    const seen = (view: TonightView) => {
      const tonight = firstLines(view);
      return { status: of, tonight, html: firstSight(of, tonight) };
    };
    const tonight = seen(list);
    remember(LAST_SEEN, writeLastSeen({ build, tonight }));
    if (timer !== undefined) return; // Something has changed meanwhile.
    timer = window.setTimeout(() => {
      timer = undefined;
      askOnce('tomorrow', (next) =>
        remember(LAST_SEEN, writeLastSeen({ build, tonight, tomorrow: seen(next) })),
      );
    }, AT_REST_MS);
  };
  const lookWhenQuiet = (): void => {
    unwatch?.();
    clearTimeout(timer);
    timer = window.setTimeout(look, QUIET_MS);
  };
  desk.watch('status', null, (next) => {
    status = next;
    lookWhenQuiet();
  });
  effect(() => {
    massUnit(); // In another unit, it is drawn otherwise.
    if (status) lookWhenQuiet();
  });
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden' && timer !== undefined) look();
  });
}
