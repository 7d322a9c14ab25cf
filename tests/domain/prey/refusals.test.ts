import { describe, expect, test } from 'vitest';
import { nonFeeder, nonFeederLadder } from '../../../src/domain/prey/non-feeder.ts';
import { readRefusals, type RefusalFacts } from '../../../src/domain/prey/read-refusals.ts';
import { husbandryLooks, refusalRows } from '../../../src/domain/prey/refusal-rows.ts';
import { refusalRun } from '../../../src/domain/prey/refusal-run.ts';
import { defaultProtocol } from '../../../src/domain/protocol/values.ts';
import { sources } from '../../../src/domain/sources.ts';
import { day } from '../../make.ts';

const read = (facts: Partial<RefusalFacts>) =>
  readRefusals(
    {
      kind: 'female',
      isMale: false,
      month: 6,
      massG: 1_600,
      inBlue: false,
      refusals: 1,
      days: 20,
      lostShare: 0.01,
      graveSign: false,
      ...facts,
    },
    defaultProtocol,
  );

const male = { kind: 'male', isMale: true, massG: 900 } as const;
const grower = { kind: 'grower', massG: 300 } as const;

describe('refusals, read beside stage, season and weight', () => {
  // What each means is common practice, no source.
  test.each<[string, Partial<RefusalFacts>, string, string]>([
    [
      'ripe follicles',
      { largestFollicleMm: 31, month: 3, refusals: 3 },
      'ripe follicles',
      'expected',
    ],
    ['follicles of 20 mm', { largestFollicleMm: 20, month: 3, refusals: 4 }, 'adult', 'watch'],
    ['gravid', { phase: 'gravid', refusals: 5, days: 45, lostShare: 0.04 }, 'gravid', 'expected'],
    ['gravid, 11 % down', { phase: 'gravid', refusals: 5, lostShare: 0.11 }, 'gravid', 'act'],
    [
      'with her eggs',
      { phase: 'brooding', refusals: 6, days: 60, lostShare: 0.06 },
      'brooding',
      'expected',
    ],
    [
      'laid 12 days ago',
      { phase: 'after laying', daysSinceLaying: 12, days: 70 },
      'after laying',
      'expected',
    ],
    [
      'laid 25 days ago',
      { phase: 'after laying', daysSinceLaying: 25, days: 90 },
      'after laying',
      'act',
    ],
    ['in blue', { inBlue: true, refusals: 2, days: 20 }, 'in blue', 'expected'],
    [
      'here for two weeks',
      { daysSinceArrival: 14, days: 14, refusals: 2 },
      'new arrival',
      'expected',
    ],
    [
      'here for five weeks',
      { daysSinceArrival: 35, days: 35, refusals: 4 },
      'new arrival',
      'watch',
    ],
    ['here for seven weeks', { daysSinceArrival: 50, days: 50, refusals: 6 }, 'new arrival', 'act'],
    [
      'a male in January',
      { ...male, month: 1, refusals: 6, days: 90, lostShare: 0.08 },
      'male in winter',
      'expected',
    ],
    [
      'a male in January, 12 % down',
      { ...male, month: 1, refusals: 6, lostShare: 0.12 },
      'male in winter',
      'act',
    ],
    ['a male in June', { ...male, month: 6, refusals: 4 }, 'adult', 'watch'],
    [
      'a young male in his first winter',
      { ...grower, isMale: true, massG: 550, month: 12, refusals: 5, days: 50 },
      'male in winter',
      'expected',
    ],
    ['a grower in July, once', { ...grower, month: 7 }, 'grower in summer', 'expected'],
    ['a grower in July, twice', { ...grower, month: 7, refusals: 2 }, 'grower in summer', 'watch'],
    [
      'a grower in July, three times',
      { ...grower, month: 7, refusals: 3 },
      'grower in summer',
      'act',
    ],
    [
      'a grower in July, 5 % down',
      { ...grower, month: 7, lostShare: 0.05, days: 40 },
      'grower in summer',
      'act',
    ],
    [
      'a grower in January, three times',
      { ...grower, month: 1, refusals: 3 },
      'grower in winter',
      'watch',
    ],
    [
      'an adult that lost 7 % in a month',
      { refusals: 3, days: 30, lostShare: 0.07 },
      'adult',
      'watch',
    ],
    [
      'an adult that lost 4 % in three months',
      { refusals: 3, days: 90, lostShare: 0.04 },
      'adult',
      'expected',
    ],
    ['one that wheezes', { graveSign: true }, 'ill', 'act'],
  ])('%s', (_name, facts, row, level) => {
    expect(read(facts)).toMatchObject({ row, level });
  });

  test('of ripe follicles are a good sign, unless she has lost too much', () => {
    expect(read({ largestFollicleMm: 35 })?.isGoodSign).toBe(true);
    expect(read({ largestFollicleMm: 35, lostShare: 0.12 })).toMatchObject({
      isGoodSign: false,
      level: 'act',
    });
  });

  test('are nothing where none was made', () => {
    expect(read({ refusals: 0 })).toBeUndefined();
  });

  test('say the weight, or that there is none', () => {
    expect(read({ lostShare: 0.031 })?.because.join(' ')).toContain('3.1 %');
    expect(read({ lostShare: undefined })?.because.join(' ')).toContain('weigh it');
  });

  test('ask for a vet when they are acted upon, and look at temperature first', () => {
    expect(read({ phase: 'gravid', lostShare: 0.2 })?.asksVet).toBe(true);
    expect(read({ ...grower, refusals: 3 })?.looks[0]).toMatch(/hot spot/i);
  });

  test('never tell of a treatment', () => {
    const words = [...husbandryLooks, ...nonFeederLadder.flatMap(({ looks }) => looks)].join(' ');
    expect(words).not.toMatch(/\b(assist|force|tube|dose|inject|drug|medicat\w*|soak)\b/i);
  });

  test.each(refusalRows)('row $id has a source, and its limits are protocol values', (row) => {
    expect(sources).toHaveProperty(row.source);
    for (const key of [...Object.values(row.act), ...Object.values(row.watch ?? {})]) {
      expect(defaultProtocol).toHaveProperty(key);
    }
  });
});

