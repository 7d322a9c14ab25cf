import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { addDays, daysBetween } from '../../../src/domain/core/calendar.ts';
import {
  between,
  chanceBy,
  convolve,
  notBefore,
  onDay,
  window,
  type DayChances,
  type LagChances,
} from '../../../src/domain/windows/day-chances.ts';
import { day } from '../../make.ts';

const START = day('2026-03-20'); // Summer time begins in between.

const shares = fc
  .array(fc.integer({ min: 0, max: 100 }), { minLength: 1, maxLength: 30 })
  .filter((parts) => parts.some((part) => part > 0))
  .map((parts) => {
    const all = parts.reduce((a, b) => a + b, 0);
    return parts.map((part) => part / all);
  });
const lags: fc.Arbitrary<LagChances> = fc.record({
  fromDays: fc.integer({ min: 0, max: 60 }),
  chances: shares,
});
const days: fc.Arbitrary<DayChances> = fc.record({
  from: fc.integer({ min: 0, max: 30 }).map((n) => addDays(START, n)),
  chances: shares,
});

const sum = (chances: readonly number[]) => chances.reduce((a, b) => a + b, 0);
const meanLag = ({ fromDays, chances }: LagChances) =>
  chances.reduce((all, chance, n) => all + chance * (fromDays + n), 0);
const meanDay = ({ from, chances }: DayChances) =>
  meanLag({ fromDays: daysBetween(START, from), chances });
/** Every pair of a day and a lag, added up by calendar day. */
function pairByPair(start: DayChances, lag: LagChances): Map<string, number> {
  const found = new Map<string, number>();
  start.chances.forEach((chance, n) =>
    lag.chances.forEach((share, more) => {
      const at = addDays(start.from, n + lag.fromDays + more);
      found.set(at, (found.get(at) ?? 0) + chance * share);
    }),
  );
  return found;
}

describe('one event after another', () => {
  test('has the chances of all pairs of a day and a lag', () => {
    fc.assert(
      fc.property(days, lags, (start, lag) => {
        const next = convolve(start, lag);
        expect(sum(next.chances)).toBeCloseTo(1, 12);
        for (const [at, chance] of pairByPair(start, lag)) {
          expect(next.chances[daysBetween(next.from, day(at))]).toBeCloseTo(chance, 12);
        }
      }),
    );
  });

  test('the means add, and the order of two links does not matter', () => {
    fc.assert(
      fc.property(days, lags, lags, (start, one, other) => {
        const next = convolve(convolve(start, one), other);
        expect(meanDay(next)).toBeCloseTo(meanDay(start) + meanLag(one) + meanLag(other), 8);
        const swapped = convolve(convolve(start, other), one);
        expect(swapped.from).toBe(next.from);
        swapped.chances.forEach((chance, n) =>
          expect(chance).toBeCloseTo(next.chances[n] ?? 0, 12),
        );
      }),
    );
  });
});

describe('an event nobody saw', () => {
  test('is as likely on each day from the empty look to the look that found it', () => {
    expect(between(day('2026-03-28'), day('2026-03-31'))).toEqual({
      from: '2026-03-28',
      chances: [0.25, 0.25, 0.25, 0.25],
    });
    expect(between(START, START)).toEqual(onDay(START));
  });

  test('cannot have been found before it was looked for', () => {
    expect(() => between(day('2026-03-31'), day('2026-03-28'))).toThrow(RangeError);
  });
});

