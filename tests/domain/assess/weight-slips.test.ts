import { describe, expect, test } from 'vitest';
import { weightSlips, type WeightContext } from '../../../src/domain/assess/weight-slips.ts';

/** An adult female that weighed 1,500 g ten days ago, with what differs. */
const find = (differing: Partial<WeightContext> & { massG: number }) =>
  weightSlips({
    last: { massG: 1_500, daysAgo: 10 },
    ageDays: 1_500,
    sex: 'female',
    taresG: [],
    neighbours: [],
    ...differing,
  });
const codes = (differing: Partial<WeightContext> & { massG: number }) =>
  find(differing).doubts.map(({ code }) => code);

// The ratios of the usual slips are common practice, no source; the factors between units are NIST
// Special Publication 811 (2008), Appendix B.8: 1 oz = 28.349 523 125 g, 1 lb = 453.592 37 g.
describe('a slip by a factor offers the mass that was meant', () => {
  test.each([
    { typed: 15_200, meant: 1_520, why: 'a digit typed twice' },
    { typed: 152, meant: 1_520, why: 'a digit left out' },
    { typed: 152_000, meant: 1_520, why: 'the decimals of the scale typed along' },
    { typed: 15.2, meant: 1_520, why: 'two digits left out' },
    { typed: 53.6, meant: 1_520, why: 'ounces: 1,520 g are 53.6 oz' },
    { typed: 3.35, meant: 1_520, why: 'pounds: 1,520 g are 3.35 lb' },
    { typed: 1.52, meant: 1_520, why: 'kilograms' },
  ])('$typed g: $why', ({ typed, meant }) => {
    const [doubt, ...more] = find({ massG: typed }).doubts;
    expect(more).toEqual([]);
    expect(doubt?.code).toBe('ratio');
    expect(doubt?.message).toContain('1,500\u00A0g');
    expect(Math.abs((doubt?.instead?.value ?? 0) / meant - 1)).toBeLessThan(0.005);
  });

  test.each([
    { last: 53, typed: 1_520, meant: 53.6, why: 'grams where ounces were typed before' },
    { last: 3.3, typed: 1_520, meant: 3.4, why: 'grams where pounds were typed before' },
  ])('$typed after $last: $why', ({ last, typed, meant }) => {
    const [doubt] = find({ massG: typed, last: { massG: last, daysAgo: 10 } }).doubts;
    expect(doubt?.instead?.value).toBeCloseTo(meant, 1);
  });
});

describe('other slips at the scale', () => {
  test.each([
    { massG: 1_250, meant: 1_520, last: 1_500, why: '1520 typed as 1250' },
    { massG: 5_120, meant: 1_520, last: 1_500, why: '1520 typed as 5120' },
    { massG: 426, meant: 246, last: 250, why: '246 typed as 426' },
  ])('two digits swapped: $why', ({ massG, meant, last }) => {
    const [doubt] = find({ massG, last: { massG: last, daysAgo: 20 } }).doubts;
    expect(doubt).toMatchObject({ code: 'transposed', instead: { value: meant } });
  });

  test('a change that growth or a fast explains is not taken for one', () => {
    expect(codes({ massG: 387, last: { massG: 358, daysAgo: 21 } })).toEqual([]);
    expect(codes({ massG: 387, last: { massG: 358, daysAgo: 5 } })).toEqual(['transposed']);
  });

  test('two equal digits are never taken for swapped ones', () => {
    expect(codes({ massG: 1_666, last: { massG: 1_500, daysAgo: 5 } })).toEqual([]);
  });

  test('the tub weighed along: offered without it, to within five grams', () => {
    expect(find({ massG: 1_813, taresG: [310] }).doubts[0]).toMatchObject({
      code: 'tare',
      instead: { value: 1_503 },
    });
    expect(codes({ massG: 1_820, taresG: [310] })).not.toContain('tare');
  });

  test('the number of the snake before, typed again', () => {
    const previousEntry = { name: 'Cedar', massG: 1_700 };
    expect(codes({ massG: 1_700, previousEntry })).toEqual(['repeated']);
    expect(codes({ massG: 1_510, previousEntry: { name: 'Cedar', massG: 1_510 } })).toEqual([]);
  });

  test('the snake next door', () => {
    const neighbours = [{ name: 'Tansy', massG: 1_000 }];
    const [doubt] = find({ massG: 1_010, neighbours }).doubts;
    expect(doubt).toMatchObject({ code: 'neighbour', message: expect.stringContaining('Tansy') });
    expect(codes({ massG: 1_480, neighbours: [{ name: 'Tansy', massG: 1_480 }] })).toEqual([]);
  });
});