describe('a hatchling that does not eat', () => {
  const rung = (refusals: number, lostShare = 0, weeks = 0, isWeak = false) =>
    nonFeeder({ refusals, lostShare, clockDays: 7 * weeks, isWeak }, defaultProtocol)?.rung.id;

  // The order and limits are common practice, no source; keepers differ by weeks.
  test.each([
    ['never refused', 0, 0, 0, undefined],
    ['refused once', 1, 0, 1, 'N0'],
    ['refused twice', 2, 0, 2, 'N1'],
    ['refused three times', 3, 0.03, 3, 'N1'],
    ['refused four times', 4, 0.05, 4, 'N2'],
    ['refused five times', 5, 0.05, 4, 'N3'],
    ['refused twice, six weeks on', 2, 0.05, 6, 'N3'],
    ['9 % below its hatch weight', 2, 0.09, 2, 'N3'],
    ['13 % below its hatch weight', 3, 0.13, 3, 'N4'],
    ['in the eighth week', 6, 0.05, 8, 'N4'],
    ['not offered food for two months', 0, 0.03, 9, undefined],
    ['13 % down and never offered food', 0, 0.13, 2, 'N4'],
  ])('%s', (_name, refusals, lostShare, weeks, expected) => {
    expect(rung(refusals, lostShare, weeks)).toBe(expected);
  });

  test('that is limp is for a vet at once', () => {
    const found = nonFeeder({ refusals: 1, isWeak: true }, defaultProtocol);
    expect(found?.rung).toMatchObject({ id: 'N4', level: 'act', asksVet: true });
  });

  test('has both its refusals and its share of the hatch weight said', () => {
    const words = nonFeeder({ refusals: 3, lostShare: 0.0625, isWeak: false }, defaultProtocol);
    expect(words?.because.join(' ')).toMatch(/3 times.*6\.3 % below/);
  });

  test('only climbs, with refusals and with loss', () => {
    const order = ['N0', 'N1', 'N2', 'N3', 'N4'];
    const heights = [1, 2, 3, 4, 5, 6, 9].map((n) => order.indexOf(rung(n) ?? ''));
    expect(heights).toEqual(heights.toSorted((a, b) => a - b));
  });
});

describe('a run of refusals', () => {
  const night = (n: number) => day(`2026-11-${String(n).padStart(2, '0')}`);

  test('ends at a meal of its own; a meal left or helped with is neither', () => {
    expect(
      refusalRun([
        { night: night(1), outcome: 'refused' },
        { night: night(4), outcome: 'partly' },
        { night: night(8), outcome: 'refused' },
        { night: night(12), outcome: 'ate', isAssisted: true },
        { night: night(16), outcome: 'left' },
        { night: night(20), outcome: 'refused' },
      ]),
    ).toEqual({ refusals: 2, lastMeal: night(4), firstRefusal: night(8), assisted: 1 });
  });
});
