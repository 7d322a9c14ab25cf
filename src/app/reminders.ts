import type { Desk } from '../domain/desk.ts';
import { EVENING_TAG } from '../sw/tag.ts';
import type { Reminders, RemindersState } from '../ui/reminders.ts';
import { remember } from '../ui/remember.ts';

/** How often we ask to be woken. The platform has the last word, and mostly takes longer. */
const WAKE_EVERY_MS = 6 * 3_600_000;

/** Not among TypeScript's own yet. Source: WICG Periodic Background Synchronization. */
interface Wakeable extends ServiceWorkerRegistration {
  readonly periodicSync: {
    register(tag: string, options: { readonly minInterval: number }): Promise<void>;
    unregister(tag: string): Promise<void>;
    getTags(): Promise<readonly string[]>;
  };
}

// Whatever the types say, each of these is missing somewhere.
const icon: Partial<Pick<Navigator, 'setAppBadge' | 'clearAppBadge'>> = navigator;
const canWake =
  'serviceWorker' in navigator && 'PeriodicSyncManager' in window && 'Notification' in window;

const registration = async (): Promise<Wakeable | undefined> =>
  (await navigator.serviceWorker.getRegistration()) as Wakeable | undefined;

let letGo: (() => void) | undefined;

/** Keeps the number on the app's icon while a page is open; the service worker does it after. */
export function keepIcon(desk: Desk): void {
  letGo ??= desk.watch('evening', null, (evening) => {
    if (!evening) return;
    void putOnIcon(evening.count);
    if (evening.count === 0) void takeBack();
  });
}

/** A device that shows no numbers may refuse. */
const putOnIcon = async (count: number): Promise<void> =>
  (count > 0 ? icon.setAppBadge?.(count) : icon.clearAppBadge?.())?.catch(() => undefined);

/** What was said of an evening that is done. */
async function takeBack(): Promise<void> {
  const shown = await (await registration())?.getNotifications({ tag: EVENING_TAG });
  for (const each of shown ?? []) each.close();
}

async function state(): Promise<RemindersState> {
  if (!canWake) return 'unable';
  if (Notification.permission === 'denied') return 'blocked';
  const tags = await (await registration())?.periodicSync.getTags();
  return tags?.includes(EVENING_TAG) && Notification.permission === 'granted' ? 'on' : 'off';
}

export const createReminders = (desk: Desk): Reminders => ({
  canNumberIcon: icon.setAppBadge !== undefined,
  state,

  async turnOn() {
    if (!canWake) return 'unable';
    if ((await Notification.requestPermission()) !== 'granted') return state();
    const wakeable = await registration();
    if (!wakeable) return 'not-ready';
    try {
      await wakeable.periodicSync.register(EVENING_TAG, { minInterval: WAKE_EVERY_MS });
    } catch (error) {
      if (error instanceof DOMException && error.name === 'NotAllowedError') return 'not-installed';
      throw error;
    }
    remember('reminders', 'on');
    keepIcon(desk);
    return state();
  },

  async turnOff() {
    remember('reminders', undefined);
    letGo?.();
    letGo = undefined;
    await (await registration())?.periodicSync.unregister(EVENING_TAG);
    await Promise.all([putOnIcon(0), takeBack()]);
    return state();
  },
});
