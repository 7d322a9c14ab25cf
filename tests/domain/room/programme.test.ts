import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { presets } from '../../../src/domain/room/presets.ts';
import { inForce, partAt, targetOn } from '../../../src/domain/room/programme.ts';
import { sources } from '../../../src/domain/sources.ts';
import { day } from '../../make.ts';
import { runs } from '../../arbitrary.ts';
import { aProgramme, minuteOf } from './make-air.ts';

const drop = aProgramme({
  steps: [
    { month: 10, day: 1, dayC: 26, nightC: 24.5, hotSpotC: 32 },
    { month: 11, day: 1, dayC: 25.5, nightC: 21, hotSpotC: 32 },
    { month: 3, day: 1, dayC: 25.5, nightC: 21, hotSpotC: 32 },
    { month: 4, day: 1, dayC: 26, nightC: 24.5, hotSpotC: 32 },
  ],
});

describe('the ramp between two steps, by hand', () => {
  // October has 31 days: after n of them the night is 24.5 − 3.5 n/31, the day 26 − 0.5 n/31.
  test.each([
    { on: '2026-10-01', nightC: 24.5, dayC: 26 },
    { on: '2026-10-02', nightC: 24.5 - 3.5 / 31, dayC: 26 - 0.5 / 31 },
    { on: '2026-10-16', nightC: 24.5 - (3.5 * 15) / 31, dayC: 26 - (0.5 * 15) / 31 },
    { on: '2026-10-31', nightC: 24.5 - (3.5 * 30) / 31, dayC: 26 - (0.5 * 30) / 31 },
    { on: '2026-11-01', nightC: 21, dayC: 25.5 },
    { on: '2026-12-31', nightC: 21, dayC: 25.5 },
    { on: '2027-01-01', nightC: 21, dayC: 25.5 },
    { on: '2028-02-29', nightC: 21, dayC: 25.5 },
    { on: '2027-03-11', nightC: 21 + (3.5 * 10) / 31, dayC: 25.5 + (0.5 * 10) / 31 },
    { on: '2027-07-15', nightC: 24.5, dayC: 26 },
  ])('on $on', ({ on, nightC, dayC }) => {
    const target = targetOn(drop, day(on));
    expect(target.nightC).toBeCloseTo(nightC, 10);
    expect(target.dayC).toBeCloseTo(dayC, 10);
    expect(target.hotSpotC).toBe(32);
    expect(target.hotSpotNightC).toBe(32);
  });

  const winter = aProgramme({
    steps: [
      { month: 12, day: 22, dayC: 28, nightC: 24 },
      { month: 1, day: 11, dayC: 28, nightC: 22 },
    ],
  });
  test('goes on over New Year: 20 days from 24 to 22', () => {
    expect(targetOn(winter, day('2026-12-31')).nightC).toBeCloseTo(24 - (2 * 9) / 20, 10);
    expect(targetOn(winter, day('2027-01-01')).nightC).toBeCloseTo(24 - (2 * 10) / 20, 10);
  });

  const spring = aProgramme({
    steps: [
      { month: 2, day: 20, dayC: 28, nightC: 20 },
      { month: 3, day: 2, dayC: 28, nightC: 31 },
    ],
  });
  test('counts 29 February where there is one: 10 days in 2027, 11 in 2028', () => {
    expect(targetOn(spring, day('2027-03-01')).nightC).toBeCloseTo(20 + (11 * 9) / 10, 10);
    expect(targetOn(spring, day('2028-02-29')).nightC).toBeCloseTo(20 + (11 * 9) / 11, 10);
    expect(targetOn(spring, day('2028-03-01')).nightC).toBeCloseTo(20 + (11 * 10) / 11, 10);
  });

  test('a step on 29 February is on 28 February in other years', () => {
    const leap = aProgramme({
      steps: [
        { month: 2, day: 29, dayC: 30, nightC: 20 },
        { month: 6, day: 1, dayC: 20, nightC: 20 },
      ],
    });
    expect(targetOn(leap, day('2027-02-28')).dayC).toBe(30);
    expect(targetOn(leap, day('2028-02-29')).dayC).toBe(30);
    expect(targetOn(leap, day('2028-02-28')).dayC).toBeLessThan(30);
  });

  test('one step alone holds all year', () => {
    const even = aProgramme();
    for (const on of ['2026-01-01', '2026-12-31', '2028-02-29']) {
      expect(targetOn(even, day(on))).toMatchObject({ dayC: 26, nightC: 21 });
    }
  });
});

test('a ramp never leaves the range of its steps', () => {
  const step = fc.record({
    month: fc.integer({ min: 1, max: 12 }),
    day: fc.integer({ min: 1, max: 31 }),
    dayC: fc.integer({ min: 20, max: 32 }),
    nightC: fc.integer({ min: 18, max: 30 }),
  });
  const steps = fc.array(step, { minLength: 1, maxLength: 6 });
  const dates = fc.integer({ min: 0, max: 3_000 }).map((n) => {
    return day(new Date(Date.UTC(2024, 0, 1) + n * 86_400_000).toISOString().slice(0, 10));
  });
  fc.assert(
    fc.property(steps, dates, (all, on) => {
      const { nightC } = targetOn(aProgramme({ steps: all }), on);
      const nights = all.map((each) => each.nightC);
      expect(nightC).toBeGreaterThanOrEqual(Math.min(...nights) - 1e-9);
      expect(nightC).toBeLessThanOrEqual(Math.max(...nights) + 1e-9);
    }),
    runs(300),
  );
});

