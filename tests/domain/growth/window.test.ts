import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '../../../src/domain/core/calendar.ts';
import {
  chanceThereBy,
  growthWindow,
  type GrowthWindow,
} from '../../../src/domain/growth/window.ts';
import { marksOf } from '../../../src/domain/growth/marks.ts';
import { defaultProtocol } from '../../../src/domain/protocol/values.ts';
import { window } from '../../../src/domain/windows/day-chances.ts';
import { runs } from '../../arbitrary.ts';
import { day } from '../../make.ts';
import { fromOpenRecord, openRecord } from '../weight/open-record.ts';
import { aWeightStory } from '../weight/weight-story.ts';

const START = day('2026-01-05');

/** Weights every so many days, asked about on the evening of the last. */
function asked(
  masses: readonly number[],
  everyDays: number,
  targetG: number,
  sex: 'female' | 'male' = 'female',
  later = 0,
): GrowthWindow {
  const { readings } = aWeightStory({
    masses: masses.map((massG, i) => [addDays(START, i * everyDays), massG]),
  });
  const tonight = addDays(START, (masses.length - 1) * everyDays + later);
  return growthWindow(targetG, readings, { sex, layings: [], tonight, protocol: defaultProtocol });
}

const isWindow = (said: GrowthWindow): said is Extract<GrowthWindow, { kind: 'window' }> =>
  said.kind === 'window';

describe('what is said of when it weighs enough', () => {
  test.each([
    ['no weight', [], 30, 0, 'fewer than three weights'],
    ['two weights', [800, 860], 30, 0, 'fewer than three weights'],
    ['three within a fortnight', [800, 810, 820], 7, 0, 'weights too close together'],
    ['a last weight of four months ago', [700, 760, 820], 30, 120, 'last weight too old'],
  ])('with %s is that too little is known', (_name, masses, every, later, why) => {
    expect(asked(masses, every, 1_500, 'female', later)).toEqual({ kind: 'too little known', why });
  });

  test('where it is there, is since when', () => {
    const said = asked([1_400, 1_450, 1_510, 1_540], 30, 1_500);
    expect(said).toEqual({ kind: 'there', since: addDays(START, 60) });
  });

  test.each([
    ['that stands still far below', [900, 905, 898, 902, 900, 904, 901], 1_500, 'female'],
    ['a male, of a female’s weight', [700, 712, 720, 731, 738, 744], 1_500, 'male'],
  ] as const)('of one %s, is that it is not likely', (_name, masses, targetG, sex) => {
    const said = asked(masses, 30, targetG, sex);
    expect(said.kind).toBe('not likely');
    expect(said.kind === 'not likely' ? said.chanceWithin : 1).toBeLessThan(0.5);
  });

  test('of one that loses weight, is that it is not growing', () => {
    const said = asked([1_000, 970, 950, 930, 900], 30, 1_500);
    // By hand: ln 0.9 over 120 days is −0.088 % a day.
    expect(said.kind === 'not growing' ? said.trend.percentPerDay : NaN).toBeCloseTo(-0.088, 2);
  });

  test('of one that gains 60 g a month at 1,200 g, is a window about five months off', () => {
    // By hand: 300 g at 60 g a month are 150 days, somewhat more as growth slows.
    const said = asked([840, 900, 960, 1_020, 1_080, 1_140, 1_200], 30, 1_500);
    expect(isWindow(said)).toBe(true);
    if (!isWindow(said)) return;
    const { from, likely, to } = window(said.chances);
    const tonight = addDays(START, 180);
    expect(likely >= addDays(tonight, 90) && likely <= addDays(tonight, 240)).toBe(true);
    expect(from > addDays(tonight, 30) && to > addDays(tonight, 170)).toBe(true);
    expect(chanceThereBy(addDays(tonight, 900), said)).toBeLessThanOrEqual(said.chanceWithin);
  });

  test('has a chance for each day that add up to 1, whatever the weights', () => {
    fc.assert(
      fc.property(
        fc.array(fc.integer({ min: 60, max: 1_400 }), { minLength: 3, maxLength: 12 }),
        fc.integer({ min: 14, max: 60 }),
        (masses, every) => {
          const said = asked(masses, every, 1_500);
          if (!isWindow(said)) return;
          const sum = said.chances.chances.reduce((a, b) => a + b, 0);
          expect(sum).toBeCloseTo(1, 9);
          expect(Math.min(...said.chances.chances)).toBeGreaterThanOrEqual(0);
          expect(said.chanceWithin).toBeLessThanOrEqual(1);
        },
      ),
      runs(40),
    );
  });

  test('a heavier target is never more likely than a lighter one', () => {
    const chance = (targetG: number): number => {
      const said = asked([500, 560, 610, 680, 730], 30, targetG);
      return 'chanceWithin' in said ? said.chanceWithin : NaN;
    };
    const chances = [900, 1_100, 1_300, 1_500, 1_800, 2_200].map(chance);
    expect(chances).toEqual(chances.toSorted((a, b) => b - a));
  });
});

describe('weights with a meal in them', () => {
  test('have half of what may be in the gut taken off, and are less sure', () => {
    const { readings } = aWeightStory({
      masses: [['2026-03-10', 1_000]],
      meals: [
        ['2026-02-01', 60],
        ['2026-03-08', 80],
      ],
    });
    const [mark] = marksOf(readings, defaultProtocol);
    expect(mark?.massG).toBe(960);
    // An even spread over 80 g has an SD of 80/√12 g; 2 % is the noise assumed.
    expect(mark?.error).toBeCloseTo(Math.hypot(0.02, 80 / Math.sqrt(12) / 960), 9);
  });
});

describe('real growing snakes of the open record', () => {
  const growing = ['01', '02', '03', '04', '05', '07', '08'];
  const LAST = day('2010-12-03');

  /** Chance of having gained so much by the end of the record, and whether it had. */
  function byTheEnd(name: string, tonight: string, times: number) {
    const { readings } = fromOpenRecord(name);
    const sex = openRecord.find(({ snake }) => snake === name)?.sex ?? 'unknown';
    const known = readings.filter(({ night }) => night <= tonight);
    const targetG = times * (marksOf(known, defaultProtocol).at(-1)?.massG ?? NaN);
    const facts = { sex, layings: [], tonight: day(tonight), protocol: defaultProtocol };
    const said = growthWindow(targetG, known, facts);
    return {
      chance: isWindow(said) ? chanceThereBy(LAST, said) : 0,
      isThere: marksOf(readings, defaultProtocol).some(({ massG }) => massG >= targetG),
    };
  }

  test.each(
    ['2010-07-02', '2010-08-01', '2010-08-29'].flatMap((tonight) =>
      [1.05, 1.1, 1.2, 1.3, 1.5].map((times) => [tonight, times] as const),
    ),
  )(
    'from %s on, about as many weigh %f times as much in December as foretold',
    (tonight, times) => {
      const all = growing.map((name) => byTheEnd(name, tonight, times));
      const foretold = all.reduce((sum, { chance }) => sum + chance, 0);
      const came = all.filter(({ isThere }) => isThere).length;
      // Of seven; one SD of such a count is about 1.2.
      expect(Math.abs(foretold - came)).toBeLessThan(2.4);
    },
  );
});
