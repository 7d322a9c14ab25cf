import { expect, type Page } from '@playwright/test';
import { captureStops, openCapture } from './capture-stops.ts';
import { clutchStops } from './clutch-stops.ts';
import { geneStops } from './gene-stops.ts';
import { rotationStops } from './rotation-stops.ts';
import { saleStops } from './sale-stops.ts';
import { heading, to, type ScreenStop } from './screen-stop.ts';
import { seasonStops } from './season-stops.ts';
import { sheetStops } from './sheet-stops.ts';

/** Opens the demo from the first screen. */
export async function openDemo(page: Page): Promise<void> {
  await page.goto('./');
  await page.getByRole('button', { name: /Look round the demo/ }).click();
  await heading(page, 'Tonight');
  await expect(page.getByRole('listitem').filter({ hasText: /Feed/ }).first()).toBeVisible();
}

const openRack = async (page: Page) => {
  await to('/racks')(page);
  await page.getByRole('link', { name: /^Rack H/ }).click();
  await heading(page, 'Rack H');
};

const openRoom = async (page: Page) => {
  await to('/racks')(page);
  await page.getByRole('link', { name: /^Snake room/ }).click();
  await heading(page, 'Snake room');
  await expect(page.locator('.curve-box canvas').first()).toBeVisible();
};

const openRoomForm = (button: string, title: string | RegExp) => async (page: Page) => {
  await openRoom(page);
  await page.getByRole('button', { name: new RegExp(`^${button}`) }).click();
  await expect(page.getByRole('dialog', { name: title })).toBeVisible();
};

