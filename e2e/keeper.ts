import { readFile } from 'node:fs/promises';
import { expect, type Locator, type Page } from '@playwright/test';

// What a keeper does at the screen, step by step, for tests to read like an evening in the room.

/** A record as a backup holds it, as much as tests look at. */
export interface BackupRecord {
  readonly id: string;
  readonly type: string;
  readonly at: string;
  readonly device: string;
  readonly animal?: string;
  readonly outcome?: string;
  readonly massG?: number;
  readonly [field: string]: unknown;
}

export interface Backup {
  readonly fileName: string;
  readonly text: string;
  readonly header: { readonly collection: string; readonly records: number };
  readonly records: readonly BackupRecord[];
}

/** Three adults in the first tubs of rack B. */
export const THREE = [
  'Marrow, f, B1-1, 1500 g, 2021-07-14',
  'Sorrel, f, B1-2, 1640 g, 2021-08-02, Pastel het Clown',
  'Flint, m, B2-1, 900 g, 2022-07-30',
] as const;

/** Opens the app where nothing was kept before, and begins a collection of one's own. */
export async function begin(page: Page, url: string): Promise<void> {
  await page.goto(url);
  await page.getByRole('button', { name: 'Begin my collection' }).click();
  await expect(page.getByRole('heading', { name: 'New rack' })).toBeVisible();
}

/** From the screen of a new rack to the rack. */
export async function makeRack(page: Page, name: string, rows = 2, columns = 2): Promise<void> {
  await page.getByLabel('Letter on the rack').fill(name);
  await page.getByLabel('Rows, top to bottom').fill(String(rows));
  await page.getByLabel('Tubs in a row').fill(String(columns));
  await page.getByRole('button', { name: /^Make \d+ tubs$/ }).click();
  await expect(page.getByRole('heading', { name: `Rack ${name}` })).toBeVisible();
}

/** Pastes a list of snakes, one a line. */
export async function addSnakes(page: Page, lines: readonly string[]): Promise<void> {
  await walkTo(page, '/add');
  await page.getByRole('button', { name: 'Paste a list' }).click();
  await page.getByLabel(/^One snake a line/).fill(lines.join('\n'));
  await page.getByRole('button', { name: `Add ${lines.length}`, exact: true }).click();
  // One alone leads to its page, several to the racks.
  await expect(page.getByRole('heading', { level: 1 })).not.toHaveText('Add snakes');
}

/** A collection of one rack and three snakes. */
export async function beginWithThree(page: Page, url: string): Promise<void> {
  await begin(page, url);
  await makeRack(page, 'B');
  await addSnakes(page, THREE);
}

/** To another screen without loading the app again, as a link in it does. */
export async function walkTo(page: Page, path: string): Promise<void> {
  await page.evaluate((to) => {
    location.hash = to;
  }, path);
}

/** The capture screen of a snake; answers its route, for walking there again. */
export async function walkToSnake(page: Page, name: string): Promise<string> {
  await walkTo(page, '/find');
  await page.getByLabel('Name, position, gene or label code').fill(name);
  await page.getByRole('link', { name: new RegExp(`^${name}`) }).click();
  await page.getByRole('link', { name: 'Write something down' }).click();
  await expect(page.getByRole('heading', { level: 1, name })).toBeVisible();
  return new URL(page.url()).hash.slice(1);
}

/** What the app says it has written. Shown only once the record is safe. */
export const written = (page: Page, words: string | RegExp): Locator =>
  page.getByRole('status').filter({ hasText: words });

/** Types a weight on the app's own keys, on the capture screen in view. Writes nothing yet. */
export async function typeWeight(page: Page, digits: string): Promise<void> {
  await page.getByRole('button', { name: 'Weight', exact: true }).click();
  const sheet = page.getByRole('dialog', { name: /^Weight of/ });
  for (const digit of digits) {
    await sheet.getByRole('button', { name: digit, exact: true }).click();
  }
  await expect(sheet.getByRole('status', { name: 'Weight' })).toHaveText(digits);
}

/** How many records the shelf counts. */
export async function recordCount(page: Page): Promise<number> {
  await walkTo(page, '/shelf');
  const line = page.getByText(/^[\d,]+ records, \d+ snakes, \d+ tubs\.$/);
  return Number((await line.innerText()).replaceAll(',', '').split(' ')[0]);
}

/** Makes a backup through its screen, and reads the file that comes down. */
export async function backUp(page: Page): Promise<Backup> {
  await walkTo(page, '/safe');
  const [download] = await Promise.all([
    page.waitForEvent('download'),
    page.getByRole('button', { name: 'Back up now' }).click(),
  ]);
  const text = await readFile(await download.path(), 'utf8');
  const [header = '', ...lines] = text.trimEnd().split('\n');
  return {
    fileName: download.suggestedFilename(),
    text,
    header: JSON.parse(header) as Backup['header'],
    records: lines.map((line) => JSON.parse(line) as BackupRecord),
  };
}

/** Picks a backup to be looked into, on the screen for it. Takes nothing in yet. */
export async function pickBackup(page: Page, file: string | Buffer): Promise<void> {
  await walkTo(page, '/safe');
  await page.getByLabel('Backup file').setInputFiles({
    name: '2026-11-24.nightdrop.jsonl',
    mimeType: 'application/octet-stream',
    buffer: Buffer.from(file),
  });
}

/** The name under which each animal of a backup arrived. */
export const namesIn = ({ records }: Pick<Backup, 'records'>): ReadonlyMap<string, string> =>
  new Map(
    records.flatMap(({ type, animal, name }) =>
      type === 'arrived' && animal !== undefined ? [[animal, String(name)] as const] : [],
    ),
  );

/** Until the service worker answers for this very page: from then on no network is needed. */
export async function controlled(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((resolve) => {
      navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true });
    });
  });
}

/** From here on without a network. */
export async function goOffline(page: Page): Promise<void> {
  await controlled(page);
  await page.context().setOffline(true);
}
