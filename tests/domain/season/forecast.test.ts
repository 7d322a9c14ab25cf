import { describe, expect, test } from 'vitest';
import { daysBetween, type Day } from '../../../src/domain/core/calendar.ts';
import { anEvent } from '../../make.ts';
import {
  her,
  laid,
  on,
  outlookOn,
  ovulated,
  scan,
  shed,
  upTo,
  wholeSeason,
} from './make-season.ts';

const asOf = (day: string, events = upTo(day, wholeSeason)) => outlookOn(day, events);
const eventsOf = (outlook: ReturnType<typeof outlookOn>) =>
  outlook?.forecasts.map(({ event }) => event);
const daysFrom = (start: string, day: string | undefined) => daysBetween(start as Day, day as Day);

test('one small scan is no forecast, and the events yet to come are all there later', () => {
  expect(asOf('2026-11-02')?.forecasts).toEqual([]);
  const chain = ['ovulation', 'pre-lay shed', 'eggs', 'first pip'];
  expect(eventsOf(asOf('2027-01-11'))).toEqual(chain);
  expect(eventsOf(asOf('2027-02-06'))).toEqual(chain.slice(1));
  expect(eventsOf(asOf('2027-02-25'))).toEqual(chain.slice(2));
  expect(eventsOf(asOf('2027-03-27'))).toEqual(chain.slice(3));
});

// P10, likeliest and P90 in days: pre-lay shed to eggs 26, 30, 36; ovulation to pre-lay shed 15, 19,
// 24; eggs to first pip 54, 57, 62. Common practice, no source.
test.each([
  { from: '2027-02-24', event: 'eggs', days: [26, 30, 36] },
  { from: '2027-02-05', event: 'pre-lay shed', days: [15, 19, 24] },
  { from: '2027-03-26', event: 'first pip', days: [54, 57, 62] },
])('a keeper without cycles sees the usual window for $event', ({ from, event, days }) => {
  const found = asOf(from)?.forecasts.find((each) => each.event === event);
  const shown = [found?.from, found?.likely, found?.to].map((day) => daysFrom(from, day));
  for (const [i, expected] of days.entries()) {
    expect(Math.abs((shown[i] ?? NaN) - expected)).toBeLessThanOrEqual(1);
  }
});

test('each later fact moves what follows, and names itself as what it is counted from', () => {
  const eggs = (day: string) => asOf(day)?.forecasts.find(({ event }) => event === 'eggs');
  expect(eggs('2027-01-25')?.anchor).toBe('a follicle of 35 mm');
  expect(eggs('2027-02-06')?.anchor).toBe('ovulation');
  expect(eggs('2027-02-25')).toMatchObject({
    anchor: 'the pre-lay shed',
    anchorFirst: '2027-02-24',
    anchorLast: '2027-02-24',
  });
  const width = (day: string) => daysFrom(eggs(day)?.from ?? '', eggs(day)?.to);
  expect(width('2027-02-06')).toBeLessThan(width('2027-01-25'));
  expect(width('2027-02-25')).toBeLessThan(width('2027-02-06'));
});

test('an ovulation a week late in the book moves the eggs a week', () => {
  const others = upTo('2027-02-12', wholeSeason).filter(({ type }) => type !== 'ovulated');
  const eggs = (day: string) =>
    outlookOn('2027-02-12', [...others, ovulated(day)])?.forecasts.find(
      ({ event }) => event === 'eggs',
    );
  expect(daysFrom(eggs('2027-02-05')?.likely ?? '', eggs('2027-02-12')?.likely)).toBe(7);
});

test('a scan that still shows follicles is a look that found no ovulation', () => {
  const season = [scan('2026-11-01', 8), scan('2026-11-20', 21), scan('2027-02-10', 40)];
  const [ovulation] = outlookOn('2027-02-12', season)?.forecasts ?? [];
  expect(ovulation).toMatchObject({ event: 'ovulation', notBefore: '2027-02-10' });
  expect((ovulation?.from ?? '') >= '2027-02-10').toBe(true);
});

test('a look that found no eggs cuts the window short, and says so', () => {
  const none = anEvent('nothing-yet', { animal: her, lookedFor: 'eggs', at: on('2027-03-28') });
  const season = upTo('2027-02-25', wholeSeason);
  const [eggs] = outlookOn('2027-03-28', [...season, none])?.forecasts ?? [];
  expect(eggs?.notBefore).toBe('2027-03-28');
  expect((eggs?.from ?? '') >= '2027-03-28').toBe(true);
});

describe('own cycles', () => {
  const cycle = (year: number, days: number) => {
    const lay = new Date(Date.UTC(year, 1, 20 + days)).toISOString().slice(0, 10);
    return [
      scan(`${year - 1}-12-01`, 25),
      ovulated(`${year}-02-01`),
      shed(`${year}-02-20`, true),
      laid(lay),
    ];
  };

  test('narrow the window and move it, and are counted', () => {
    const past = [2023, 2024, 2025, 2026].flatMap((year) => cycle(year, 34));
    const [usual] = asOf('2027-02-25')?.forecasts ?? [];
    const [own] =
      outlookOn('2027-02-25', [...past, ...upTo('2027-02-25', wholeSeason)])?.forecasts ?? [];
    expect(own).toMatchObject({ event: 'eggs', ownCycles: 4, herCycles: 4 });
    expect((own?.likely ?? '') > (usual?.likely ?? '')).toBe(true);
    expect(daysFrom(own?.from ?? '', own?.to)).toBeLessThan(daysFrom(usual?.from ?? '', usual?.to));
  });
});

// Laarhoven B. & Kooijman S.A.L.M. 2010, Add-my-Pet, Python regius, snake 06: shed 2010-04-21, seen
// gravid on 05-29, four eggs recorded on 06-06.
test('a clutch found after days without a look is an interval: 38–46 days, never 42', () => {
  const found = anEvent('laid', {
    animal: her,
    at: on('2010-06-06'),
    precision: 'between',
    notBefore: on('2010-05-29'),
  });
  const picture = outlookOn('2010-06-07', [shed('2010-04-21', true), found]);
  const [pip] = picture?.forecasts ?? [];
  expect([pip?.anchorFirst, pip?.anchorLast]).toEqual(['2010-05-29', '2010-06-06']);
});
