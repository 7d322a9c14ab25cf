import { expect, test } from 'vitest';
import { readLineage, type Kin } from '../../../../src/domain/genes/kinship/lineage.ts';

const faultOf = (...kin: readonly Kin[]) => {
  const read = readLineage(kin);
  return read.ok ? undefined : { code: read.problem.code, about: read.problem.about };
};

test('parents may be listed after their young', () => {
  const read = readLineage([
    { id: 'x', dam: 'd', sire: 's' },
    { id: 'd', dam: 'g' },
    { id: 's' },
    { id: 'g' },
  ]);
  if (!read.ok) throw new Error(read.problem.message);
  const place = (id: string): number => read.value.indexOf.get(id)!;
  expect(place('g')).toBeLessThan(place('d'));
  expect(place('d')).toBeLessThan(place('x'));
  expect(place('s')).toBeLessThan(place('x'));
});

test('an animal that is its own ancestor is refused, with the ring named and no one else', () => {
  const ring = faultOf(
    { id: 'child of the ring', dam: 'b' },
    { id: 'a', dam: 'c' },
    { id: 'b', dam: 'a', sire: 'old' },
    { id: 'c', dam: 'b' },
    { id: 'old' },
  );
  expect(ring?.code).toBe('ring');
  expect(ring?.about.toSorted()).toEqual(['a', 'b', 'c']);
  // Each is followed by a parent of it: b, a, c, round again.
  const at = (ring?.about ?? []).indexOf('b');
  expect(ring?.about[(at + 1) % 3]).toBe('a');
  expect(ring?.about[(at + 2) % 3]).toBe('c');
});

test('an animal is not its own parent', () => {
  expect(faultOf({ id: 'a', dam: 'a' })).toEqual({ code: 'ring', about: ['a'] });
});

test.each<readonly [string, readonly Kin[], string]>([
  ['the same id twice', [{ id: 'a' }, { id: 'a' }], 'same-id'],
  ['a parent that is not there', [{ id: 'a', dam: 'b' }], 'missing'],
  ['one animal as both parents', [{ id: 'a' }, { id: 'b', dam: 'a', sire: 'a' }], 'both-parents'],
  [
    'a mother who is a father elsewhere',
    [{ id: 'a' }, { id: 'b', dam: 'a' }, { id: 'c', sire: 'a' }],
    'two-roles',
  ],
  [
    'a male as mother',
    [
      { id: 'a', sex: 'male' },
      { id: 'b', dam: 'a' },
    ],
    'two-roles',
  ],
  [
    'a female as father',
    [
      { id: 'a', sex: 'female' },
      { id: 'b', sire: 'a' },
    ],
    'two-roles',
  ],
  ['a fatherless animal without a mother', [{ id: 'a', fatherless: { apart: 0 } }], 'fatherless'],
  [
    'a fatherless son',
    [{ id: 'a' }, { id: 'b', sex: 'male', dam: 'a', fatherless: { apart: 0 } }],
    'fatherless',
  ],
  [
    'a share over 1',
    [{ id: 'a' }, { id: 'b', dam: 'a', fatherless: { apart: 1.5 } }],
    'fatherless',
  ],
])('%s is refused', (_, kin, code) => {
  expect(faultOf(...kin)?.code).toBe(code);
});
