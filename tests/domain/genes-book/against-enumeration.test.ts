import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { bookOf, bredFrom, copies, counted, snake } from './make-book.ts';

// Small families as a keeper records them, against trying every genotype of every animal, with a
// table of Mendel's ratios written here. One hidden gene; genotypes are numbers of copies.

const stated = [
  ['Normal', [1, 0, 0]],
  ['het Clown', [0, 1, 0]],
  ['66% het Clown', [1 / 3, 2 / 3, 0]],
  ['50% het Clown', [1 / 2, 1 / 2, 0]],
  ['Clown', [0, 0, 1]],
] as const;

/** Chance of 0, 1, 2 copies in a young, by the copies of its parents. */
const young = (a: number, b: number): readonly number[] => {
  const [p, q] = [a / 2, b / 2];
  return [(1 - p) * (1 - q), p * (1 - q) + q * (1 - p), p * q];
};

interface Bred {
  readonly dam: number;
  readonly sire: number;
  readonly looks: '' | 'Normal' | 'Clown';
  readonly normal: number;
  readonly shows: number;
}

const family = fc.record({
  founders: fc.array(fc.nat({ max: stated.length - 1 }), { minLength: 4, maxLength: 4 }),
  bred: fc.array(
    fc.record({
      dam: fc.nat(),
      sire: fc.nat(),
      looks: fc.constantFrom('' as const, 'Normal' as const, 'Clown' as const),
      normal: fc.nat({ max: 4 }),
      shows: fc.nat({ max: 1 }),
    }),
    { minLength: 1, maxLength: 4 },
  ),
});

/** Even numbers are females. Parents come from all who are there already. */
function settled({ founders, bred }: { founders: readonly number[]; bred: readonly Bred[] }) {
  return bred.map((each, n) => {
    const all = founders.length + n;
    const of = (parity: number, at: number): number => {
      const some = Array.from({ length: all }, (_, m) => m).filter((m) => m % 2 === parity);
      return some[at % some.length] ?? parity;
    };
    return { ...each, dam: of(0, each.dam), sire: of(1, each.sire) };
  });
}

/** Chance of each to have at least one copy; undefined where the records cannot be. */
function tried(founders: readonly number[], bred: readonly Bred[]): readonly number[] | undefined {
  const size = founders.length + bred.length;
  const carrying = Array.from({ length: size }, () => 0);
  let all = 0;
  const genotypes: number[] = [];
  const go = (weight: number): void => {
    if (weight === 0) return;
    const n = genotypes.length;
    if (n === size) {
      all += weight;
      genotypes.forEach((copy, at) => {
        if (copy > 0) carrying[at] = (carrying[at] ?? 0) + weight;
      });
      return;
    }
    const each = bred[n - founders.length];
    const founder = stated[founders[n] ?? -1];
    const row = founder
      ? founder[1]
      : young(genotypes[each?.dam ?? 0] ?? 0, genotypes[each?.sire ?? 0] ?? 0);
    for (const copy of [0, 1, 2]) {
      let seen = row[copy] ?? 0;
      if (each?.looks === 'Clown') seen *= copy === 2 ? 1 : 0;
      if (each?.looks === 'Normal') seen *= copy === 2 ? 0 : 1;
      if (each) {
        // Its litter mates that were counted.
        const shows = row[2] ?? 0;
        seen *= (1 - shows) ** each.normal * shows ** each.shows;
      }
      genotypes.push(copy);
      go(weight * seen);
      genotypes.pop();
    }
  };
  go(1);
  return all > 0 ? carrying.map((part) => part / all) : undefined;
}

describe('the book of a small family', () => {
  it('agrees with trying all genotypes', () => {
    let compared = 0;
    fc.assert(
      fc.property(family, (made) => {
        const bred = settled(made);
        const expected = tried(made.founders, bred);
        const sexOf = (n: number) => (n % 2 === 0 ? ('female' as const) : ('male' as const));
        const first = made.founders.length;
        const events = [
          ...made.founders.map((at, n) => snake(n + 1, sexOf(n), stated[at]?.[0])),
          ...bred.flatMap((each, n) => {
            const id = first + n + 1;
            const year = 2001 + n;
            const { dam, sire, looks, normal, shows } = each;
            return [
              snake(id, sexOf(first + n), looks, `${year}-07-01`),
              bredFrom(id, dam + 1, sire + 1),
              counted(
                id,
                dam + 1,
                [sire + 1],
                { Normal: normal, Clown: shows },
                `${year}-07-20T21:00:00+01:00` as never,
              ),
            ];
          }),
        ];
        const book = bookOf(events);
        if (!book.loci.includes('clown')) return;
        const agrees = expected
          ? expected.every(
              (chance, n) => Math.abs(copies(book, n + 1, 'clown').any - chance) < 1e-9,
            )
          : book.posteriors('clown').troubles.length > 0;
        expect(agrees).toBe(true);
        compared += expected ? 1 : 0;
      }),
      { numRuns: 300 },
    );
    expect(compared).toBeGreaterThan(50);
  });
});
