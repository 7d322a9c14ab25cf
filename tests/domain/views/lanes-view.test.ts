import fc from 'fast-check';
import { expect, test } from 'vitest';
import { addDays } from '../../../src/domain/core/calendar.ts';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { lanesView } from '../../../src/domain/views/lanes-view.ts';
import { seasonView } from '../../../src/domain/views/season-view.ts';
import { anyLog, runs } from '../../arbitrary.ts';
import { anEvent, aPicture, day } from '../../make.ts';
import { animalId, tubId } from '../../make-ids.ts';
import { arrivals, her, on, upTo, wholeSeason } from '../season/make-season.ts';
import { dweller, room } from './little-room.ts';

const view = (night: string, events: readonly RackEvent[]) =>
  lanesView(aPicture(events, on(night)));

const hers = (night: string) => view(night, [...arrivals, ...upTo(night, wholeSeason)]);

/** A second and third female, who only ovulated, and one who does nothing. */
const others: readonly RackEvent[] = [
  ...room,
  ...dweller(11, 'Anvil', 1),
  ...dweller(12, 'Basalt', 2),
  ...dweller(13, 'Comfrey', 3),
];
const ovulates = (n: number, night: string) =>
  anEvent('ovulated', { animal: animalId(n), sure: 'seen at peak', at: on(night) });

test('one row for a season under way; the rest stand below by stage', () => {
  const shown = view('2027-02-06', [...others, ovulates(11, '2027-02-05')]);
  expect(shown.lanes.map(({ name, stage }) => [name, stage])).toEqual([['Anvil', 'ovulated']]);
  expect(shown.quiet.map(({ name, stage }) => [name, stage])).toEqual([
    ['Basalt', 'resting'],
    ['Comfrey', 'resting'],
  ]);
});

test('males and snakes that left are on no strip', () => {
  const gone = anEvent('left', { animal: her, how: 'sold', at: on('2027-02-06') });
  const shown = view('2027-02-07', [...arrivals, ...upTo('2027-02-05', wholeSeason), gone]);
  expect(shown.lanes).toEqual([]);
  expect(shown.quiet).toEqual([]);
});

test('the nearest next event comes first; the walk is kept for the other order', () => {
  const shown = view('2027-03-02', [
    ...others,
    ovulates(12, '2027-02-20'),
    ovulates(11, '2027-03-01'),
  ]);
  expect(shown.lanes.map(({ name }) => name)).toEqual(['Basalt', 'Anvil']);
  const byWalk = shown.lanes.toSorted((a, b) => a.walk - b.walk).map(({ position }) => position);
  // Rack B is walked row by row, back and forth; both stand in its first row.
  expect(byWalk).toEqual(['B1-1', 'B1-2']);
});

test('what happened lies on its day, and what is coming from its first to its last', () => {
  const shown = hers('2027-02-25');
  const lane = shown.lanes[0];
  const on_ = (at: number) => addDays(shown.from, at);
  expect(lane?.marks.map(({ kind, at }) => `${kind} ${on_(at)}`)).toEqual([
    'scan 2026-11-01',
    'scan 2026-11-29',
    'scan 2026-12-20',
    'scan 2027-01-10',
    'scan 2027-01-24',
    'ovulation 2027-02-05',
    'pre-lay shed 2027-02-24',
  ]);
  expect(lane?.stays.map(({ from, to }) => [on_(from), on_(to)])).toEqual([
    ['2026-12-01', '2026-12-03'],
  ]);
  for (const { from, likely, to, fromAt, likelyAt, toAt } of lane?.windows ?? []) {
    expect([on_(fromAt), on_(likelyAt), on_(toAt - 1)]).toEqual([from, likely, to]);
  }
  expect(on_(shown.tonightAt)).toBe('2027-02-25');
});

