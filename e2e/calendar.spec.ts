import { readFile } from 'node:fs/promises';
import { expect, test } from '@playwright/test';
import ICAL from 'ical.js';
import { clockFrom } from './clock-from.ts';
import { beginWithThree, walkTo, walkToSnake } from './keeper.ts';
import { serve, type Served } from './serve.ts';

let served: Served | undefined;
test.afterEach(() => served?.stop());

// Each stay of three days reaches over a change of the clocks, but for Kathmandu's, which has none:
// Berlin, 28 March 2027, from +01:00 to +02:00 (Directive 2000/84/EC, last Sunday of March); New York,
// 14 March 2027, from −05:00 to −04:00 (15 U.S.C. §260a, second Sunday of March); Kathmandu, +05:45.
for (const { zone, paired, day, rings } of [
  {
    zone: 'Europe/Berlin',
    paired: '2027-03-26T21:00:00+01:00',
    day: '2027-03-29',
    rings: '2027-03-29T17:00:00.000Z',
  },
  {
    zone: 'America/New_York',
    paired: '2027-03-12T21:00:00-05:00',
    day: '2027-03-15',
    rings: '2027-03-15T23:00:00.000Z',
  },
  {
    zone: 'Asia/Kathmandu',
    paired: '2027-03-26T21:00:00+05:45',
    day: '2027-03-29',
    rings: '2027-03-29T13:15:00.000Z',
  },
]) {
  test.describe(`in ${zone}`, () => {
    test.use({ timezoneId: zone, serviceWorkers: 'block' });

    test('the calendar file says the right days and local hours', async ({ page }) => {
      served = await serve({ beforeDesk: () => clockFrom(paired) });
      await page.addInitScript({ content: clockFrom(paired) });
      await beginWithThree(page, served.url);
      await walkToSnake(page, 'Marrow');
      await page.getByRole('button', { name: 'Pair' }).click();
      await page.getByRole('button', { name: /^Flint/ }).click();
      await expect(page.getByText(/together since/)).toBeVisible();

      await walkTo(page, '/reminders');
      const list = page.getByRole('list', { name: 'What the file holds' });
      await expect(list.getByRole('listitem')).toHaveText([/Take Flint out of Marrow’s tub/]);
      const [download] = await Promise.all([
        page.waitForEvent('download'),
        page.getByRole('button', { name: 'Save the calendar file' }).click(),
      ]);
      expect(download.suggestedFilename()).toBe(`${paired.slice(0, 10)}.nightdrop.ics`);
      const calendar = new ICAL.Component(
        ICAL.parse(await readFile(await download.path(), 'utf8')) as unknown[],
      );
      const [component, ...more] = calendar.getAllSubcomponents('vevent');
      expect(more).toEqual([]);
      const event = new ICAL.Event(component);
      expect(event.summary).toBe('Take Flint out of Marrow’s tub');
      expect(event.startDate.isDate).toBe(true);
      expect(event.startDate.toString()).toBe(day);
      expect(event.duration.toSeconds()).toBe(86_400);
      const alarm = event.startDate.clone();
      alarm.isDate = false;
      alarm.addDuration(
        component!
          .getFirstSubcomponent('valarm')!
          .getFirstPropertyValue('trigger') as ICAL.Duration,
      );
      // Seven in the evening by the wall, which the browser's own clock turns into an instant.
      expect(alarm.toString()).toBe(`${day}T19:00:00`);
      expect(alarm.zone.tzid).toBe('floating');
      const instant = await page.evaluate(
        (local) => new Date(local).toISOString(),
        alarm.toString(),
      );
      expect(instant).toBe(rings);
    });
  });
}
