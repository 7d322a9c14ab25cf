import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { bandsOf, bandsOver } from '../../../src/domain/room/band.ts';
import { dayLines, statisticsOf } from '../../../src/domain/room/statistics.ts';
import type { Programme } from '../../../src/domain/state/room-air.ts';
import type { Reading } from '../../../src/domain/state/readings.ts';
import { runs } from '../../arbitrary.ts';
import { aProgramme, minuteOf, protocol, readingsFrom } from './make-air.ts';

const GAP_MIN = 120;

/**
 * The definition, minute by minute and by itself: what the clock shows, which part of the day that
 * is, what a programme of one step asks for, and two hours of leave after each change.
 */
function naive(readings: readonly Reading[], { steps, dayFromMin, nightFromMin }: Programme) {
  const { dayC, nightC } = steps[0]!;
  const time = { in: 0, below: 0, above: 0 };
  let covered = 0;
  let longest = 0;
  let run = 0;
  let side = 'in';
  for (let i = 0; i + 1 < readings.length; i += 1) {
    const [a, b] = [readings[i]!, readings[i + 1]!];
    if (b.minute - a.minute > GAP_MIN) {
      run = 0;
      side = 'in';
      continue;
    }
    for (let minute = a.minute; minute < b.minute; minute += 1) {
      const middle = minute + 0.5;
      const tempC = a.tempC + ((b.tempC - a.tempC) * (middle - a.minute)) / (b.minute - a.minute);
      const clock = (((middle + a.offsetMin) % 1_440) + 1_440) % 1_440;
      const isDay = clock >= dayFromMin && clock < nightFromMin;
      const since = (clock - (isDay ? dayFromMin : nightFromMin) + 1_440) % 1_440;
      const asked = since < 120 ? [dayC, nightC] : [isDay ? dayC : nightC];
      const now =
        tempC < Math.min(...asked) - 1 ? 'below' : tempC > Math.max(...asked) + 1 ? 'above' : 'in';
      time[now] += 1;
      covered += 1;
      run = now === 'in' ? 0 : now === side ? run + 1 : 1;
      side = now;
      longest = Math.max(longest, run);
    }
  }
  return { ...time, covered, longest };
}

const someReadings = fc
  .array(
    fc.record({
      after: fc.constantFrom(5, 10, 60, 119, 120, 121, 600),
      tenths: fc.integer({ min: 180, max: 290 }),
    }),
    { minLength: 2, maxLength: 60 },
  )
  .map((parts) => {
    let minute = minuteOf('2026-11-20T12:00:00+01:00');
    return parts.map(({ after, tenths }): Reading => {
      minute += after;
      return { minute, offsetMin: 60, tempC: tenths / 10 };
    });
  });

const spanOf = (readings: readonly Reading[]) => ({
  fromMin: readings[0]!.minute,
  toMin: readings.at(-1)!.minute,
});

test('time in, below and above is what a count of minutes finds', () => {
  fc.assert(
    fc.property(someReadings, (readings) => {
      const programme = aProgramme();
      const bandAt = bandsOf([programme], 'air', protocol);
      const found = statisticsOf(readings, spanOf(readings), bandAt, GAP_MIN);
      const counted = naive(readings, programme);
      // Each line may cross a limit twice a stretch, each crossing inside a minute.
      const slack = 3 * readings.length;
      expect(found.coveredMin).toBeCloseTo(counted.covered, 6);
      expect(found.inBandMin + found.belowMin + found.aboveMin).toBeCloseTo(counted.covered, 6);
      expect(Math.abs(found.inBandMin - counted.in)).toBeLessThanOrEqual(slack);
      expect(Math.abs(found.belowMin - counted.below)).toBeLessThanOrEqual(slack);
      expect(Math.abs(found.aboveMin - counted.above)).toBeLessThanOrEqual(slack);
      const length = found.longest ? found.longest.toMin - found.longest.fromMin : 0;
      expect(Math.abs(length - counted.longest)).toBeLessThanOrEqual(3);
    }),
    runs(400),
  );
});

