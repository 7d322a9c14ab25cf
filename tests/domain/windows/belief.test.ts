import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { chanceFrom } from '../../../demo-data/random.ts';
import { addDays, daysBetween } from '../../../src/domain/core/calendar.ts';
import type { AnimalId } from '../../../src/domain/core/ids.ts';
import { defaultProtocol } from '../../../src/domain/protocol/values.ts';
import { lagChances } from '../../../src/domain/windows/belief.ts';
import {
  between,
  convolve,
  notBefore,
  onDay,
  window,
  type LagChances,
} from '../../../src/domain/windows/day-chances.ts';
import { ownInterval, type OwnInterval } from '../../../src/domain/windows/own-interval.ts';
import { day } from '../../make.ts';
import { chiSquared, normal } from './sampling.ts';

const [anna, bella, cleo] = ['a-anna', 'a-bella', 'a-cleo'] as [AnimalId, AnimalId, AnimalId];
const START = day('2026-03-01');

const between2 = (female: AnimalId, earliestDays: number, latestDays: number): OwnInterval => ({
  female,
  earliestDays,
  latestDays,
});
const seen = (female: AnimalId, ...days: readonly number[]) =>
  days.map((each) => between2(female, each, each));

const toLay = (own: readonly OwnInterval[], female?: AnimalId) =>
  lagChances('shed to lay', defaultProtocol, own, female);

function windowDays(chances: LagChances) {
  const { from, likely, to } = window(convolve(onDay(START), chances));
  const [first, mode, last] = [from, likely, to].map((each) => daysBetween(START, each));
  return { first: first ?? NaN, mode: mode ?? NaN, last: last ?? NaN };
}
const width = (own: readonly OwnInterval[]) => {
  const { first, last } = windowDays(toLay(own).chances);
  return last - first + 1;
};
const mean = ({ fromDays, chances }: LagChances) =>
  chances.reduce((sum, chance, n) => sum + chance * (fromDays + n), 0);

describe('own cycles', () => {
  test('narrow the window and move it', () => {
    const cycles = [34, 36, 35, 33, 35, 36, 34, 35, 34, 36];
    const usual = windowDays(toLay([]).chances);
    const after = windowDays(toLay(seen(anna, ...cycles)).chances);
    expect(after.mode).toBeGreaterThan(usual.mode + 2);
    expect([
      after.first > usual.first,
      after.last - after.first < usual.last - usual.first,
    ]).toEqual([true, true]);
    const widths = [0, 1, 3, 6, 10].map((n) => width(seen(anna, ...cycles.slice(0, n))));
    expect(widths).toEqual(widths.toSorted((a, b) => b - a));
  });

  test('that differ more than usual widen it', () => {
    const [even, uneven] = [seen(anna, 30, 31, 30, 31), seen(anna, 20, 42, 21, 41)];
    expect(width(uneven)).toBeGreaterThan(width([]));
    expect(width(even)).toBeLessThan(width([]));
  });

  test('of another female count for less than her own', () => {
    const own = [...seen(anna, 36, 37, 36), ...seen(bella, 27, 28, 27)];
    const [hers, others, newOnes] = [anna, bella, cleo].map((each) => toLay(own, each));
    const means = [hers, newOnes, others].map((lag) => lag && mean(lag.chances));
    expect(means).toEqual(means.toSorted((a = 0, b = 0) => b - a));
    expect(hers).toMatchObject({ ownCycles: 6, herCycles: 3 });
    expect(newOnes).toMatchObject({ ownCycles: 6, herCycles: 0 });
  });

  test('come to the same in whatever order they are told', () => {
    const own = [...seen(anna, 36, 37), ...seen(bella, 27), between2(cleo, 28, 34)];
    const [one, other] = [toLay(own, cleo), toLay(own.toReversed(), cleo)];
    one.chances.chances.forEach((chance, n) =>
      expect(chance).toBeCloseTo(other.chances.chances[n] ?? NaN, 12),
    );
  });

  test('of one link say nothing of another', () => {
    const own = seen(anna, 36, 37);
    toLay(own);
    const other = lagChances('ovulation to shed', defaultProtocol, []);
    expect(windowDays(other.chances)).toEqual({ first: 15, mode: 19, last: 24 });
  });

  test('are not reckoned with anew for the same ones', () => {
    const own = seen(anna, 36, 37);
    expect(toLay(own, anna)).toBe(toLay(own, anna));
    expect(toLay(own, cleo)).toBe(toLay(own));
    expect(toLay(own, anna)).not.toBe(toLay([...own], anna));
  });
});

