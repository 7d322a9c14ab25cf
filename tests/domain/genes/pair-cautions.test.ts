import { describe, expect, test } from 'vitest';
import { ballPython } from '../../../src/domain/genes/catalogue/ball-python.ts';
import { deference, pairCautions } from '../../../src/domain/genes/pair-cautions.ts';
import { animal, short } from './pairs.ts';

// Rose & Williams 2014 and Starck et al. 2022 for Spider; all else is what breeders agree on, or do
// not. Chances by hand, of young at conception.

const cautionsOf = (dam: string, sire: string) =>
  pairCautions(animal(dam, 'female'), animal(sire, 'male'), ballPython).map(
    ({ caution, chance }) => [caution.id, caution.weight, short(chance)] as const,
  );

describe('cautions of a pair', () => {
  test.each([
    [
      'Spider',
      'Spider',
      [
        ['spider-twice', 'grave', '1/4'],
        ['spider-wobble', 'serious', '3/4'],
      ],
    ],
    [
      'Champagne',
      'Spider',
      [
        ['spider-with-champagne', 'grave', '1/4'],
        ['spider-wobble', 'serious', '1/2'],
        ['champagne-wobble', 'serious', '1/2'],
      ],
    ],
    [
      'HGW',
      'HGW',
      [
        ['hidden-gene-woma-twice', 'grave', '1/4'],
        ['hidden-gene-woma-wobble', 'serious', '3/4'],
      ],
    ],
    [
      'Sable',
      'Spotnose',
      // Neither alone is named; both together, and how bad it is, is disputed.
      [['spotnose-with-sable', 'serious', '1/4']],
    ],
    ['Cinnamon', 'Cinnamon', [['cinnamon-twice', 'serious', '1/4']]],
    ['Cinnamon', 'Black Pastel', [['eight-ball', 'serious', '1/4']]],
    ['Black Pastel', 'Black Pastel', [['black-pastel-twice', 'serious', '1/4']]],
    ['Lesser', 'Lesser', [['lesser-twice', 'worth knowing', '1/4']]],
    ['Lesser', 'Butter', [['lesser-butter', 'worth knowing', '1/4']]],
    [
      'Caramel',
      'het Caramel',
      [
        ['caramel-mother', 'serious', '1'],
        ['caramel-kinks', 'serious', '1/2'],
      ],
    ],
    ['66% het Caramel', 'het Caramel', [['caramel-kinks', 'serious', '1/6']]],
    ['Scaleless Head', 'Scaleless Head', [['scaleless-twice', 'serious', '1/4']]],
    [
      'Spider',
      'Blackhead',
      [
        ['spider-wobble', 'serious', '1/2'],
        ['spider-blackhead', 'worth knowing', '1/4'],
      ],
    ],
    ['Pastel, het Clown', 'Enchi', []],
  ])('%s x %s', (dam, sire, expected) => {
    expect(cautionsOf(dam, sire)).toEqual(expected);
  });

  test('Desert concerns the mother and not the father', () => {
    expect(cautionsOf('Desert', 'Normal')).toEqual([['desert-mother', 'grave', '1']]);
    expect(cautionsOf('Normal', 'Desert')).toEqual([]);
  });

  test('each says how well it is known', () => {
    const grades = new Map(ballPython.cautions.map(({ id, evidence }) => [id, evidence.grade]));
    expect(grades.get('spider-wobble')).toBe('published');
    expect(grades.get('spider-twice')).toBe('trade consensus');
    expect(grades.get('spotnose-with-sable')).toBe('disputed');
    expect(deference).toMatch(/check yours.*vet/u);
  });
});