test('the axis is whole months, holds every window, and reaches back half a year at most', () => {
  const shown = hers('2027-02-25');
  expect(shown.from).toBe('2026-11-01');
  expect(shown.months[0]).toEqual({ at: 0, month: 11, year: 2026 });
  // November 30, December 31, January 31 days.
  expect(shown.months.slice(1, 4).map(({ at }) => at)).toEqual([30, 61, 92]);
  for (const { toAt } of shown.lanes.flatMap(({ windows }) => windows)) {
    expect(toAt).toBeLessThanOrEqual(shown.days);
  }
  const late = hers('2027-05-20');
  expect(late.from >= addDays(day('2027-05-20'), -183 - 31)).toBe(true);
  expect(late.lanes[0]?.marks.every(({ at }) => at >= 0)).toBe(true);
});

test('an empty collection has an axis and nothing on it', () => {
  const shown = view('2026-11-24', []);
  expect(shown).toMatchObject({ lanes: [], quiet: [], signs: [], cycles: 0, from: '2026-11-01' });
  expect(shown.months.map(({ month }) => month)).toEqual([11, 12, 1]);
});

test('a female who recovers is drawn while her own eggs are of this season, and not in the next', () => {
  const meal = anEvent('meal-offered', { animal: her, outcome: 'ate', at: on('2027-04-02') });
  const thin = anEvent('weighed', { animal: her, massG: 1_300, at: on('2027-04-03') });
  const laidAndThin = [...arrivals, ...upTo('2027-03-27', wholeSeason), meal, thin];
  expect(view('2027-04-04', laidAndThin).lanes[0]?.stage).toBe('recovering');
  const smallScan = anEvent('follicles-scanned', {
    animal: her,
    found: { method: 'ultrasound' },
    at: on('2027-11-01'),
  });
  const next = view('2027-11-02', [...laidAndThin, smallScan]);
  expect(next.lanes).toEqual([]);
  expect(next.quiet[0]?.stage).toBe('recovering');
});

test('a female without a tub is still on the strip', () => {
  expect(hers('2027-02-25').lanes[0]?.position).toBe('–');
});

test('whatever night it is, tonight and all windows and marks lie on the axis', () => {
  fc.assert(
    fc.property(fc.integer({ min: 0, max: 330 }), (nights) => {
      const night = addDays(day('2026-11-02'), nights);
      const shown = hers(night);
      expect(addDays(shown.from, shown.tonightAt)).toBe(night);
      expect(shown.tonightAt).toBeLessThan(shown.days);
      for (const { marks, windows, stays } of shown.lanes) {
        for (const { at, from } of marks) {
          expect(from).toBeGreaterThanOrEqual(0);
          expect(from).toBeLessThanOrEqual(at);
          expect(at).toBeLessThanOrEqual(shown.tonightAt);
        }
        for (const { fromAt, likelyAt, toAt } of windows) {
          expect(fromAt).toBeGreaterThanOrEqual(0);
          expect(likelyAt).toBeGreaterThanOrEqual(fromAt);
          expect(toAt).toBeGreaterThan(likelyAt);
          expect(toAt).toBeLessThanOrEqual(shown.days);
        }
        for (const { from, to } of stays) expect(to).toBeGreaterThanOrEqual(from);
      }
    }),
  );
});

test('a visit that is still going on ends tonight', () => {
  const stay = anEvent('introduced', {
    male: animalId(2),
    female: her,
    tub: tubId(1),
    at: on('2027-01-26'),
  });
  const shown = view('2027-01-28', [...arrivals, ...upTo('2027-01-24', wholeSeason), stay]);
  expect(shown.lanes[0]?.stays.at(-1)?.to).toBe(shown.tonightAt);
});

test('after any records, the strip and every page can be drawn, the same in any order', () => {
  fc.assert(
    fc.property(anyLog, (log) => {
      const [picture, other] = [aPicture(log), aPicture(log.toReversed())];
      expect(lanesView(other)).toEqual(lanesView(picture));
      const shown = lanesView(picture);
      // A view is a message to the page: plain data.
      expect(structuredClone(shown)).toEqual(shown);
      for (const { id } of picture.animals()) {
        expect(seasonView(id, other)).toEqual(seasonView(id, picture));
      }
    }),
    runs(60),
  );
});
