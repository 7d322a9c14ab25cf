import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Kin, Lineage } from '../../../../src/domain/genes/kinship/lineage.ts';
import { climber, relationshipsIn } from '../../../../src/domain/genes/kinship/relationships.ts';
import { sharesOf, type Chromosomes } from '../../../../src/domain/genes/kinship/shares.ts';
import { runs } from '../../../arbitrary.ts';
import { lineageOf, pedigree } from './lineages.ts';

// Mrode R.A., Linear Models for the Prediction of Animal Breeding Values, table 2.1, and the matrices
// that follow from it there.
describe('Mrode’s pedigree', () => {
  const mrode = pedigree(
    ['1'],
    ['2'],
    ['3', '1', '2'],
    ['4', '1'],
    ['5', '4', '3'],
    ['6', '5', '2'],
  );
  const { self, own, to } = relationshipsIn(mrode);
  const at = (id: string): number => mrode.indexOf.get(id)!;
  const ids = ['1', '2', '3', '4', '5', '6'];
  const A = ids.map((id) => ids.map((other) => to(at(id))[at(other)]!));

  test('its relationship matrix', () => {
    expect(A).toEqual([
      [1, 0, 1 / 2, 1 / 2, 1 / 2, 1 / 4],
      [0, 1, 1 / 2, 0, 1 / 4, 5 / 8],
      [1 / 2, 1 / 2, 1, 1 / 4, 5 / 8, 9 / 16],
      [1 / 2, 0, 1 / 4, 1, 5 / 8, 5 / 16],
      [1 / 2, 1 / 4, 5 / 8, 5 / 8, 9 / 8, 11 / 16],
      [1 / 4, 5 / 8, 9 / 16, 5 / 16, 11 / 16, 9 / 8],
    ]);
    expect(ids.map((id) => self[at(id)])).toEqual(A.map((row, n) => row[n]));
  });

  // The book prints 0.469 for 15/32.
  test('the parts that are each one’s own', () => {
    expect(ids.map((id) => own[at(id)])).toEqual([1, 1, 1 / 2, 3 / 4, 1 / 2, 15 / 32]);
  });

  test('times the inverse that the book has, it is 1', () => {
    const inverse = [
      [11 / 6, 1 / 2, -1, -2 / 3, 0, 0],
      [1 / 2, 61 / 30, -1, 0, 8 / 15, -16 / 15],
      [-1, -1, 5 / 2, 1 / 2, -1, 0],
      [-2 / 3, 0, 1 / 2, 11 / 6, -1, 0],
      [0, 8 / 15, -1, -1, 38 / 15, -16 / 15],
      [0, -16 / 15, 0, 0, -16 / 15, 32 / 15],
    ];
    ids.forEach((_, i) => {
      ids.forEach((__, j) => {
        const product = A[i]!.reduce((sum, value, k) => sum + value * inverse[k]![j]!, 0);
        expect(product).toBeCloseTo(i === j ? 1 : 0, 12);
      });
    });
  });

  // Animal 5: the book's trace of Meuwissen & Luo 1992; animal 6: worked by hand with fractions.
  test.each([
    ['5', [0.5, 0.6875, 0.8125, 0.875, 1.125]],
    ['6', [15 / 32, 19 / 32, 41 / 64, 43 / 64, 17 / 16, 9 / 8]],
  ])('how the sum of animal %s grows, ancestor by ancestor', (id, expected) => {
    const sums: number[] = [];
    climber(mrode, sharesOf(mrode, 'autosomes'))(at(id), (ancestor, share) => {
      sums.push((sums.at(-1) ?? 0) + share * share * own[ancestor]!);
    });
    expect(sums).toEqual(expected);
  });
});

/** Twice the kinship by its definition, from the younger of two to its parents; exponential. */
function byRecursion(lineage: Lineage, chromosomes: Chromosomes): (a: number, b: number) => number {
  const related = (a: number, b: number): number => {
    const [older, younger] = a < b ? [a, b] : [b, a];
    const { sex, dam, sire, apart } = lineage.animals[younger]!;
    const oneX = chromosomes === 'x' && sex === 'male';
    const with_ = (parent: number | undefined, other: number): number =>
      parent === undefined ? 0 : related(parent, other);
    if (older === younger) {
      if (oneX) return 2;
      if (apart !== undefined) return 2 - apart * (2 - related(dam!, dam!));
      return dam === undefined || sire === undefined ? 1 : 1 + related(dam, sire) / 2;
    }
    if (oneX || apart !== undefined) return with_(dam, older);
    return (with_(dam, older) + with_(sire, older)) / 2;
  };
  return related;
}

const anyKin: fc.Arbitrary<readonly Kin[]> = fc.gen().map((g) => {
  const kin: Kin[] = [];
  const count = 2 + g(fc.nat, { max: 14 });
  const pick = (parity: number): { readonly id?: string } => {
    const known = kin.filter((_, n) => n % 2 === parity);
    const n = g(fc.nat, { max: known.length + 1 });
    return n < known.length ? { id: known[n]!.id } : {};
  };
  for (let n = 0; n < count; n += 1) {
    const [{ id: dam }, { id: sire }] = [pick(0), pick(1)];
    const sex = n % 2 === 0 ? ('female' as const) : ('male' as const);
    const alone = sex === 'female' && dam !== undefined && g(fc.nat, { max: 5 }) === 0;
    kin.push({
      id: String(n),
      sex,
      ...(dam === undefined ? {} : { dam }),
      ...(sire === undefined || alone ? {} : { sire }),
      ...(alone ? { fatherless: { apart: g(fc.nat, { max: 4 }) / 4 } } : {}),
    });
  }
  return g(fc.boolean) ? kin : kin.toReversed();
});

test.each(['autosomes', 'x'] as const)(
  '%s: random lineages agree with plain recursion',
  (which) => {
    fc.assert(
      fc.property(anyKin, (kin) => {
        const lineage = lineageOf(kin);
        const { self, to } = relationshipsIn(lineage, which);
        const related = byRecursion(lineage, which);
        lineage.animals.forEach((_, a) => {
          expect(self[a]).toBeCloseTo(related(a, a), 12);
          to(a).forEach((value, b) => expect(value).toBeCloseTo(related(a, b), 12));
        });
      }),
      runs(100),
    );
  },
);
