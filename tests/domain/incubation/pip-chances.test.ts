import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, daysBetween } from '../../../src/domain/core/calendar.ts';
import { dailyWarmth, DAY_MIN } from '../../../src/domain/incubation/daily-warmth.ts';
import { ownPip } from '../../../src/domain/incubation/own-pip.ts';
import { pipChances } from '../../../src/domain/incubation/pip-chances.ts';
import { progressOf, recentPace } from '../../../src/domain/incubation/progress.ts';
import { developmentRate } from '../../../src/domain/incubation/rate.ts';
import { temperatureLine, type Point } from '../../../src/domain/incubation/temperature-line.ts';
import type { HeatFailure } from '../../../src/domain/state/incubator.ts';
import { defaultProtocol } from '../../../src/domain/protocol/values.ts';
import { lagChances } from '../../../src/domain/windows/belief.ts';
import { between, convolve, onDay, window } from '../../../src/domain/windows/day-chances.ts';
import { runs } from '../../arbitrary.ts';
import { day, moment } from '../../make.ts';
import { animalId, eventId } from '../../make-ids.ts';

const { chances: lag } = lagChances('lay to pip', defaultProtocol, []);
const laidOn = day('2027-04-10');
const evenly = (pace: number, days = 140) => progressOf([], days, pace);
/** Every half hour at one temperature, with the one reading that closes the last day. */
const steady = (tempC: number, days: number): Point[] =>
  Array.from({ length: days * 48 + 1 }, (_, n) => ({ minute: n * 30, tempC }));
const anyTemp = fc.double({ min: 20, max: 36, noNaN: true });

describe('daily warmth', () => {
  test('is what adding up minute by minute finds', () => {
    const readings = fc.array(fc.tuple(fc.integer({ min: 1, max: 900 }), anyTemp), {
      minLength: 2,
      maxLength: 12,
    });
    fc.assert(
      fc.property(readings, (steps) => {
        let minute = -200;
        const line = steps.map(([wait, tempC]) => ({ minute: (minute += wait), tempC }));
        const gapMin = 600;
        const found = dailyWarmth(line, 0, 3, gapMin);
        for (const [at, warmth] of found.entries()) {
          let [known, effective] = [0, 0];
          for (let now = at * DAY_MIN; now < (at + 1) * DAY_MIN; now += 1) {
            const b = line.findIndex((point) => point.minute > now);
            const [before, after] = [line[b - 1], line[b]];
            if (!before || !after || after.minute - before.minute > gapMin) continue;
            const share = (now + 0.5 - before.minute) / (after.minute - before.minute);
            known += 1;
            effective += developmentRate(before.tempC + share * (after.tempC - before.tempC));
          }
          expect(warmth.knownMin).toBe(known);
          expect(warmth.effectiveMin).toBeCloseTo(effective, -1);
        }
      }),
      runs(60),
    );
  });

  test('says nothing of a gap', () => {
    const line = [
      { minute: 0, tempC: 31.5 },
      { minute: 60, tempC: 31.5 },
      { minute: 1_300, tempC: 31.5 },
    ];
    expect(dailyWarmth(line, 0, 1, 600)).toMatchObject([{ knownMin: 60 }]);
  });

  test('counts the time hotter than development is known for', () => {
    expect(dailyWarmth(steady(33, 1), 0, 1, 60)).toMatchObject([{ beyondMin: DAY_MIN }]);
  });
});

describe('a failure of which only the lowest is known', () => {
  const failure: HeatFailure = {
    id: eventId(1),
    from: moment('1970-01-02T00:00:00Z'),
    until: moment('1970-01-02T08:00:00Z'),
    lowestC: 25,
  };
  const readings = [720, 2_880].map((minute) => ({ minute, offsetMin: 0, tempC: 31.5 }));

  test('is a dip between two readings by hand', () => {
    const line = temperatureLine([{ spot: 'egg level', readings }], 'egg level', [failure]);
    expect(line.map(({ tempC }) => tempC)).toEqual([31.5, 31.5, 25, 31.5, 31.5]);
    const [first, second] = dailyWarmth(line, 0, 2, 2_000);
    // Eight hours at 28 °C on average and two back: less than a tenth of a day is lost.
    expect(first?.effectiveMin).toBeCloseTo(720, 0);
    expect(second?.effectiveMin).toBeGreaterThan(DAY_MIN * 0.9);
    expect(second?.effectiveMin).toBeLessThan(DAY_MIN * 0.95);
  });

  test('is left to a sensor that was there', () => {
    const seen = [...readings, { minute: 1_600, offsetMin: 0, tempC: 28 }];
    const inOrder = seen.toSorted((a, b) => a.minute - b.minute);
    const series = [{ spot: 'egg level' as const, sensor: 'probe', readings: inOrder }];
    expect(temperatureLine(series, 'egg level', [failure])).toEqual(inOrder);
  });
});