test('whatever was seen, and whatever the shares, there are chances on every day that can be', () => {
  const interval = fc
    .tuple(fc.constantFrom(anna, bella, cleo), fc.nat(70), fc.nat(30))
    .map(([female, days, more]) => between2(female, days, days + more));
  const share = fc.double({ min: 0, max: 1, noNaN: true });
  fc.assert(
    fc.property(fc.array(interval, { maxLength: 20 }), share, share, (own, keepers, females) => {
      const protocol = {
        ...defaultProtocol,
        windowKeeperShare: keepers,
        windowFemaleShare: females,
      };
      const { chances, ownCycles } = lagChances('shed to lay', protocol, own, anna);
      // Common practice, no source: 14 to 55 days.
      expect([chances.fromDays, chances.chances.length]).toEqual([14, 42]);
      expect(chances.chances.every((chance) => chance >= 0)).toBe(true);
      expect(chances.chances.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 9);
      expect(ownCycles).toBeLessThanOrEqual(own.length);
    }),
    // All of it on the first days: the last ones once came out a rounding error below nothing.
    {
      examples: [
        [[between2(anna, 0, 14), between2(anna, 2, 14)], 0.7640090802960241, 0.9887650089186],
      ],
    },
  );
});

describe('lengths that cannot be', () => {
  test('are not counted', () => {
    // Common practice, no source: 14 to 55 days.
    const own = [...seen(anna, 13, 56, 300), ...seen(anna, 30)];
    expect(toLay(own).ownCycles).toBe(1);
    expect(mean(toLay(own).chances)).toBeCloseTo(mean(toLay(seen(anna, 30)).chances), 9);
  });

  test('are cut off a range, and what is left counts', () => {
    expect(toLay([between2(anna, 0, 200)]).chances).toEqual(
      toLay([between2(anna, 14, 55)]).chances,
    );
  });
});

describe('a length known only between two looks', () => {
  test('is all there is between them', () => {
    const [april, may] = [day('2026-04-10'), day('2026-05-10')];
    const exact = { first: april, last: april };
    expect(ownInterval(anna, exact, { first: may, last: may })).toEqual(between2(anna, 30, 30));
    const vague = { first: april, last: addDays(april, 3) };
    expect(ownInterval(anna, vague, { first: may, last: addDays(may, 2) })).toEqual(
      between2(anna, 27, 32),
    );
    expect(ownInterval(anna, vague, { first: april, last: addDays(april, 1) })).toEqual(
      between2(anna, 0, 1),
    );
    expect(ownInterval(anna, { first: may, last: may }, exact)).toBeUndefined();
  });

  // Laarhoven B. & Kooijman S.A.L.M. 2010, Add-my-Pet, Python regius, snake 06: pre-lay shed on
  // 2010-04-21, weighed still gravid on 05-29, eggs recorded on 06-06.
  test('the one dated case published is 38 to 46 days, and not 42', () => {
    const [shed, gravid, eggs] = [day('2010-04-21'), day('2010-05-29'), day('2010-06-06')];
    const found = ownInterval(anna, { first: shed, last: shed }, { first: gravid, last: eggs });
    expect(found).toEqual(between2(anna, 38, 46));
    const [vague, exact] = [found ? [found] : [], seen(anna, 42)];
    expect(mean(toLay(vague).chances)).toBeGreaterThan(mean(toLay([]).chances) + 2);
    expect(mean(toLay(vague).chances)).toBeLessThan(mean(toLay(exact).chances) - 0.2);
  });

  test('the wider it is, the less it narrows and moves', () => {
    const own = [0, 1, 2, 4, 8, 12].map((off) =>
      [36, 37, 38, 37].map((days) => between2(anna, days - off, days + off)),
    );
    const means = own.map((each) => mean(toLay(each).chances));
    expect(means).toEqual(means.toSorted((a, b) => b - a));
    const widths = own.map(width);
    expect(widths).toEqual(widths.toSorted((a, b) => a - b));
  });
});

