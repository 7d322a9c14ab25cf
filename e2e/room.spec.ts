import { expect, test, type Page } from '@playwright/test';
import { openDemo } from './screens.ts';

// A room's air: read by hand in a few taps, a sensor's file looked at before it is taken in.

async function openRoom(page: Page, form = ''): Promise<void> {
  await openDemo(page);
  await page.evaluate(() => {
    location.hash = '/racks';
  });
  await page.getByRole('link', { name: /^Snake room/ }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Snake room' })).toBeVisible();
  if (form !== '') await page.getByRole('button', { name: new RegExp(`^${form}`) }).click();
}

const press = async (page: Page, keys: string): Promise<void> => {
  for (const key of keys) {
    const name = key === '.' ? 'Point' : key;
    await page.getByRole('button', { name, exact: true }).click();
  }
};

const written = (page: Page) => page.getByRole('status').filter({ hasText: /\S/ }).first();

test('a reading takes its digits and one tap, stands large, and can be undone', async ({
  page,
}) => {
  await openRoom(page, 'Write down a reading');
  await press(page, '25.4');
  await page.getByRole('button', { name: 'Write 25.4 °C' }).click();
  await expect(written(page)).toContainText('25.4 °C');
  const now = page.getByRole('region', { name: 'Now' });
  await expect(now.getByText('25.4 °C')).toBeVisible();
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect(now.getByText('25.4 °C')).toHaveCount(0);
});

test('a number in the other unit is noticed, and is one tap away', async ({ page }) => {
  await openRoom(page, 'Write down a reading');
  await press(page, '79');
  await page.getByRole('button', { name: 'Write 79 °C' }).click();
  // NIST SP 811: 79 °F is (79 − 32)/1.8 = 26.1 °C.
  await page.getByRole('button', { name: /Write 79 °F, which is 26.1 °C/ }).click();
  await expect(page.getByRole('region', { name: 'Now' }).getByText('26.1 °C')).toBeVisible();
});

const file = (name: string, text: string) => ({
  name,
  mimeType: 'text/csv',
  buffer: Buffer.from(text),
});

/** A day of a logger, ending an hour ago, in the time of the device. */
function loggerFile(): string {
  const lines = ['No.;Date;Temp [°C];Humidity [%]'];
  const end = Date.now() - 3_600_000;
  for (let n = 0; n < 144; n += 1) {
    const at = new Intl.DateTimeFormat('de-DE', {
      dateStyle: 'medium',
      timeStyle: 'short',
      timeZone: 'Europe/Berlin',
    }).format(end - (143 - n) * 600_000);
    const temp = n === 7 ? 'ERR' : (22 + (n % 20) / 10).toFixed(1).replace('.', ',');
    lines.push(`${n};${at.replace(',', '')};${temp};55,0`);
  }
  return lines.join('\r\n');
}

test('a sensor’s file is shown before it is written, and twice adds nothing', async ({ page }) => {
  await openRoom(page, 'Sensor’s file');
  const text = loggerFile();
  await page.getByLabel(/^Name of the sensor/).fill('Door sensor');
  await page.locator('input[type=file]').setInputFiles(file('door.csv', text));
  await expect(page.getByText(/144 lines/)).toContainText('143 readings, 1 left out');
  await page.getByText('Lines left out, and why').click();
  await expect(page.getByText(/temperature is no number \(“ERR”\): line 9/)).toBeVisible();
  await page.getByRole('button', { name: 'Take in 143 readings' }).click();
  await expect(written(page)).toContainText('143 readings of Door sensor taken in');

  await page.getByRole('button', { name: /^Sensor’s file/ }).click();
  await expect(page.getByLabel(/^Name of the sensor/)).toHaveValue('Door sensor');
  await page.locator('input[type=file]').setInputFiles(file('again.csv', text));
  await expect(page.getByText(/143 you have already/)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Nothing new in it' })).toBeDisabled();
});

test('a wrong file changes nothing and says why', async ({ page }) => {
  await openRoom(page, 'Sensor’s file');
  await page.locator('input[type=file]').setInputFiles(file('letter.txt', 'Dear keeper,\nhow are'));
  await expect(page.getByRole('alert').filter({ hasText: 'Nothing was written' })).toBeVisible();
  await expect(page.getByRole('button', { name: /^Take in/ })).toHaveCount(0);
});

test('a school’s programme is set from a day on, and the room is held against it', async ({
  page,
}) => {
  await openRoom(page, 'Programme');
  await page.getByRole('button', { name: /^No drop/ }).click();
  await page.getByLabel('Air, day').fill('28');
  await page.getByLabel('Air, night').fill('28');
  await page.getByRole('button', { name: 'Set this programme' }).click();
  await expect(written(page)).toContainText('No drop from');
  await expect(page.getByRole('region', { name: 'Now' })).toContainText('asks for 28.0 °C air');
});

test('a room’s label leads to the form for a reading', async ({ page }) => {
  await openDemo(page);
  await page.evaluate(() => {
    location.hash = '/labels';
  });
  await page.getByLabel('Room labels').check();
  await page.getByRole('button', { name: /Make labels for 2 rooms/ }).click();
  await page.getByText(/^All 2 picked/).click();
  const line = page.getByRole('listitem').filter({ hasText: 'Snake room' });
  const code = (await line.locator('.labels-code').innerText()).replace(/\s/g, '');
  await page.evaluate((to) => {
    location.hash = `/${to}`;
  }, code);
  await expect(page.getByRole('dialog', { name: 'Read Snake room' })).toBeVisible();
  await page.getByRole('button', { name: 'Close' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Snake room' })).toBeVisible();
});
