import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays } from '../../../src/domain/core/calendar.ts';
import { orderList, type FeedingPlan } from '../../../src/domain/prey/order.ts';
import {
  countStock,
  lastsUntil,
  takeOut,
  usableStock,
  type StockBatch,
} from '../../../src/domain/prey/stock.ts';
import { thawList, type DueMeal } from '../../../src/domain/prey/thaw.ts';
import { defaultProtocol } from '../../../src/domain/protocol/values.ts';
import { runs } from '../../arbitrary.ts';
import { day } from '../../make.ts';

const rat = (size: string, eachG: number, count = 1) => ({
  kind: 'rat' as const,
  size,
  eachG,
  count,
});
/** One that eats with a chance, and is known well. */
const eats = (chance: number) => ({ eaten: 1_000 * chance, refused: 1_000 * (1 - chance) });
const due = (chance: number, more: Partial<DueMeal> = {}): DueMeal => ({
  meal: rat('small', 65),
  acceptance: eats(chance),
  keepsOwn: false,
  ...more,
});
const many = <Item>(count: number, item: Item): Item[] => Array.from({ length: count }, () => item);

describe('what is thawed tonight', () => {
  test('of ten that eat half the time is seven: enough on nine nights of ten', () => {
    // Binomial tables, n = 10, p = 0.5: P(≤ 6) = 0.828, P(≤ 7) = 0.945.
    const [line] = thawList(many(10, due(0.5)), defaultProtocol);
    expect(line).toMatchObject({ thaw: 7, offered: 10, animals: 10, spare: 2 });
    expect(line?.expected).toBeCloseTo(5, 9);
    expect(line?.because.join(' ')).toMatch(/7 are enough on 90 of 100 nights/);
  });

  test('is a piece for each where all eat, and none is spare', () => {
    const [line] = thawList(many(6, due(1)), defaultProtocol);
    expect(line).toMatchObject({ thaw: 6, offered: 6, spare: 0 });
  });

  test('holds a piece for each in quarantine, for nothing goes on from there', () => {
    const [line] = thawList(
      [...many(10, due(0.5)), ...many(3, due(0.1, { keepsOwn: true }))],
      defaultProtocol,
    );
    expect(line?.thaw).toBe(10);
    expect(line?.because.join(' ')).toMatch(/3 for quarantine/);
  });

  test('holds a whole meal even where it is likely refused', () => {
    const [line] = thawList([due(0.05, { meal: rat('small', 65, 2) })], defaultProtocol);
    expect(line?.thaw).toBe(2);
  });

  test('stands by size, the heaviest first', () => {
    const sizes = ['pup', 'medium', 'small'].map((size, i) =>
      due(0.9, { meal: rat(size, [22, 100, 65][i] ?? 0) }),
    );
    expect(thawList(sizes, defaultProtocol).map(({ size }) => size)).toEqual([
      'medium',
      'small',
      'pup',
    ]);
  });

  test('is never more than is offered, nor less than is expected by more than one', () => {
    const anyDue = fc
      .tuple(fc.double({ min: 0.05, max: 0.99, noNaN: true }), fc.boolean())
      .map(([chance, keepsOwn]) => due(chance, { keepsOwn }));
    fc.assert(
      fc.property(fc.array(anyDue, { minLength: 1, maxLength: 40 }), (meals) => {
        const [line] = thawList(meals, defaultProtocol);
        expect(line?.thaw).toBeLessThanOrEqual(line?.offered ?? NaN);
        expect(line?.thaw).toBeGreaterThan((line?.expected ?? NaN) - 1);
      }),
      runs(60),
    );
  });
});

