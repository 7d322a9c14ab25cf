import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ballPython } from '../../../src/domain/genes/catalogue/ball-python.ts';
import { clutchOdds } from '../../../src/domain/genes/clutch-odds.ts';
import {
  compare,
  fraction,
  ONE,
  oneMinus,
  sum,
  toNumber,
} from '../../../src/domain/genes/fraction.ts';
import { alleleIndex, numberOf } from '../../../src/domain/genes/genotype.ts';
import { inClutch } from '../../../src/domain/genes/in-clutch.ts';
import type { GeneSex, Locus } from '../../../src/domain/genes/locus.ts';
import { lookOf } from '../../../src/domain/genes/look.ts';
import { lookTable, type LookTable } from '../../../src/domain/genes/look-table.ts';
import { targetCases } from '../../../src/domain/genes/target-odds.ts';
import { anyPair, parent } from './any-pair.ts';
import { everyClutch, type Egg } from './brute-force.ts';
import { nameOf } from './pairs.ts';

const names = new WeakMap<Egg, string>();
function looksOf(egg: Egg, some: readonly Locus[]): string {
  const name = names.get(egg) ?? namesOf(egg, some);
  names.set(egg, name);
  return name;
}
const namesOf = (egg: Egg, some: readonly Locus[]): string =>
  some
    .map((locus) => {
      const [a, b] = (egg.genotype.get(locus.id) ?? ['+', '+']).map((id) => alleleIndex(locus, id));
      const look = lookOf(locus, egg.sex, numberOf(locus, egg.sex, [a ?? 0, b ?? 0]));
      return look.name === '' ? '' : `${locus.id} ${look.name}`;
    })
    .filter((name) => name !== '')
    .toSorted()
    .join(', ');

const livingShare = (eggs: readonly Egg[]) =>
  eggs.reduce((total, { chance, survival }) => total + chance * survival, 0);

test('clutch odds are what comes of every gamete, one by one', () => {
  fc.assert(
    fc.property(anyPair, ({ some, dam, sire, target, n }) => {
      const odds = clutchOdds(
        parent(dam, some, 'female'),
        [{ sire: parent(sire, some, 'male'), weight: ONE }],
        ballPython,
      );
      const clutches = everyClutch(dam, sire, some);
      fc.pre(clutches.every(({ value }) => livingShare(value) > 0));

      const expected = new Map<string, { hatchling: number; female: number; egg: number }>();
      for (const { chance, value: eggs } of clutches) {
        const living = livingShare(eggs);
        for (const egg of eggs.filter(({ chance: some_, survival }) => some_ * survival > 0)) {
          const name = looksOf(egg, some);
          const so = expected.get(name) ?? { hatchling: 0, female: 0, egg: 0 };
          const share = chance * egg.chance * egg.survival;
          expected.set(name, {
            hatchling: so.hatchling + share / living,
            female: so.female + (egg.sex === 'female' ? share / living : 0),
            egg: so.egg + share,
          });
        }
      }
      const table = lookTable(odds, 100_000);
      expect(table.rows).toHaveLength(expected.size);
      const rowNames = table.rows.map((row) =>
        row.looks
          .map(({ locus, name }) => `${locus} ${name}`)
          .toSorted()
          .join(', '),
      );
      for (const [i, row] of table.rows.entries()) {
        const so = expected.get(rowNames[i] ?? '');
        expect(toNumber(row.perHatchling)).toBeCloseTo(so?.hatchling ?? NaN, 12);
        expect(toNumber(row.bySex.female)).toBeCloseTo(so?.female ?? NaN, 12);
        expect(toNumber(row.perEgg)).toBeCloseTo(so?.egg ?? NaN, 12);
      }
      expect(sum(table.rows.map(({ perHatchling }) => perHatchling))).toEqual(ONE);

      // Cut short, it is the head of the whole table.
      const few = lookTable(odds, 3);
      const tooFew = table.rows.slice(0, 3).map(({ perHatchling }) => perHatchling);
      expect(few.rows.map(({ perHatchling }) => perHatchling)).toEqual(tooFew);
      expect(few.rarer.looks).toBe(Math.max(0, table.rows.length - 3));
      expect(
        few.rows.every(
          (row, i) => i === 0 || compare(few.rows[i - 1]!.perHatchling, row.perHatchling) >= 0,
        ),
      ).toBe(true);

      // One look of the table as the target.
      const wanted = table.rows[target % table.rows.length];
      if (!wanted) throw new Error('a row');
      const wants = some.map((locus) => ({
        locus: locus.id,
        look: wanted.looks.find((look) => look.locus === locus.id)?.name ?? '',
      }));
      const name = rowNames[target % table.rows.length];
      let atLeastOne = 0;
      let each = 0;
      for (const { chance, value: eggs } of clutches) {
        const living = livingShare(eggs);
        const share = (sex: GeneSex) =>
          livingShare(eggs.filter((egg) => egg.sex === sex && looksOf(egg, some) === name)) /
          living;
        const [female, male] = [share('female'), share('male')];
        atLeastOne += chance * (1 - (1 - female - male) ** n);
        each += chance * (1 - (1 - female) ** n - (1 - male) ** n + (1 - female - male) ** n);
      }
      const clutch = inClutch(targetCases(odds, { wants }, { of: 'hatchlings' }), n);
      expect(clutch.atLeastOne).toBeCloseTo(atLeastOne, 11);
      expect(clutch.oneOfEachSex).toBeCloseTo(each, 11);
    }),
    { numRuns: 40 },
  );
}, 30_000);

const perEgg = ({ rows }: LookTable): Map<string, number> =>
  new Map(rows.map((row) => [nameOf(row), toNumber(row.perEgg)]));

test.each(['one', 'each egg its own'] as const)(
  'an egg of two possible males is the mean of an egg of each, fathers: %s',
  (fathers) => {
    fc.assert(
      fc.property(anyPair, fc.integer({ min: 1, max: 4 }), ({ some, dam, sire }, parts) => {
        const weight = fraction(parts, 5);
        const her = parent(dam, some, 'female');
        const first = { sire: parent(sire, some, 'male'), weight };
        const second = { sire: new Map(), weight: oneMinus(weight) };
        const both = perEgg(
          lookTable(clutchOdds(her, [first, second], ballPython, { fathers }), 100_000),
        );
        const [ofFirst, ofSecond] = [first, second].map((each) =>
          perEgg(lookTable(clutchOdds(her, [{ ...each, weight: ONE }], ballPython), 100_000)),
        );
        const either = new Set([...(ofFirst?.keys() ?? []), ...(ofSecond?.keys() ?? [])]);
        expect(new Set(both.keys())).toEqual(either);
        for (const [name, chance] of both) {
          const mean =
            (parts / 5) * (ofFirst?.get(name) ?? 0) + (1 - parts / 5) * (ofSecond?.get(name) ?? 0);
          expect(chance).toBeCloseTo(mean, 12);
        }
      }),
      { numRuns: 30 },
    );
  },
);
