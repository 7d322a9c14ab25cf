import fc from 'fast-check';
import { expect, test } from 'vitest';
import { ballPython } from '../../../src/domain/genes/catalogue/ball-python.ts';
import { normalised, type Chances } from '../../../src/domain/genes/chances.ts';
import { clutchOdds, type Parent } from '../../../src/domain/genes/clutch-odds.ts';
import { compare, fraction, ONE, sum, toNumber } from '../../../src/domain/genes/fraction.ts';
import {
  alleleIndex,
  genotypeCount,
  genotypeOf,
  numberOf,
} from '../../../src/domain/genes/genotype.ts';
import { inClutch } from '../../../src/domain/genes/in-clutch.ts';
import type { GeneSex, Locus } from '../../../src/domain/genes/locus.ts';
import { lookOf } from '../../../src/domain/genes/look.ts';
import { lookTable } from '../../../src/domain/genes/look-table.ts';
import { targetCases } from '../../../src/domain/genes/target-odds.ts';
import { everyClutch, type AnimalIds, type Egg, type PairOfIds } from './brute-force.ts';
import { locusNamed } from './pairs.ts';

// Hidden, visible, dominant, lethal, sex-linked, of two alleles and of many.
const loci = [
  'pied',
  'pastel',
  'pinstripe',
  'champagne',
  'spider',
  'banana',
  'tyr',
  'clown',
  'bel',
].map(locusNamed);

const anyGenotypes = (locus: Locus, sex: GeneSex) =>
  fc
    .uniqueArray(fc.integer({ min: 0, max: genotypeCount(locus, sex) - 1 }), {
      minLength: 1,
      maxLength: 2,
    })
    .chain((numbers) =>
      fc.tuple(
        ...numbers.map((number) =>
          fc.integer({ min: 1, max: 3 }).map((parts): readonly [number, PairOfIds] => {
            const [a, b] = genotypeOf(locus, sex, number).map((n) => locus.alleles[n]?.id ?? '+');
            return [parts, [a ?? '+', b ?? '+']];
          }),
        ),
      ),
    );

const anyPair = fc
  .uniqueArray(fc.constantFrom(...loci), { minLength: 1, maxLength: 3, selector: ({ id }) => id })
  .chain((some) => {
    const anyAnimal = (sex: GeneSex) =>
      fc
        .tuple(...some.map((locus) => anyGenotypes(locus, sex)))
        .map((all): AnimalIds => new Map(some.map(({ id }, n) => [id, all[n] ?? []])));
    return fc.record({
      some: fc.constant(some),
      dam: anyAnimal('female'),
      sire: anyAnimal('male'),
      target: fc.integer({ min: 0, max: 1_000 }),
      n: fc.integer({ min: 1, max: 12 }),
    });
  });

const parent = (animal: AnimalIds, some: readonly Locus[], sex: GeneSex): Parent =>
  new Map(
    some.map((locus): [string, Chances] => [
      locus.id,
      normalised(
        (animal.get(locus.id) ?? []).map(([parts, [a, b]]) => [
          numberOf(locus, sex, [alleleIndex(locus, a), alleleIndex(locus, b)]),
          fraction(parts),
        ]),
      ),
    ]),
  );

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