describe('against brute force', () => {
  /**
   * Keepers and females drawn as the protocol says, each weighed by the chance of what was seen:
   * log-normal through 26 and 36 days, with 8 degrees (Abramowitz M. & Stegun I.A. 1964, table
   * 26.10: 1.397), half of the variance between keepers, a quarter of the rest between females.
   */
  function drawn(own: readonly OwnInterval[], female: AnimalId): ReadonlyMap<number, number> {
    const chance = chanceFrom(5);
    const scale = Math.log(36 / 26) / (2 * 1.397);
    const reached = new Map<number, number>();
    let all = 0;
    for (let draw = 0; draw < 60_000; draw += 1) {
      const sd = scale * Math.sqrt(8 / chiSquared(8, chance));
      const keeper = Math.log(26 * 36) / 2 + sd * Math.sqrt(0.5) * normal(chance);
      const females = new Map<AnimalId, number>();
      for (const each of [anna, bella, cleo]) {
        females.set(each, keeper + sd * Math.sqrt(0.125) * normal(chance));
      }
      const about = (who: AnimalId) => females.get(who) ?? NaN;
      const spread = sd * Math.sqrt(0.375);
      let weight = 1;
      for (const { female: who, earliestDays, latestDays } of own) {
        let some = 0;
        for (let days = earliestDays; days <= latestDays; days += 1) {
          const off = (Math.log(days) - about(who)) / spread;
          some += Math.exp(-off * off * 0.5) / (spread * days);
        }
        weight *= some;
      }
      const days = Math.round(Math.exp(about(female) + spread * normal(chance)));
      reached.set(days, (reached.get(days) ?? 0) + weight);
      all += weight;
    }
    return new Map([...reached].map(([days, weight]) => [days, weight / all]));
  }

  /** The most that the chances of being there by a day differ. */
  function farthest({ fromDays, chances }: LagChances, sample: ReadonlyMap<number, number>) {
    let [off, ours, theirs] = [0, 0, 0];
    chances.forEach((chance, n) => {
      ours += chance;
      theirs += sample.get(fromDays + n) ?? 0;
      off = Math.max(off, Math.abs(ours - theirs));
    });
    return off;
  }

  // Exact cycles are the same model and differ by chance alone. Looks apart are an approximation,
  // which widens by too little what a surprising range should widen.
  test.each([
    ['none', [], 0.01],
    ['exact ones', [...seen(anna, 33, 35), ...seen(bella, 31, 30, 32)], 0.02],
    ['looks three days apart', [33, 35, 31].map((days) => between2(anna, days, days + 3)), 0.03],
    ['looks a week apart', [30, 32, 31, 33].map((days) => between2(bella, days, days + 7)), 0.03],
    ['snake 06 of 2010', [between2(anna, 38, 46)], 0.05],
    ['both', [between2(anna, 28, 40), ...seen(bella, 29, 30), between2(anna, 26, 31)], 0.03],
  ] as const)('with %s, the next length is that of brute force', (_what, own, tolerance) => {
    expect(farthest(toLay(own, anna).chances, drawn(own, anna))).toBeLessThan(tolerance);
  });

  test('a chain from a vague beginning, looked at in between, is that of brute force', () => {
    const own = seen(bella, 33, 34, 33);
    const links = [lagChances('ovulation to shed', defaultProtocol, []), toLay(own)];
    const looked = addDays(START, 52);
    const whole = links.reduce(
      (start, { chances }) => convolve(start, chances),
      between(START, addDays(START, 6)),
    );
    const left = notBefore(looked, whole);

    const chance = chanceFrom(9);
    const drawLag = ({ fromDays, chances }: LagChances) => {
      let rest = chance.next();
      return fromDays + chances.findIndex((each) => (rest -= each) < 0);
    };
    const counts = new Map<number, number>();
    let kept = 0;
    while (kept < 60_000) {
      const days = links.reduce((sum, { chances }) => sum + drawLag(chances), chance.whole(0, 6));
      if (days >= 52) {
        kept += 1;
        counts.set(days, (counts.get(days) ?? 0) + 1 / 60_000);
      }
    }
    expect(left && farthest({ fromDays: 52, chances: left.chances }, counts)).toBeLessThan(0.01);
  });
});
