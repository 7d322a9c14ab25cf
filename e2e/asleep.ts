import { expect, type CDPSession, type Worker } from '@playwright/test';
import { clockFromEvening } from './clock-from.ts';
import { startRealBrowser, type RealBrowser } from './real-browser.ts';
import type { Served } from './serve.ts';

/**
 * Put before the service worker's script. It is evening, whenever this runs. And what is asked of the
 * platform is noted as it is passed on: a browser without a window has no icon to look at.
 */
export const NOTING = `${clockFromEvening()}
self.asked = { icon: [], said: [] };
{
  const { setAppBadge, clearAppBadge } = WorkerNavigator.prototype;
  WorkerNavigator.prototype.setAppBadge = async function (count) {
    await setAppBadge.call(this, count);
    self.asked.icon.push(count);
  };
  WorkerNavigator.prototype.clearAppBadge = async function () {
    await clearAppBadge.call(this);
    self.asked.icon.push(0);
  };
  const { showNotification } = ServiceWorkerRegistration.prototype;
  ServiceWorkerRegistration.prototype.showNotification = async function (title, options) {
    await showNotification.call(this, title, options);
    self.asked.said.push(title + (options.silent ? ', quietly' : ''));
  };
}
`;

export interface Asked {
  /** Every number put on the icon, and accepted. */
  readonly icon: readonly number[];
  readonly said: readonly string[];
}

export interface Shown {
  readonly title: string;
  readonly body: string;
}

/** The app with no page of it open, and the platform that may wake it. */
export class Sleep {
  #registrationId: string | undefined;
  readonly #browser: RealBrowser;
  readonly #devTools: CDPSession;
  readonly #served: Served;

  constructor(browser: RealBrowser, devTools: CDPSession, served: Served) {
    this.#browser = browser;
    this.#devTools = devTools;
    this.#served = served;
    devTools.on('ServiceWorker.workerRegistrationUpdated', ({ registrations }) => {
      for (const { registrationId, scopeURL } of registrations) {
        if (scopeURL === served.url) this.#registrationId = registrationId;
      }
    });
  }

  /** As the platform does at its own pace; answers once the handler is done. */
  async wake(tag = 'evening'): Promise<void> {
    await this.#devTools.send('ServiceWorker.enable');
    await expect.poll(() => this.#registrationId).toBeDefined();
    await this.#devTools.send('ServiceWorker.dispatchPeriodicSyncEvent', {
      origin: this.#served.origin,
      registrationId: this.#registrationId ?? '',
      tag,
    });
  }

  async worker(): Promise<Worker> {
    const { context } = this.#browser;
    const isOurs = (worker: Worker) => worker.url() === `${this.#served.url}sw.js`;
    return (
      context.serviceWorkers().find(isOurs) ??
      (await context.waitForEvent('serviceworker', { predicate: isOurs }))
    );
  }

  /** What the handler has asked for since the worker started. */
  async asked(): Promise<Asked> {
    return (await this.worker()).evaluate(() => (globalThis as unknown as { asked: Asked }).asked);
  }

  async notifications(): Promise<readonly Shown[]> {
    return (await this.worker()).evaluate(async () => {
      const { registration } = globalThis as unknown as {
        registration: ServiceWorkerRegistration;
      };
      return (await registration.getNotifications()).map(({ title, body }) => ({ title, body }));
    });
  }

  async openWindows(): Promise<number> {
    return (await this.worker()).evaluate(async () => {
      const { clients } = globalThis as unknown as {
        clients: { matchAll(options: object): Promise<readonly unknown[]> };
      };
      return (await clients.matchAll({ type: 'window', includeUncontrolled: true })).length;
    });
  }
}

/** A browser as on a phone, in which the keeper has agreed to both things that need it. */
export async function startAgreed(
  profile: string,
  served: Served,
): Promise<{ readonly browser: RealBrowser; readonly sleep: Sleep }> {
  const browser = await startRealBrowser(profile);
  const { context } = browser;
  // Of no origin, and there all the time: the browser must not end with the last page of the app.
  const empty = await context.newPage();
  const devTools = await context.newCDPSession(empty);
  for (const name of ['notifications', 'periodic-background-sync']) {
    await devTools.send('Browser.setPermission', {
      permission: { name },
      setting: 'granted',
      origin: served.origin,
    });
  }
  return { browser, sleep: new Sleep(browser, devTools, served) };
}