describe('day and night', () => {
  const local = (at: string): number => minuteOf(`${at}Z`);
  test.each([
    { at: '2026-11-24T07:59:00', part: 'night', date: '2026-11-23' },
    { at: '2026-11-24T08:00:00', part: 'day', date: '2026-11-24' },
    { at: '2026-11-24T19:59:00', part: 'day', date: '2026-11-24' },
    { at: '2026-11-24T20:00:00', part: 'night', date: '2026-11-24' },
    { at: '2027-01-01T02:00:00', part: 'night', date: '2026-12-31' },
  ])('$at is $part of $date', ({ at, part, date }) => {
    expect(partAt(aProgramme(), local(at))).toEqual({ part, date });
  });

  test('may be turned round, for a keeper who works by night', () => {
    const turned = aProgramme({ dayFromMin: 1_200, nightFromMin: 480 });
    expect(partAt(turned, local('2026-11-24T23:00:00'))).toEqual({
      part: 'day',
      date: '2026-11-24',
    });
    expect(partAt(turned, local('2026-11-25T03:00:00'))).toEqual({
      part: 'day',
      date: '2026-11-24',
    });
    expect(partAt(turned, local('2026-11-25T09:00:00'))).toEqual({
      part: 'night',
      date: '2026-11-25',
    });
  });
});

test('of two programmes the one set last holds, from its day on', () => {
  const first = aProgramme({ name: 'first', from: day('2026-10-01') });
  const second = aProgramme({ name: 'second', from: day('2026-11-15') });
  const correction = aProgramme({ name: 'corrected', from: day('2026-10-10') });
  expect(inForce([first, second], day('2026-09-30'))).toBeUndefined();
  expect(inForce([first, second], day('2026-11-14'))?.name).toBe('first');
  expect(inForce([first, second], day('2026-11-15'))?.name).toBe('second');
  expect(inForce([first, second, correction], day('2026-12-01'))?.name).toBe('corrected');
});

// Common practice, no source: the bounds are those the trade gives for each school.
describe('the schools', () => {
  const targetsOf = (name: string) => {
    const preset = presets.find((each) => each.name === name)!;
    const programme = { ...preset, from: day('2026-01-01') };
    return Array.from({ length: 365 }, (_, n) =>
      targetOn(
        programme,
        day(new Date(Date.UTC(2026, 0, 1) + n * 86_400_000).toISOString().slice(0, 10)),
      ),
    );
  };
  const inSeason = (name: string) => targetsOf(name)[20]!;
  const outOfSeason = (name: string) => targetsOf(name)[200]!;

  test('strong drop: 78 °F and 70 °F in season, 78–80 °F and 76 °F out of it', () => {
    expect(inSeason('Strong night drop').dayC).toBeCloseTo(25.6, 0);
    expect(inSeason('Strong night drop').nightC).toBeCloseTo(21.1, 0);
    expect(outOfSeason('Strong night drop').dayC).toBeGreaterThanOrEqual(25.5);
    expect(outOfSeason('Strong night drop').dayC).toBeLessThanOrEqual(26.7);
    expect(outOfSeason('Strong night drop').nightC).toBeCloseTo(24.4, 0);
  });

  test('strong drop: the hot spot, 89–90 °F, is never lowered', () => {
    for (const { hotSpotC, hotSpotNightC } of targetsOf('Strong night drop')) {
      expect(hotSpotC).toBeGreaterThanOrEqual(31.7);
      expect(hotSpotC).toBeLessThanOrEqual(32.3);
      expect(hotSpotNightC).toBe(hotSpotC);
    }
  });

  test('mild drop: 27–29 °C by day, 23–25 °C by night in season', () => {
    const { dayC, nightC, hotSpotC, hotSpotNightC } = inSeason('Mild night drop');
    expect(dayC).toBeGreaterThanOrEqual(27);
    expect(dayC).toBeLessThanOrEqual(29);
    expect(nightC).toBeGreaterThanOrEqual(23);
    expect(nightC).toBeLessThanOrEqual(25);
    expect(hotSpotNightC).toBeLessThan(hotSpotC ?? 0);
  });

  test('no drop: the same all year, nights 0–2 °C under the days', () => {
    const targets = targetsOf('No drop');
    expect(new Set(targets.map((each) => JSON.stringify(each))).size).toBe(1);
    const fallC = targets[0]!.dayC - targets[0]!.nightC;
    expect(fallC).toBeGreaterThanOrEqual(0);
    expect(fallC).toBeLessThanOrEqual(2);
  });

  test.each(presets)('$name says where it comes from', ({ source }) => {
    expect(sources).toHaveProperty(source);
  });
});