describe('the chances of a first pip', () => {
  const anyPace = fc.double({ min: 0.7, max: 1.05, noNaN: true });

  test('at 31.5 °C are those of the link by itself', () => {
    const laid = between(laidOn, addDays(laidOn, 3));
    const found = pipChances(laid, lag, evenly(1), 0);
    const plain = convolve(laid, lag);
    const ahead = daysBetween(found.from, plain.from);
    for (const [n, chance] of plain.chances.entries()) {
      expect(found.chances[n + ahead]).toBeCloseTo(chance, 9);
    }
  });

  test('add up to one, and none is negative', () => {
    fc.assert(
      fc.property(
        anyPace,
        fc.integer({ min: 0, max: 8 }),
        fc.double({ min: 0, max: 0.2, noNaN: true }),
        (pace, nights, error) => {
          const laid = between(laidOn, addDays(laidOn, nights));
          const { chances } = pipChances(laid, lag, evenly(pace), error);
          expect(chances.reduce((sum, each) => sum + each, 0)).toBeCloseTo(1, 9);
          expect(Math.min(...chances)).toBeGreaterThanOrEqual(-1e-12);
        },
      ),
      runs(60),
    );
  });

  test('are later in a cool incubator, by the days that the pace says', () => {
    const usual = window(pipChances(onDay(laidOn), lag, evenly(1), 0));
    const cool = window(pipChances(onDay(laidOn), lag, evenly(developmentRate(30)), 0));
    // Three to five days for a degree [common practice, no source]: 4.5 to 7.5 for one and a half.
    const later = daysBetween(usual.likely, cool.likely);
    expect(later).toBeGreaterThanOrEqual(4);
    expect(later).toBeLessThanOrEqual(8);
  });

  test('move as readings come in', () => {
    const likelyAfter = (days: number): number => {
      const warmth = dailyWarmth(steady(30, days), 0, days, 60);
      const progress = progressOf(warmth, 140, 1);
      return daysBetween(laidOn, window(pipChances(onDay(laidOn), lag, progress, 0)).likely);
    };
    const likely = [0, 15, 30, 45].map(likelyAfter);
    expect(likely).toEqual(likely.toSorted((a, b) => a - b));
    expect((likely.at(-1) ?? 0) - (likely[0] ?? 0)).toBeGreaterThanOrEqual(3);
  });

  test('are spread by what was not read', () => {
    const widthOf = (error: number): number => {
      const { from, to } = window(pipChances(onDay(laidOn), lag, evenly(1), error));
      return daysBetween(from, to);
    };
    expect(widthOf(0.1)).toBeGreaterThan(widthOf(0));
  });
});

describe('the pace that is taken where nobody read', () => {
  test('is that of the last days that were read, if there is a day of it', () => {
    const cool = dailyWarmth(steady(30, 3), 0, 5, 60);
    expect(recentPace(cool, 1)).toBeCloseTo(developmentRate(30), 6);
    expect(recentPace([], 0.95)).toBe(0.95);
  });
});

describe('what a clutch teaches', () => {
  const seen = (from: number, to = from) => ({
    first: addDays(laidOn, from),
    last: addDays(laidOn, to),
  });

  test('is counted in days as at 31.5 °C', () => {
    const cool = evenly(developmentRate(30));
    expect(ownPip(animalId(1), seen(0), seen(62), cool)).toMatchObject({
      earliestDays: 57,
      latestDays: 57,
    });
  });

  test('is as wide as the looks left it', () => {
    expect(ownPip(animalId(1), seen(0, 2), seen(56, 57), evenly(1))).toMatchObject({
      earliestDays: 54,
      latestDays: 57,
    });
  });

  test('is nothing where the pip came before the eggs', () => {
    expect(ownPip(animalId(1), seen(3), seen(0), evenly(1))).toBeUndefined();
  });
});
