import { expect, test, type BrowserContext, type Page } from '@playwright/test';
import { clockFrom } from './clock-from.ts';
import {
  addSnakes,
  begin,
  beginWithThree,
  makeRack,
  walkTo,
  walkToSnake,
  written,
} from './keeper.ts';
import { serve, type Served } from './serve.ts';
import { openWithoutProgram } from './without-program.ts';

// The page shows tonight as it was last seen until the desk has read its records. Here the desk's
// words are held back, so that what is shown meanwhile can be looked at for as long as it takes.

let served: Served | undefined;
test.afterEach(() => served?.stop());

declare global {
  interface Window {
    letDeskSpeak?: () => void;
  }
}

const holdDeskBack = (page: Page): Promise<unknown> =>
  page.addInitScript(() => {
    const gate = new Promise<void>((resolve) => {
      window.letDeskSpeak = resolve;
    });
    const Real = Worker;
    window.Worker = class extends Real {
      override addEventListener(type: string, heard: EventListenerOrEventListenerObject) {
        super.addEventListener(type, (event) => {
          void gate.then(() => (typeof heard === 'function' ? heard(event) : undefined));
        });
      }
    };
  });

const letDeskSpeak = (page: Page): Promise<void> => page.evaluate(() => window.letDeskSpeak?.());

const stops = (page: Page) => page.locator('.stop-link');
const asLastSeen = (page: Page) => page.getByText(/as last worked out/);

/** Marrow's line, while it asks for a meal. Her season may ask for more. */
const marrowToFeed = (page: Page) =>
  stops(page)
    .filter({ hasText: 'Marrow' })
    .filter({ hasText: /Feed \d/ });

const lastSeen = (page: Page) =>
  page.evaluate(() => localStorage.getItem('nightdrop.last-seen') ?? '');

/** A collection of three whose list of tonight has been remembered; answers what it says. */
async function rememberTonight(page: Page, url: string): Promise<readonly string[]> {
  await beginWithThree(page, url);
  await walkTo(page, '/tonight');
  await expect(stops(page)).toHaveCount(3);
  await expect(marrowToFeed(page)).toHaveCount(1);
  await expect.poll(() => lastSeen(page)).toContain('Flint');
  return stops(page).allInnerTexts();
}

async function openHeldBack(context: BrowserContext, url: string, clock?: string): Promise<Page> {
  const page = await context.newPage();
  if (clock !== undefined) await page.addInitScript({ content: clockFrom(clock) });
  await holdDeskBack(page);
  await page.goto(`${url}#/tonight`);
  return page;
}

test('reopened without a network, tonight is there before the desk, and a tap waits for it', async ({
  page,
  context,
}) => {
  served = await serve();
  const { url } = served;
  const before = await rememberTonight(page, url);
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
  });
  await page.close();
  await context.setOffline(true);
  await served.stop();

  const again = await openHeldBack(context, url);
  await expect(stops(again)).toHaveText(
    before.map((line) => new RegExp(line.split('\n')[0] ?? '')),
  );
  expect(await stops(again).allInnerTexts()).toEqual(before);
  await expect(asLastSeen(again)).toBeVisible();
  await again.getByText('Why Marrow').click();
  await expect(again.getByText(/^Rule F1/).first()).toBeVisible();

  // Opened from its cache straight away: no service worker was started for it.
  const workerStart = await again.evaluate(
    () => performance.getEntriesByType('navigation').map((each) => each.toJSON())[0]?.workerStart,
  );
  expect(workerStart).toBe(0);

  await again.getByRole('link', { name: /Marrow/ }).click();
  await letDeskSpeak(again);
  await expect(again.getByRole('heading', { level: 1, name: 'Marrow' })).toBeVisible();
  await again.getByRole('button', { name: /^Ate/ }).click();
  await written(again, 'Marrow ate').waitFor();
  await walkTo(again, '/tonight');
  await expect(stops(again).first()).toBeVisible();
  await expect(marrowToFeed(again)).toHaveCount(0);
  await expect(asLastSeen(again)).toBeHidden();
});