/** Every screen of the app. */
export const screens: readonly ScreenStop[] = [
  {
    name: 'tonight',
    visit: async (page) => {
      await to('/tonight')(page);
      await heading(page, 'Tonight');
    },
  },
  ...captureStops,
  {
    name: 'round',
    visit: async (page) => {
      await to('/round')(page);
      await expect(page.getByText(/Hold the camera/)).toBeVisible();
      await expect(page.locator('video')).toBeVisible();
    },
  },
  {
    name: 'round-keypad',
    visit: async (page) => {
      await to('/round')(page);
      await page.getByRole('button', { name: 'Type' }).click();
      await expect(page.getByRole('dialog', { name: 'Position or code' })).toBeVisible();
    },
  },
  {
    name: 'racks',
    visit: async (page) => {
      await to('/racks')(page);
      await expect(page.getByRole('link', { name: /^Rack A/ })).toBeVisible();
    },
  },
  { name: 'rack', visit: openRack },
  { name: 'room', visit: openRoom },
  { name: 'room-read', visit: openRoomForm('Write down a reading', /^Read /) },
  { name: 'room-programme', visit: openRoomForm('Programme', 'Programme') },
  { name: 'room-file', visit: openRoomForm('Sensor’s file', /sensor’s file$/) },
  ...clutchStops,
  {
    name: 'meals',
    visit: async (page) => {
      await openRack(page);
      await page.getByRole('link', { name: /Feed this rack/ }).click();
      await expect(page.getByRole('button', { name: /^Write \d+ meal/ })).toBeVisible();
    },
  },
  {
    name: 'snake',
    visit: async (page) => {
      await openCapture(page);
      await page.getByRole('heading', { level: 1 }).getByRole('link').click();
      await expect(page.getByRole('heading', { name: 'History' })).toBeVisible();
      await expect(page.locator('.curve-box canvas').first()).toBeVisible();
    },
  },
  {
    name: 'lineage',
    visit: async (page) => {
      await to('/find')(page);
      await page.getByRole('searchbox').fill('h1');
      await page.getByRole('link', { name: /H1-1/ }).first().click();
      await page.getByRole('link', { name: /^Lineage/ }).click();
      await heading(page, 'Lineage');
      await expect(page.getByRole('list', { name: /^Ancestors of/ })).toBeVisible();
    },
  },
  {
    name: 'choose',
    visit: async (page) => {
      await to('/choose')(page);
      await heading(page, 'Choose pairs');
      await page.getByLabel('What do you want?').fill('visual clown');
      await page.getByRole('button', { name: 'Rank the pairs' }).click();
      await expect(page.getByText(/looked at/)).toBeVisible();
    },
  },
  ...geneStops,
  ...seasonStops,
  {
    name: 'feeding',
    visit: async (page) => {
      await to('/feeding')(page);
      await heading(page, 'Feeding');
      await expect(page.getByRole('heading', { name: 'Thaw list' })).toBeVisible();
    },
  },
  {
    name: 'prey',
    visit: async (page) => {
      await to('/prey')(page);
      await heading(page, 'Prey');
      await expect(page.getByRole('heading', { name: 'Your sizes' })).toBeVisible();
      await expect(page.getByRole('columnheader', { name: 'Order' })).toBeVisible();
    },
  },
  ...rotationStops,
  ...saleStops,
  {
    name: 'find',
    visit: async (page) => {
      await to('/find')(page);
      await page.getByRole('searchbox').fill('a1');
      await expect(page.getByRole('link', { name: /A1-1/ })).toBeVisible();
    },
  },
  {
    name: 'add',
    visit: async (page) => {
      await to('/add')(page);
      await heading(page, 'Add snakes');
    },
  },
  {
    name: 'add-list',
    visit: async (page) => {
      await to('/add')(page);
      await page.getByRole('button', { name: 'Paste a list' }).click();
      await page
        .getByRole('textbox')
        .fill('Quill, f, 1640 g, 2022-07-14, Pastel het Clown\nRivet, m, 1/2/24');
      await expect(page.getByText(/write the hatch day as/)).toBeVisible();
    },
  },
  ...sheetStops,
  {
    name: 'new-rack',
    visit: async (page) => {
      await to('/new-rack')(page);
      await page.getByLabel('Letter on the rack').fill('D');
      await expect(page.getByText(/Tubs D1-1 to D10-4/)).toBeVisible();
    },
  },
  {
    name: 'labels',
    visit: async (page) => {
      await to('/labels')(page);
      await heading(page, /label/i);
    },
  },
  {
    name: 'reminders',
    visit: async (page) => {
      await to('/reminders')(page);
      await heading(page, 'Reminders');
      await expect(page.getByRole('list', { name: 'What the file holds' })).toBeVisible();
    },
  },
  {
    name: 'protocol',
    visit: async (page) => {
      await to('/protocol')(page);
      await heading(page, 'Protocol');
      await page.getByRole('heading', { level: 2, name: 'Feeding' }).click();
      await expect(page.getByRole('button', { name: /^Feed growers every/ })).toBeVisible();
    },
  },
  {
    name: 'protocol-value',
    visit: async (page) => {
      await to('/protocol')(page);
      const feeding = page.locator('details', { hasText: 'Feed growers every' }).first();
      if (!(await feeding.evaluate((group: HTMLDetailsElement) => group.open))) {
        await page.getByRole('heading', { level: 2, name: 'Feeding' }).click();
      }
      await page.getByRole('button', { name: /^Feed growers every/ }).click();
      await page.getByRole('button', { name: 'More', exact: true }).click();
      await expect(page.getByRole('button', { name: 'Write 8 days' })).toBeVisible();
      await expect(page.getByRole('heading', { name: /^Tonight/ }).last()).toBeVisible();
    },
  },
  {
    name: 'protocol-school',
    visit: async (page) => {
      await to('/shelf')(page);
      await to('/protocol')(page);
      await page.getByRole('button', { name: /^Strict/ }).click();
      await expect(page.getByRole('button', { name: /^Follow Strict/ })).toBeVisible();
      await expect(page.getByText(/1,500\sg →/)).toBeVisible();
    },
  },
  {
    name: 'vet',
    visit: async (page) => {
      await to('/shelf')(page);
      await to('/protocol/vet')(page);
      await expect(page.getByLabel('Telephone')).toBeVisible();
    },
  },
  {
    name: 'safe',
    visit: async (page) => {
      await to('/safe')(page);
      await heading(page, 'Backup and restore');
    },
  },
  {
    name: 'shelf',
    visit: async (page) => {
      await to('/shelf')(page);
      await heading(page, 'Shelf');
    },
  },
  {
    name: 'unknown-code',
    visit: async (page) => {
      await to('/000000Z')(page);
      await expect(page.getByRole('link', { name: /Scan another/ })).toBeVisible();
    },
  },
];
