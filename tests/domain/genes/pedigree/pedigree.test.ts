import { describe, expect, test } from 'vitest';
import { evidenceAtHatching } from '../../../../src/domain/genes/pedigree/at-hatching.ts';
import {
  readPedigree,
  type PedigreeAnimal,
  type PedigreeClutch,
} from '../../../../src/domain/genes/pedigree/pedigree.ts';
import { whatMovedIt } from '../../../../src/domain/genes/pedigree/what-moved-it.ts';
import {
  answers,
  evidence,
  het,
  hetChance,
  looks,
  nonVisual,
  pedigreeOf,
  possible,
  recessiveModel,
  visual,
  young,
} from './make-pedigree.ts';

const clutch = (id: string, dam: string, ...sires: readonly string[]): PedigreeClutch => ({
  id,
  dam,
  fathers: sires.map((sire) => ({ sire, weight: 1 })),
});

describe('a pedigree that does not hold together is refused', () => {
  test.each<
    readonly [string, readonly PedigreeAnimal[], readonly PedigreeClutch[], string, string[]]
  >([
    ['an id twice', [{ id: 'a' }, { id: 'a' }], [], 'same-id', ['a']],
    ['a parent that is missing', [{ id: 'd' }], [clutch('c', 'd', 's')], 'missing', ['s']],
    ['a clutch that is missing', [{ id: 'a', clutch: 'c' }], [], 'missing', ['c']],
    [
      'its own grandmother',
      [{ id: 's' }, { id: 'a', clutch: 'of b' }, { id: 'b', clutch: 'of a' }],
      [clutch('of a', 'a', 's'), clutch('of b', 'b', 's')],
      'ring',
      ['a', 'b'],
    ],
    ['one animal as both parents', [{ id: 'd' }], [clutch('c', 'd', 'd')], 'sire-is-female', ['d']],
    [
      'a dam that is male',
      [{ id: 'd', sex: 'male' }, { id: 's' }],
      [clutch('c', 'd', 's')],
      'dam-is-male',
      ['d'],
    ],
    [
      'a sire that is female',
      [{ id: 'd' }, { id: 's', sex: 'female' }],
      [clutch('c', 'd', 's')],
      'sire-is-female',
      ['s'],
    ],
    ['no father at all', [{ id: 'd' }], [clutch('c', 'd')], 'no-father', ['c']],
    [
      'a son of one that bred alone',
      [{ id: 'd' }, { id: 'x', sex: 'male', clutch: 'c' }],
      [{ id: 'c', dam: 'd', fathers: [{ fatherless: true, weight: 1 }] }],
      'son-without-father',
      ['x'],
    ],
  ])('%s', (_, animals, clutches, code, about) => {
    const read = readPedigree(animals, clutches);
    const problem = read.ok ? undefined : read.problem;
    expect(problem?.code).toBe(code);
    expect(problem?.about.toSorted()).toEqual(about);
  });
});

describe('several possible sires', () => {
  // One het, one wild type, as likely; the dam het. Both are certain, so who it was is the question.
  const known = (hidden: number, shown: number) =>
    evidence({ dam: het, carrier: het }, young('c', hidden, shown));
  const pedigree = (fathered: 'one' | 'each egg its own') =>
    pedigreeOf(
      ['dam', 'carrier', 'wild', { id: 'x', clutch: 'c' }],
      [{ ...clutch('c', 'dam', 'carrier', 'wild'), fathered }],
    );

  // (3/4)^n against 1: 3/7, 9/25 …, as for any other carrier question.
  test('young that do not show tell against the carrier', () => {
    [1 / 2, 3 / 7, 9 / 25, 27 / 91].forEach((expected, n) => {
      const [carrier, wild] = answers(pedigree('one'), known(n, 0)).fathers.get('c') ?? [];
      expect(carrier).toBeCloseTo(expected, 14);
      expect(wild).toBeCloseTo(1 - expected, 14);
    });
  });

  test('one that shows makes him the father of all', () => {
    const found = answers(pedigree('one'), known(5, 1));
    expect(found.fathers.get('c')).toEqual([1, 0]);
    // A sibling of a het × het: 1/4 visual.
    expect(found.of.get('x')?.female[2]).toBeCloseTo(1 / 8, 14);
    expect(found.of.get('x')?.male[2]).toBeCloseTo(1 / 8, 14);
  });

  // Half by the het, half by the wild type: (1/2)(1/4) = 1/8, whatever siblings show.
  test('where each egg draws its own father, siblings tell nothing of him', () => {
    const found = answers(pedigree('each egg its own'), known(5, 1));
    const { female = [], male = [] } = found.of.get('x') ?? {};
    expect((female[2] ?? NaN) + (male[2] ?? NaN)).toBeCloseTo(1 / 8, 14);
  });
});

describe('why a chance is what it is', () => {
  // 66 % from het × het; then three that do not show from a visual mate: 1/5.
  const family = pedigreeOf(['dam', 'sire', { id: 'x', sex: 'female', clutch: 'c' }, 'mate', 'y'], {
    c: ['dam', 'sire'],
    t: ['x', 'mate'],
  });
  const known = evidence(
    { dam: het, sire: het, mate: visual, y: possible(1 / 2) },
    looks('x', nonVisual),
    young('t', 3),
    looks('y', nonVisual),
  );

  test('at hatching it was 66 %, after its test breeding 1/5', () => {
    expect(hetChance(answers(family, known), 'x')).toBeCloseTo(1 / 5, 14);
    const then = evidenceAtHatching(family, known, 'x');
    expect(hetChance(answers(family, then), 'x')).toBeCloseTo(2 / 3, 14);
  });

  test('each piece left out in turn, the strongest first', () => {
    const moved = whatMovedIt(family, recessiveModel, known, 'x');
    if (moved.kind !== 'moved') throw new Error(moved.kind);
    expect(moved.before.female).toEqual([1 / 4, 1 / 2, 1 / 4]);
    // Her look is not needed: three from a visual mate that do not show rule a visual out too.
    expect(moved.movers.map(({ finding }) => finding)).toEqual(['young of t']);
    expect(moved.movers[0]?.without.female[1]).toBeCloseTo(2 / 3, 14);
    expect(moved.movers[0]?.moved).toBeCloseTo(2 / 3 - 1 / 5, 14);
  });

  test('what two findings each prove alone moves nothing when one is left out', () => {
    const twice = evidence({ dam: possible(1 / 2), sire: possible(1 / 2) }, young('c', 0, 1), {
      ...young('c', 2, 1),
      id: 'again',
    });
    expect(whatMovedIt(family, recessiveModel, twice, 'dam')).toMatchObject({ movers: [] });
  });
});
