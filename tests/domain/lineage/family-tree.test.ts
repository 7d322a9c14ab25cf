import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { AnimalId } from '../../../src/domain/core/ids.ts';
import { familyTree, growTree } from '../../../src/domain/lineage/family-tree.ts';
import type { Born } from '../../../src/domain/lineage/stated-parents.ts';
import { aPicture, day } from '../../make.ts';
import { animalId } from '../../make-ids.ts';
import { kinValues } from '../genes/kinship/kin-values.ts';
import { family } from './make-family.ts';

const treeOf = (text: string) => {
  const { events, id } = family(text);
  return { ...familyTree(aPicture(events)), id };
};
const inbreedingOf = (text: string, name = 'x') => {
  const { kin, id } = treeOf(text);
  return kin.inbreeding(id(name));
};

test.each(kinValues)('young of %s: %d, from records', (_, expected, text) => {
  const { atLeast, atMost } = inbreedingOf(text);
  expect([atLeast, atMost]).toEqual([expected, expected]);
});

describe('several possible sires', () => {
  // By hand: by A, x is the young of half siblings (1/8); by C, of none that are related.
  test('an open father gives the least and the most', () => {
    const { atLeast, atMost, open } = inbreedingOf('m:A|C,B f:A,D x:m,f');
    expect([atLeast, atMost]).toEqual([0, 1 / 8]);
    expect(open).toHaveLength(1);
  });
  // By hand: whichever of the two it was, clutch mates share him. Full siblings: 1/4.
  test('clutch mates share the father, whoever he was', () => {
    const born = (n: number, more: Partial<Born> = {}): Born => ({
      id: animalId(n),
      sex: 'unknown',
      sires: [],
      ...more,
    });
    const clutch = { dam: animalId(1), sires: [animalId(2), animalId(3)] };
    const tree = growTree([
      born(1),
      born(2),
      born(3),
      born(4, { ...clutch, hatchedDay: day('2025-08-01') }),
      born(5, { ...clutch, hatchedDay: day('2025-08-03') }),
      born(6, { ...clutch, hatchedDay: day('2024-08-03') }),
    ]);
    expect(tree.kin.between(animalId(4), animalId(5))).toMatchObject({
      atLeast: 1 / 4,
      atMost: 1 / 4,
    });
    // Of another year: half siblings by her at least, full ones at most.
    expect(tree.kin.between(animalId(4), animalId(6))).toMatchObject({
      atLeast: 1 / 8,
      atMost: 1 / 4,
    });
  });
  test('where too many are open, the most is not told', () => {
    const males = 'A|B|C';
    const text = Array.from({ length: 6 }, (_, n) => `y${n}:${males},y${n - 1}`);
    const { atMost } = inbreedingOf(text.join(' '), 'y5');
    expect(atMost).toBeUndefined();
  });
  test('one named twice is one', () => {
    const { of, id, slips } = treeOf('x:A|A,B');
    expect(of.get(id('x'))?.sires).toEqual([id('A')]);
    expect(slips).toEqual([]);
  });
});

describe('depth', () => {
  // Complete generation equivalents, counted by hand: both parents 1, both of the dam’s 1/2 more.
  test.each([
    ['x', 0],
    ['x:A,-', 0.5],
    ['x:A,B', 1],
    ['B:C,D x:A,B', 1.5],
    ['A:E,F B:C,D x:A,B', 2],
    ['A:E,F B:C,D C:G,H x:A,B', 2.25],
  ])('%s: %d generations', (text, generations) => {
    expect(inbreedingOf(text).generations).toBe(generations);
  });
  test('an unknown parent is unknown, not unrelated', () => {
    expect(inbreedingOf('x:A,-')).toMatchObject({ atLeast: 0, unknown: true });
    expect(inbreedingOf('x:A,B')).toMatchObject({ atLeast: 0, unknown: false });
  });
});