describe('a look that found nothing', () => {
  test('leaves nothing before it, and the rest in the same proportion', () => {
    fc.assert(
      fc.property(days, fc.integer({ min: -5, max: 70 }), (chances, n) => {
        const looked = addDays(START, n);
        const left = notBefore(looked, chances);
        const share = 1 - chanceBy(addDays(looked, -1), chances);
        expect(left !== undefined).toBe(share > 1e-9);
        if (!left) return;
        expect(chanceBy(addDays(looked, -1), left)).toBe(0);
        expect(sum(left.chances)).toBeCloseTo(1, 9);
        left.chances.forEach((chance, more) => {
          const before = chances.chances[daysBetween(chances.from, addDays(left.from, more))] ?? 0;
          expect(chance * share).toBeCloseTo(before, 9);
        });
      }),
    );
  });

  test('of two of them the later one counts, in whatever order they are told', () => {
    fc.assert(
      fc.property(days, fc.nat(40), fc.nat(40), (chances, a, b) => {
        const [early, late] = [addDays(START, Math.min(a, b)), addDays(START, Math.max(a, b))];
        const atOnce = notBefore(late, chances);
        const first = notBefore(early, chances);
        const inTurn = first && notBefore(late, first);
        expect(inTurn?.from).toBe(atOnce?.from);
        inTurn?.chances.forEach((chance, n) =>
          expect(chance).toBeCloseTo(atOnce?.chances[n] ?? 0, 9),
        );
      }),
    );
  });

  test('never widens a window to the left, nor draws in its end', () => {
    fc.assert(
      fc.property(days, fc.nat(40), (chances, n) => {
        const left = notBefore(addDays(START, n), chances);
        if (!left) return;
        const [before, after] = [window(chances), window(left)];
        expect(after.from >= before.from).toBe(true);
        expect(after.to >= before.to).toBe(true);
        expect(after.likely >= before.likely).toBe(true);
      }),
    );
  });

  test('after the last day there could be, nothing is left', () => {
    expect(notBefore(addDays(START, 1), onDay(START))).toBeUndefined();
    expect(notBefore(START, onDay(START))).toEqual(onDay(START));
  });
});

describe('a window', () => {
  test('holds four chances in five, leaves out at most one in ten on a side, and no more days than needed', () => {
    fc.assert(
      fc.property(days, (chances) => {
        const { from, likely, to } = window(chances);
        const before = chanceBy(addDays(from, -1), chances);
        const after = 1 - chanceBy(to, chances);
        expect(before).toBeLessThanOrEqual(0.1 + 1e-6);
        expect(after).toBeLessThanOrEqual(0.1 + 1e-6);
        // One day less on a side would leave out more than one in ten, or the likeliest day.
        const [upTo, fromOn] = [chanceBy(from, chances), 1 - chanceBy(addDays(to, -1), chances)];
        expect(from === likely || upTo >= 0.1 - 1e-6).toBe(true);
        expect(to === likely || fromOn >= 0.1 - 1e-6).toBe(true);
        expect(from >= chances.from).toBe(true);
        expect(to <= addDays(chances.from, chances.chances.length - 1)).toBe(true);
        expect(from <= likely && likely <= to).toBe(true);
        const most = chances.chances[daysBetween(chances.from, likely)];
        expect(most).toBeCloseTo(Math.max(...chances.chances), 9);
      }),
    );
  });

  test('of a known day is that day', () => {
    expect(window(onDay(START))).toEqual({ from: START, likely: START, to: START });
  });

  test('of ten equal days leaves out none, for one day is just one chance in ten', () => {
    const { from, likely, to } = window(between(START, addDays(START, 9)));
    expect([from, likely, to]).toEqual(['2026-03-20', '2026-03-24', '2026-03-29']);
  });

  test('of one who is overdue begins tonight, when it is likeliest', () => {
    // Half of what is left on each day: one in ten has come to less than a day.
    const chances = Array.from({ length: 12 }, (_, n) => 0.5 ** (n + 1));
    const overdue = notBefore(addDays(START, 3), { from: START, chances });
    expect(overdue && window(overdue)).toMatchObject({ from: '2026-03-23', likely: '2026-03-23' });
    // A few days of less chance before the likeliest are left out.
    const late = { from: START, chances: [0.05, 0.02, 0.9, 0.03] };
    expect(window(late)).toEqual({ from: '2026-03-22', likely: '2026-03-22', to: '2026-03-22' });
  });
});
