import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { clutchOdds, eggChances } from '../../../src/domain/genes/clutch-odds.ts';
import { ballPython } from '../../../src/domain/genes/catalogue/ball-python.ts';
import { extendCatalogue } from '../../../src/domain/genes/extend-catalogue.ts';
import { fraction, ONE, type Fraction } from '../../../src/domain/genes/fraction.ts';
import { genotypeOf, numberOf } from '../../../src/domain/genes/genotype.ts';
import { childChances } from '../../../src/domain/genes/inheritance.ts';
import type { Locus } from '../../../src/domain/genes/locus.ts';
import { lookTable } from '../../../src/domain/genes/look-table.ts';
import { animal, behind, locusNamed, nameOf, pair, short } from './pairs.ts';

// Mallery & Carrillo 2016: Coral Glow sons of Coral Glow males mostly have Coral Glow sons, those of
// Coral Glow females mostly daughters; sex-linked in XX females and XY males, with recombination.
// Numbers by hand: a sire's sperm is X with what lies on his X in (1-r)/2, X with what lies on his Y
// in r/2, and so for Y; a dam gives either X.

const banana = locusNamed('banana');

function withRate(r: Fraction) {
  const own = extendCatalogue(ballPython, { changes: [{ locus: 'banana', recombination: r }] });
  if (!own.ok) throw new Error('refused');
  return own.value;
}

/** Chance of an egg, by sex and look. */
function bySex(dam: string, sire: string, catalogue = ballPython): Record<string, string> {
  const { rows } = lookTable(pair(dam, sire, catalogue));
  return Object.fromEntries(
    rows
      .flatMap((row) => [
        [`${nameOf(row)} daughter`, short(row.bySex.female)],
        [`${nameOf(row)} son`, short(row.bySex.male)],
      ])
      .filter(([, chance]) => chance !== '0'),
  );
}

describe('Banana, one in ten crossing over', () => {
  test('a male maker has banana sons, mostly', () => {
    expect(bySex('Normal', 'male maker Banana')).toEqual({
      'Normal daughter': '9/20',
      'Banana daughter': '1/20',
      'Banana son': '9/20',
      'Normal son': '1/20',
    });
  });

  test('a female maker has banana daughters, mostly', () => {
    expect(bySex('Normal', 'female maker Banana')).toEqual({
      'Banana daughter': '9/20',
      'Normal daughter': '1/20',
      'Normal son': '9/20',
      'Banana son': '1/20',
    });
  });

  test('a banana dam shows no bias', () => {
    expect(bySex('Banana', 'Normal')).toEqual({
      'Banana daughter': '1/4',
      'Normal daughter': '1/4',
      'Banana son': '1/4',
      'Normal son': '1/4',
    });
  });

  test('two copies in one parent give it to all', () => {
    const both = { 'Banana daughter': '1/2', 'Banana son': '1/2' };
    expect(bySex('Normal', 'Super Banana')).toEqual(both);
    expect(bySex('Super Banana', 'Normal')).toEqual(both);
  });

  test.each([
    ['Normal', 'male maker Banana', 'male maker Banana'],
    // What crossed over to the Y of a female maker's son lies on that son's Y all the same.
    ['Normal', 'female maker Banana', 'male maker Banana'],
    ['Normal', 'Super Banana', 'male maker Banana'],
    ['Banana', 'Normal', 'female maker Banana'],
    ['Super Banana', 'Normal', 'female maker Banana'],
  ])('a banana son of %s x %s is a %s', (dam, sire, expected) => {
    expect(behind(pair(dam, sire), 'Banana', 'male')).toBe(expected);
  });
});

test('other rates: one in twenty, and none', () => {
  expect(bySex('Normal', 'male maker Banana', withRate(fraction(1, 20)))).toEqual({
    'Normal daughter': '19/40',
    'Banana daughter': '1/40',
    'Banana son': '19/40',
    'Normal son': '1/40',
  });
  expect(bySex('Normal', 'male maker Banana', withRate(fraction(0)))).toEqual({
    'Normal daughter': '1/2',
    'Banana son': '1/2',
  });
});

describe('laws that hold at any rate', () => {
  const rate = fc.integer({ min: 0, max: 24 }).map((n) => fraction(n, 24));
  const at = (recombination: Fraction): Locus => {
    if (banana.linkage.kind !== 'sex-linked') throw new Error('Banana is sex-linked.');
    return { ...banana, linkage: { ...banana.linkage, recombination } };
  };
  const dams = fc.integer({ min: 0, max: 2 });
  const sires = fc.integer({ min: 0, max: 3 });
  const copies = (locus: Locus, sex: 'female' | 'male', chances: ReadonlyMap<number, Fraction>) => {
    const byCopies = [0, 0, 0];
    for (const [number, { n, d }] of chances) {
      const count = genotypeOf(locus, sex, number).filter((allele) => allele === 1).length;
      byCopies[count] = (byCopies[count] ?? 0) + Number(n) / Number(d);
    }
    return byCopies;
  };

  test('both sexes pooled are as for an autosomal locus', () => {
    const autosomal: Locus = { ...banana, linkage: { kind: 'autosomal' } };
    fc.assert(
      fc.property(rate, dams, sires, (r, dam, sire) => {
        const daughters = copies(at(r), 'female', childChances(at(r), 'female', dam, sire));
        const sons = copies(at(r), 'male', childChances(at(r), 'male', dam, sire));
        const sireCopies = genotypeOf(at(r), 'male', sire).filter((each) => each === 1).length;
        const plain = copies(
          autosomal,
          'female',
          childChances(autosomal, 'female', dam, sireCopies),
        );
        for (const [n, chance] of plain.entries()) {
          expect(((daughters[n] ?? 0) + (sons[n] ?? 0)) / 2).toBeCloseTo(chance, 12);
        }
      }),
    );
  });

  test('at one half each sex by itself is as for an autosomal locus', () => {
    const half = at(fraction(1, 2));
    for (const dam of [0, 1, 2]) {
      for (const sire of [0, 1, 2, 3]) {
        expect(copies(half, 'male', childChances(half, 'male', dam, sire))).toEqual(
          copies(half, 'female', childChances(half, 'female', dam, sire)),
        );
      }
    }
  });

  test('a rate of r and of 1 - r swap male and female makers', () => {
    fc.assert(
      fc.property(rate, (r) => {
        const swapped = at(fraction(r.d - r.n, r.d));
        const [onX, onY] = [numberOf(banana, 'male', [1, 0]), numberOf(banana, 'male', [0, 1])];
        for (const sex of ['female', 'male'] as const) {
          expect(childChances(at(r), sex, 0, onX)).toEqual(childChances(swapped, sex, 0, onY));
        }
      }),
    );
  });

  test('chances sum to one, half to each sex', () => {
    const dam = animal('Banana', 'female');
    const chances = eggChances(
      clutchOdds(dam, [{ sire: animal('Banana', 'male'), weight: ONE }], ballPython),
      'banana',
    );
    for (const sex of ['female', 'male'] as const) {
      const total = [...chances[sex].values()].reduce(
        (sum, { n, d }) => sum + Number(n) / Number(d),
        0,
      );
      expect(total).toBeCloseTo(0.5, 12);
    }
  });
});