describe('parents that cannot be', () => {
  test('a ring is named, link by link, and left out', () => {
    const { slips, of, id } = treeOf('a:b,M b:c,N c:a,O');
    expect(slips.map(({ kind, about }) => [kind, about])).toEqual([
      ['own ancestor', ['a', 'b', 'c'].map(id)],
      ['own ancestor', ['b', 'c', 'a'].map(id)],
      ['own ancestor', ['c', 'a', 'b'].map(id)],
    ]);
    expect(of.get(id('a'))).toEqual({ dam: id('M'), sires: [] });
  });
  test('an animal is not its own parent', () => {
    const { slips, id } = treeOf('a:a,M');
    expect(slips).toEqual([{ kind: 'own ancestor', young: id('a'), about: [id('a')] }]);
  });
  test('the same as dam and as sire', () => {
    const { slips, of, id } = treeOf('a:M,M');
    expect(slips).toEqual([{ kind: 'both parents', young: id('a'), about: [id('M')] }]);
    expect(of.get(id('a'))).toEqual({ sires: [] });
  });
  test('one not sexed that is dam here and sire there', () => {
    const { slips } = treeOf('a:M,F b:G,M');
    expect(slips.map(({ kind }) => kind)).toEqual(['both roles', 'both roles']);
  });
  test('sexes decide between roles', () => {
    const id = animalId;
    const { slips, of } = growTree([
      { id: id(1), sex: 'female', sires: [] },
      { id: id(2), sex: 'male', sires: [] },
      { id: id(3), sex: 'unknown', dam: id(2), sires: [id(1)] },
    ]);
    expect(slips.map(({ kind }) => kind).toSorted()).toEqual(['female sire', 'male dam']);
    expect(of.get(id(3))).toEqual({ sires: [] });
  });
  test('a parent that is not on record still makes half siblings', () => {
    const id = animalId;
    const { slips, kin } = growTree([
      { id: id(1), sex: 'female', dam: id(9), sires: [] },
      { id: id(2), sex: 'male', dam: id(9), sires: [] },
    ]);
    expect(slips.map(({ kind }) => kind)).toEqual(['not on record', 'not on record']);
    expect(kin.between(id(1), id(2)).atLeast).toBe(1 / 8);
  });
});

const anAnimal = (n: number): fc.Arbitrary<Born> => {
  const anyone = fc.integer({ min: 0, max: 9 }).map(animalId);
  return fc.record(
    {
      id: fc.constant(animalId(n)),
      sex: fc.constantFrom('female' as const, 'male' as const, 'unknown' as const),
      sires: fc.array(anyone, { maxLength: 3 }),
      dam: anyone,
      hatchedDay: fc.constantFrom(day('2024-08-01'), day('2025-08-01')),
    },
    { requiredKeys: ['id', 'sex', 'sires'] },
  );
};
const aMess = fc.tuple(...Array.from({ length: 10 }, (_, n) => anAnimal(n)));

const told = (animals: readonly Born[], ids: readonly AnimalId[]) => {
  const tree = growTree(animals);
  return ids.map((id) => tree.kin.inbreeding(id));
};

test('any statements at all are sorted out, in any order alike', () => {
  fc.assert(
    fc.property(aMess, fc.func(fc.integer()), (animals, shuffle) => {
      const ids = animals.map(({ id }) => id);
      const other = animals.toSorted((a, b) => shuffle(a.id) - shuffle(b.id));
      expect(told(other, ids)).toEqual(told(animals, ids));
      expect(growTree(other).slips).toEqual(growTree(animals).slips);
    }),
  );
});

test('an animal that is no kin changes nobody’s inbreeding', () => {
  fc.assert(
    fc.property(aMess, (animals) => {
      const ids = animals.map(({ id }) => id);
      const strangers: Born[] = [
        { id: animalId(50), sex: 'female', sires: [] },
        { id: animalId(51), sex: 'unknown', dam: animalId(50), sires: [animalId(51)] },
      ];
      expect(told([...animals, ...strangers], ids)).toEqual(told(animals, ids));
    }),
  );
});

test('the least is never above the most, and a quick look never above the least', () => {
  fc.assert(
    fc.property(aMess, (animals) => {
      const ids = animals.map(({ id }) => id);
      const { kin } = growTree(animals);
      const rows = kin.leastOf(ids.slice(0, 3), ids);
      ids.slice(0, 3).forEach((a, i) => {
        ids.forEach((b, j) => {
          if (a === b) return;
          const { atLeast, atMost = 1 } = kin.between(a, b);
          expect(atLeast).toBeLessThanOrEqual(atMost);
          expect(rows[i]?.[j]).toBeLessThanOrEqual(atLeast);
        });
      });
    }),
  );
});