describe('by hand', () => {
  const bandAt = bandsOf([aProgramme()], 'air', protocol);
  // Night, band 20–22 °C; two hours after 20:00 have passed.
  const night = '2026-11-24T23:00:00+01:00';

  test('a line from 21 to 19 over 100 minutes is below 20 for its second half', () => {
    const readings = readingsFrom(night, 100, [21, 19]);
    const found = statisticsOf(readings, spanOf(readings), bandAt, GAP_MIN);
    expect(found).toMatchObject({ inBandMin: 50, belowMin: 50, aboveMin: 0, coveredMin: 100 });
    expect(found.longest).toEqual({
      side: 'below',
      fromMin: minuteOf(night) + 50,
      toMin: minuteOf(night) + 100,
      extremeC: 19,
    });
  });

  test('readings farther apart than two hours leave a gap, and an excursion ends there', () => {
    const first = readingsFrom(night, 60, [19, 19]);
    const later = readingsFrom('2026-11-25T03:01:00+01:00', 60, [19, 19]);
    const readings = [...first, ...later];
    const found = statisticsOf(readings, spanOf(readings), bandAt, GAP_MIN);
    expect(found.gaps).toEqual([
      { fromMin: minuteOf('2026-11-25T00:00:00+01:00'), toMin: later[0]!.minute },
    ]);
    expect(found).toMatchObject({ coveredMin: 120, belowMin: 120 });
    expect(found.longest!.toMin - found.longest!.fromMin).toBe(60);
  });

  test('exactly two hours apart is no gap', () => {
    const readings = readingsFrom(night, 120, [21, 21, 21]);
    const found = statisticsOf(readings, spanOf(readings), bandAt, GAP_MIN);
    expect(found).toMatchObject({ gaps: [], coveredMin: 240, inBandMin: 240 });
  });

  test('one reading covers no time, and is still held against the programme', () => {
    const readings = readingsFrom(night, 5, [25]);
    expect(statisticsOf(readings, spanOf(readings), bandAt, GAP_MIN)).toMatchObject({
      readings: 1,
      judged: 1,
      judgedInBand: 0,
      coveredMin: 0,
      longest: undefined,
    });
  });

  test('cooling down in the two hours after the night begins is no excursion', () => {
    const readings = readingsFrom('2026-11-24T19:00:00+01:00', 60, [26, 26, 23.5, 21, 21]);
    const found = statisticsOf(readings, spanOf(readings), bandAt, GAP_MIN);
    expect(found).toMatchObject({ inBandMin: 240, aboveMin: 0, longest: undefined });
  });

  test('without a programme time is covered and not judged', () => {
    const readings = readingsFrom(night, 60, [21, 10]);
    const none = bandsOf([], 'air', protocol);
    expect(statisticsOf(readings, spanOf(readings), none, GAP_MIN)).toMatchObject({
      coveredMin: 60,
      judgedMin: 0,
      judged: 0,
      longest: undefined,
    });
  });

  test('a night keeps its lowest, on the day it began', () => {
    const readings = readingsFrom('2026-11-24T22:00:00+01:00', 120, [22, 21, 20.4, 20.9, 21.2]);
    const lines = dayLines(readings, spanOf(readings), bandAt);
    expect(lines).toEqual([{ date: '2026-11-24', readings: 5, nightMinC: 20.4, nightTargetC: 21 }]);
  });

  test('a lowest noted in the morning counts to the night before', () => {
    const [reading] = readingsFrom('2026-11-25T09:30:00+01:00', 5, [25]);
    const noted = { ...reading!, lowC: 19.8 };
    expect(dayLines([noted], spanOf([noted]), bandAt)).toEqual([
      { date: '2026-11-24', readings: 0, nightMinC: 19.8, nightTargetC: 21 },
      { date: '2026-11-25', readings: 1, dayMaxC: 25, dayMinC: 25 },
    ]);
  });
});

test('a band is one without a break over any span', () => {
  const bandAt = bandsOf([aProgramme()], 'hot spot', protocol);
  const minute = fc.integer({ min: 29_700_000, max: 29_800_000 });
  fc.assert(
    fc.property(minute, fc.integer({ min: 1, max: 10_000 }), (from, length) => {
      const bands = bandsOver(bandAt, from, from + length);
      expect(bands.at(-1)?.toMin).toBe(from + length);
      for (const [i, band] of bands.entries()) {
        expect(band.toMin).toBeGreaterThan(band.fromMin);
        expect(band.fromMin).toBe(bands[i - 1]?.toMin ?? from);
        // A hot spot of 32 °C, one degree either side: common practice, no source.
        expect(band).toMatchObject({ lowC: 31, highC: 33 });
      }
    }),
    runs(200),
  );
});
