import fc from 'fast-check';
import { expect, test } from 'vitest';
import { animalId } from '../../make-ids.ts';
import { grown, ranked } from './make-collection.ts';

// A second reckoning from the ground up: alleles as letters, every egg of every parent written out.
type Dist = readonly (readonly [pair: string, chance: number])[];
const recessive: Readonly<Record<string, readonly [words: (gene: string) => string, Dist]>> = {
  none: [() => '', [['++', 1]]],
  half: [
    (gene) => `50% het ${gene}`,
    [
      ['++', 1 / 2],
      ['+m', 1 / 2],
    ],
  ],
  twoThirds: [
    (gene) => `66% het ${gene}`,
    [
      ['++', 1 / 3],
      ['+m', 2 / 3],
    ],
  ],
  het: [(gene) => `het ${gene}`, [['+m', 1]]],
  visual: [(gene) => `visual ${gene}`, [['mm', 1]]],
};
const pastel: Readonly<Record<string, readonly [words: string, Dist]>> = {
  none: ['', [['++', 1]]],
  one: ['Pastel', [['+m', 1]]],
  two: ['Super Pastel', [['mm', 1]]],
};

interface Drawn {
  readonly clown: string;
  readonly pied: string;
  readonly pastel: string;
}
const drawn = fc.record<Drawn>({
  clown: fc.constantFrom(...Object.keys(recessive)),
  pied: fc.constantFrom(...Object.keys(recessive)),
  pastel: fc.constantFrom(...Object.keys(pastel)),
});
const entry = <Entry>(from: Readonly<Record<string, Entry>>, key: string): Entry => {
  const found = from[key];
  if (found === undefined) throw new Error(`No ${key}.`);
  return found;
};
const wordsFor = (each: Drawn): string =>
  [
    entry(pastel, each.pastel)[0],
    entry(recessive, each.clown)[0]('Clown'),
    entry(recessive, each.pied)[0]('Pied'),
  ]
    .filter((part) => part !== '')
    .join(', ');
const distsOf = (each: Drawn): readonly Dist[] => [
  entry(recessive, each.clown)[1],
  entry(recessive, each.pied)[1],
  entry(pastel, each.pastel)[1],
];

/** The chance of at least one in n, over every pair of genotypes at three loci. */
function byHand(dam: Drawn, sire: Drawn, copies: readonly number[], n: number): number {
  let total = 0;
  const go = (locus: number, weight: number, p: number): void => {
    if (locus === copies.length) {
      total += weight * (1 - (1 - p) ** n);
      return;
    }
    for (const [hers, a] of distsOf(dam)[locus] ?? []) {
      for (const [his, b] of distsOf(sire)[locus] ?? []) {
        const eggs = Array.from(hers).flatMap((x) => Array.from(his).map((y) => x + y));
        const met = eggs.filter(
          (egg) => Array.from(egg).filter((c) => c === 'm').length >= (copies[locus] ?? 0),
        );
        go(locus + 1, weight * a * b, (p * met.length) / eggs.length);
      }
    }
  };
  go(0, 1, 1);
  return total;
}

const goals: readonly (readonly [text: string, copies: readonly number[]])[] = [
  ['visual clown', [2, 0, 0]],
  ['visual clown visual pied', [2, 2, 0]],
  ['pastel clown', [2, 0, 1]],
  ['super pastel het clown het pied', [1, 1, 2]],
];

test('all pairs of a small collection, as written out egg by egg, in order', () => {
  fc.assert(
    fc.property(
      fc.array(drawn, { minLength: 1, maxLength: 3 }),
      fc.array(drawn, { minLength: 1, maxLength: 3 }),
      fc.constantFrom(...goals),
      fc.integer({ min: 1, max: 9 }),
      (males, females, [goal, copies], young) => {
        const events = [
          ...males.map((each, n) => grown(n, 'male', wordsFor(each))),
          ...females.map((each, n) => grown(10 + n, 'female', wordsFor(each))),
        ];
        const { pairs, possible } = ranked(events, goal, young);
        const expected = males.flatMap((sire) =>
          females.map((dam) => byHand(dam, sire, copies, young)),
        );
        expect(possible).toBe(expected.filter((chance) => chance > 0).length);
        const best = expected.filter((chance) => chance > 0).toSorted((a, b) => b - a);
        pairs.forEach(({ perClutch }, n) => expect(perClutch).toBeCloseTo(best[n] ?? NaN, 9));
        for (const { female, male, perClutch } of pairs) {
          const n = males.findIndex((_, i) => animalId(i) === male);
          const m = females.findIndex((_, i) => animalId(10 + i) === female);
          const [sire, dam] = [males[n], females[m]];
          if (!sire || !dam) throw new Error('A pair of nobody.');
          expect(perClutch).toBeCloseTo(byHand(dam, sire, copies, young), 9);
        }
      },
    ),
    { numRuns: 60 },
  );
});

test('the order of records changes nothing, and a snake that is no kin changes no other pair', () => {
  fc.assert(
    fc.property(
      fc.array(drawn, { minLength: 2, maxLength: 4 }),
      fc.func(fc.integer()),
      drawn,
      (animals, shuffle, other) => {
        const events = animals.map((each, n) =>
          grown(n, n % 2 === 0 ? 'male' : 'female', wordsFor(each)),
        );
        const all = ranked(events, 'clown');
        expect(
          ranked(
            events.toSorted((a, b) => shuffle(a.id) - shuffle(b.id)),
            'clown',
          ),
        ).toEqual(all);
        const more = ranked([...events, grown(40, 'male', wordsFor(other))], 'clown');
        expect(more.pairs.filter(({ male }) => male !== animalId(40))).toEqual(all.pairs);
      },
    ),
    { numRuns: 40 },
  );
});
