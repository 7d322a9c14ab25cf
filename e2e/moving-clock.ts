import { expect, type Page } from '@playwright/test';

const CHANNEL = 'moving-clock';

/**
 * A script to be put before a page's or the desk's: the clock it reads starts at a moment, and jumps
 * where `setClock` says. Unlike a reload under another clock this needs no network.
 */
export const movingClock = (startIso: string): string => `{
  const RealDate = Date;
  let aheadMs = ${Date.parse(startIso)} - RealDate.now();
  globalThis.Date = class extends RealDate {
    constructor(...given) {
      super(...(given.length === 0 ? [RealDate.now() + aheadMs] : given));
    }
    static now() {
      return RealDate.now() + aheadMs;
    }
  };
  globalThis.movingClock = new BroadcastChannel('${CHANNEL}');
  globalThis.movingClock.onmessage = ({ data }) => {
    aheadMs = data - RealDate.now();
  };
}`;

/** Time passes, and the app comes back to the front; `night` is what tonight's list then says. */
export async function setClock(page: Page, iso: string, night: string): Promise<void> {
  await page.evaluate(() => {
    location.hash = '/tonight';
  });
  await page.evaluate(
    ([name, ms]) => {
      const channel = new BroadcastChannel(String(name));
      channel.postMessage(ms);
      channel.close();
    },
    [CHANNEL, Date.parse(iso)],
  );
  await expect(async () => {
    await page.evaluate(() => document.dispatchEvent(new Event('visibilitychange')));
    await expect(page.getByText(`Night of ${night}`)).toBeVisible({ timeout: 1_000 });
  }).toPass();
}