test.describe('before there is a program', () => {
  test.use({ serviceWorkers: 'block' });

  test('tonight can be read, and what a thumb is on stays in its place when it comes', async ({
    page,
    context,
  }) => {
    served = await serve();
    const before = await rememberTonight(page, served.url);
    const { page: again, letCome } = await openWithoutProgram(context, served.url);
    expect(await stops(again).allInnerTexts()).toEqual(before);
    await expect(asLastSeen(again)).toBeVisible();
    await expect(again.getByRole('navigation', { name: 'Places' })).toBeVisible();
    await expect(again.getByText(/^Nightdrop is opening/)).toBeHidden();
    const line = await marrowToFeed(again).elementHandle();
    const place = await line?.boundingBox();

    letCome();
    await expect(asLastSeen(again)).toBeHidden();
    expect(await line?.evaluate((element) => element.isConnected)).toBe(true);
    expect(await line?.boundingBox()).toEqual(place);
    await again.getByText('Why Marrow').click();
    await expect(again.getByText(/^Rule F1/).first()).toBeVisible();
  });

  test('a tap is followed as soon as it comes', async ({ page, context }) => {
    served = await serve();
    await rememberTonight(page, served.url);
    const { page: again, letCome } = await openWithoutProgram(context, served.url);
    await again.getByRole('link', { name: /Marrow/ }).click();
    await expect(again).toHaveURL(/#\/snake\//);
    letCome();
    await expect(again.getByRole('heading', { level: 1, name: 'Marrow' })).toBeVisible();
    await expect(stops(again)).toHaveCount(0);
  });

  test('what is unfolded by then has its reasons', async ({ page, context }) => {
    served = await serve();
    await rememberTonight(page, served.url);
    const { page: again, letCome } = await openWithoutProgram(context, served.url);
    await again.getByText('Why Marrow').click();
    letCome();
    await expect(again.getByText(/^Rule F1/).first()).toBeVisible();
    await again.getByText('Why Marrow').click();
    await expect(again.getByText(/^Rule F1/)).toHaveCount(0);
  });

  test('a name that looks like a page stays a name', async ({ page, context }) => {
    served = await serve();
    const name = '<img src=x onerror=alert(1)><b>Bold</b>';
    await begin(page, served.url);
    await makeRack(page, 'B');
    await addSnakes(page, [`${name}, f, B1-1, 1500 g, 2021-07-14`]);
    await walkTo(page, '/tonight');
    await expect(stops(page)).toHaveCount(1);
    await expect.poll(() => lastSeen(page)).toContain('Bold');
    const { page: again, letCome } = await openWithoutProgram(context, served.url);
    await expect(stops(again)).toContainText(name);
    await expect(again.locator('img, b')).toHaveCount(0);
    letCome();
    await expect(asLastSeen(again)).toBeHidden();
    await expect(stops(again)).toContainText(name);
  });

  test('the light of the room is there, and masses are in the keeper’s unit', async ({
    page,
    context,
  }) => {
    served = await serve();
    await rememberTonight(page, served.url);
    await walkTo(page, '/shelf');
    await page.getByRole('button', { name: 'Red' }).click();
    await page.getByRole('button', { name: 'Use lb and oz' }).click();
    await expect
      .poll(
        async () =>
          (JSON.parse(await lastSeen(page)) as { tonight: { html: string } }).tonight.html,
      )
      .toMatch(/\d oz/);
    const { page: again, letCome } = await openWithoutProgram(context, served.url);
    await expect(again.locator('html')).toHaveAttribute('data-light', 'red');
    await expect(stops(again).filter({ hasText: /\d oz/ }).first()).toBeVisible();
    letCome();
    await expect(asLastSeen(again)).toBeHidden();
    await expect(stops(again).filter({ hasText: /\d oz/ }).first()).toBeVisible();
  });
});

test('what another tab has written meanwhile is in the list as soon as the desk speaks', async ({
  page,
  context,
}) => {
  served = await serve();
  await rememberTonight(page, served.url);
  const other = await openHeldBack(context, served.url);
  await expect(marrowToFeed(other)).toHaveCount(1);

  await walkToSnake(page, 'Marrow');
  await page.getByRole('button', { name: /^Ate/ }).click();
  await written(page, 'Marrow ate').waitFor();
  await expect(asLastSeen(other)).toBeVisible();

  await letDeskSpeak(other);
  await expect(asLastSeen(other)).toBeHidden({ timeout: 1_000 });
  await expect(marrowToFeed(other)).toHaveCount(0);
  // And it is remembered so: the next start shows no meal that was eaten.
  await expect.poll(() => lastSeen(page)).toContain('"feed":2');
});

test.describe('when the night has turned', () => {
  test.use({ timezoneId: 'Europe/Berlin', serviceWorkers: 'block' });

  const evening = '2026-11-24T21:30:00+01:00';
  for (const { moment, night, isShown } of [
    { moment: '2026-11-25T11:50:00+01:00', night: 'Tue 24 Nov', isShown: true },
    // The night between may have its list too, worked out ahead.
    { moment: '2026-11-26T12:10:00+01:00', night: 'Thu 26 Nov', isShown: false },
    { moment: '2026-11-26T20:00:00+01:00', night: 'Thu 26 Nov', isShown: false },
  ]) {
    const what = isShown ? 'still' : 'no longer';
    test(`at ${moment} the list of the evening before is ${what} shown as tonight’s`, async ({
      page,
      context,
    }) => {
      let now = evening;
      served = await serve({ beforeDesk: () => clockFrom(now) });
      await page.addInitScript({ content: clockFrom(evening) });
      await rememberTonight(page, served.url);
      await page.close();

      now = moment;
      const again = await openHeldBack(context, served.url, moment);
      await expect(again.locator(isShown ? '.stop' : 'main[aria-busy=true]').first()).toBeVisible();
      await expect(stops(again)).toHaveCount(isShown ? 3 : 0);
      await letDeskSpeak(again);
      await expect(again.getByText(`Night of ${night}`, { exact: true })).toBeVisible();
      await expect(stops(again)).toHaveCount(3);
    });
  }
});

test('the first start of the next evening has its list too, worked out ahead', async ({
  page,
  context,
}) => {
  served = await serve();
  await beginWithThree(page, served.url);
  await walkToSnake(page, 'Marrow');
  await page.getByRole('button', { name: /^Ate/ }).click();
  await written(page, 'Marrow ate').waitFor();
  await expect.poll(() => lastSeen(page), { timeout: 20_000 }).toContain('"tomorrow"');

  const inADay = new Date(Date.now() + 86_400_000).toISOString();
  const next = await openHeldBack(context, served.url, inADay);
  await expect(asLastSeen(next)).toBeVisible();
  // Fed tonight, she is not hungry tomorrow; the two that were not fed still are.
  await expect(marrowToFeed(next)).toHaveCount(0);
  await expect(stops(next).filter({ hasText: /Feed \d/ })).toHaveCount(2);
});