describe('what is ordered', () => {
  const FROM = day('2026-11-24');
  const plan = (more: Partial<FeedingPlan> = {}): FeedingPlan => ({
    meal: rat('small', 65),
    acceptance: eats(0.9),
    next: FROM,
    everyDays: 7,
    ...more,
  });
  const order = (plans: readonly FeedingPlan[], weeks: number, stock: readonly StockBatch[] = []) =>
    orderList(plans, stock, { from: FROM, weeks, protocol: defaultProtocol })[0];

  test.each([
    ['on the first night on', FROM, 7, 4],
    ['a week late, on the first night', addDays(FROM, -7), 7, 4],
    ['in ten days', addDays(FROM, 10), 7, 3],
    ['after the four weeks', addDays(FROM, 28), 7, 0],
    ['every 14 days', FROM, 14, 2],
  ])('counts the offers in four weeks of one that is fed %s', (_name, next, everyDays, offers) => {
    expect(order([plan({ next, everyDays })], 4)?.offers).toBe(offers);
  });

  test('is near the rule of the trade: need, and a tenth more', () => {
    // Weeks × pieces a week × chance × 1.1 [common practice, no source].
    const line = order(many(100, plan({ everyDays: 10 })), 4);
    const rule = (4 * 7 * 100 * 0.9 * 1.1) / 10;
    expect(line?.enough).toBeGreaterThan(0.9 * rule);
    expect(line?.enough).toBeLessThan(1.1 * rule);
    // The first night is an offer for all of them, so there are three in four weeks, not 2.8.
    expect(line?.offers).toBe(300);
    expect(line?.expected).toBeCloseTo(270, 6);
  });

  test('is more, with the same mean, for one whose appetite is not known', () => {
    const known = order(many(3, plan({ acceptance: eats(0.5) })), 8);
    const unknown = order(many(3, plan({ acceptance: { eaten: 1, refused: 1 } })), 8);
    expect(unknown?.expected).toBeCloseTo(known?.expected ?? NaN, 6);
    expect(unknown?.enough).toBeGreaterThan(known?.enough ?? NaN);
  });

  test('is what the freezer lacks', () => {
    const batch = { id: 'a', kind: 'rat', size: 'small', pieces: 8 } as const;
    const without = order([plan(), plan()], 4);
    const within = order([plan(), plan()], 4, [batch]);
    expect(within).toMatchObject({ inStock: 8, goesOff: 0 });
    expect(within?.order).toBe(Math.max(0, (without?.order ?? NaN) - 8));
  });

  test('does not count on what goes off before it is eaten', () => {
    const plans = many(10, plan({ acceptance: eats(1), everyDays: 7 }));
    const stock = [
      { id: 'a', kind: 'rat', size: 'small', pieces: 40, useBy: addDays(FROM, 6) },
    ] as const;
    // 40 are eaten in 28 days, 10 of them in the first seven.
    expect(order(plans, 4, stock)).toMatchObject({
      enough: 40,
      inStock: 40,
      goesOff: 30,
      order: 30,
    });
  });
});

describe('the freezer', () => {
  const ON = day('2026-11-24');
  const batches: readonly StockBatch[] = [
    { id: 'none', kind: 'rat', size: 'small', pieces: 5 },
    { id: 'late', kind: 'rat', size: 'small', pieces: 10, useBy: day('2027-03-01') },
    { id: 'soon', kind: 'rat', size: 'small', pieces: 4, useBy: day('2026-12-01') },
    { id: 'past', kind: 'rat', size: 'small', pieces: 3, useBy: day('2026-11-23') },
  ];

  test('counts what is good and what is past its date; on its last day a piece is good', () => {
    expect(countStock(batches, ON)).toEqual({ good: 19, past: 3 });
    expect(countStock(batches, day('2026-12-01')).good).toBe(19);
    expect(countStock(batches, day('2026-12-02')).good).toBe(15);
  });

  test('gives what goes off first, and never what is past its date', () => {
    const { from, short, batches: left } = takeOut(batches, 16, ON);
    expect(from).toEqual([
      { id: 'soon', pieces: 4 },
      { id: 'late', pieces: 10 },
      { id: 'none', pieces: 2 },
    ]);
    expect(short).toBe(0);
    expect(countStock(left, ON)).toEqual({ good: 3, past: 3 });
  });

  test('says how many are wanting', () => {
    expect(takeOut(batches, 30, ON).short).toBe(11);
  });

  test('lasts as long as what is good is eaten evenly', () => {
    // By hand: 19 at one a day are gone after 19 days.
    expect(lastsUntil(batches, ON, 1)).toBe('2026-12-13');
    expect(lastsUntil(batches, ON, 0)).toBeUndefined();
  });

  test('neither makes nor loses pieces', () => {
    const anyBatch = fc.record({
      pieces: fc.integer({ min: 0, max: 30 }),
      ahead: fc.integer({ min: -5, max: 60 }),
    });
    fc.assert(
      fc.property(
        fc.array(anyBatch, { maxLength: 6 }),
        fc.integer({ min: 0, max: 80 }),
        (all, wanted) => {
          const stock = all.map(({ pieces, ahead }, i): StockBatch => {
            return { id: `${i}`, kind: 'rat', size: 'pup', pieces, useBy: addDays(ON, ahead) };
          });
          const taken = takeOut(stock, wanted, ON);
          const before = countStock(stock, ON);
          const after = countStock(taken.batches, ON);
          expect(before.good - after.good).toBe(wanted - taken.short);
          expect(after.past).toBe(before.past);
          const { usable, goesOff } = usableStock(stock, { from: ON, days: 30, perDay: 1.3 });
          expect(usable + goesOff).toBe(before.good + before.past);
        },
      ),
      runs(80),
    );
  });
});