// More than +20 % or −12 % in a month is unusual in an adult, +80 % or −12 % in a young one, +8 %
// or −3 % a day in a hatchling under 60 days. Common practice, no source.
describe('a change that no slip explains', () => {
  test.each([
    { massG: 1_790, asked: [], why: '+19 %' },
    { massG: 1_815, asked: ['gain'], why: '+21 %' },
    { massG: 1_335, asked: [], why: '−11 %' },
    { massG: 1_310, asked: ['loss'], why: '−13 %' },
  ])('an adult at $massG g, $why in a month: $asked', ({ massG, asked }) => {
    expect(codes({ massG, last: { massG: 1_500, daysAgo: 30 } })).toEqual(asked);
  });

  test.each([
    { massG: 530, asked: [], why: '+77 %' },
    { massG: 550, asked: ['gain'], why: '+83 %' },
    { massG: 255, asked: ['loss'], why: '−15 %' },
  ])('a young one at $massG g, $why in a month: $asked', ({ massG, asked }) => {
    const last = { massG: 300, daysAgo: 30 };
    expect(codes({ massG, last, ageDays: 300 })).toEqual(asked);
  });

  test.each([
    { massG: 74, asked: [], why: '+7 % a day for two days' },
    { massG: 78, asked: ['gain'], why: '+11 % a day' },
    { massG: 61, asked: ['loss'], why: '−3.5 % a day' },
  ])('a hatchling of 65 g at $massG g after two days, $why: $asked', ({ massG, asked }) => {
    expect(codes({ massG, last: { massG: 65, daysAgo: 2 }, ageDays: 20 })).toEqual(asked);
  });
});

describe('what is no slip', () => {
  test('a meal of the last three days is noted, not doubted', () => {
    const hatchling = { last: { massG: 80, daysAgo: 4 }, ageDays: 90, massG: 90 };
    const lastMeal = { massG: 11, daysAgo: 1 };
    expect(find({ ...hatchling, lastMeal })).toMatchObject({
      doubts: [],
      notes: [expect.any(String)],
    });
  });

  test.each([
    { massG: 600, daysAgo: 365, ageDays: 400, why: 'a hatchling weighed again after a year' },
    { massG: 600, daysAgo: 46, ageDays: 400, why: 'after more than 45 days, by its age alone' },
  ])('ten times as much: $why', ({ massG, daysAgo, ageDays }) => {
    expect(codes({ massG, last: { massG: 60, daysAgo }, ageDays })).toEqual([]);
  });

  test('after a long gap, or at the first weighing, its age is what remains', () => {
    expect(codes({ massG: 152, last: { massG: 1_500, daysAgo: 91 } })).toEqual(['age']);
    expect(codes({ massG: 152, last: undefined })).toEqual(['age']);
    expect(codes({ massG: 15_200, last: undefined, ageDays: undefined })).toEqual([]);
  });

  // Captive animals, wide on purpose: common practice, no source.
  test.each([
    { ageDays: 1, low: 35, high: 95 },
    { ageDays: 30, low: 40, high: 120 },
    { ageDays: 91, low: 55, high: 220 },
    { ageDays: 183, low: 90, high: 420 },
    { ageDays: 365, low: 200, high: 800 },
    { ageDays: 548, low: 350, high: 1_050 },
    { ageDays: 730, low: 500, high: 1_300 },
    { ageDays: 1_096, low: 900, high: 1_700 },
    { ageDays: 3_000, low: 1_100, high: 1_900 },
  ])('$low to $high g at $ageDays days asks nothing of either sex', ({ ageDays, low, high }) => {
    for (const sex of ['male', 'female', 'unknown'] as const) {
      expect(codes({ massG: low, last: undefined, ageDays, sex })).toEqual([]);
      expect(codes({ massG: high, last: undefined, ageDays, sex })).toEqual([]);
    }
  });
});
