import { describe, expect, test } from 'vitest';
import { kinshipsIn } from '../../../../src/domain/genes/kinship/kinship.ts';
import { lineageOf, roanGauntlet } from './lineages.ts';

// Wright 1922; kinships from Lynch & Walsh 1998, ch. 7, examples 1 and 2.
describe('Roan Gauntlet', () => {
  const kinships = kinshipsIn(lineageOf(roanGauntlet.toReversed()));

  test('he is 9/64 inbred, Royal Duke 5/32, no other at all', () => {
    expect(kinships.inbreeding('Roan Gauntlet').atLeast).toBe(9 / 64);
    expect(kinships.inbreeding('Royal Duke').atLeast).toBe(5 / 32);
    for (const { id } of roanGauntlet) {
      if (id === 'Roan Gauntlet' || id === 'Royal Duke') continue;
      expect(kinships.inbreeding(id).atLeast).toBe(0);
    }
  });

  test('kinships of his ancestors', () => {
    expect(kinships.between('Royal Duke', 'Princess Royal').atLeast).toBeCloseTo(0.141, 3);
    const pairs = kinships.ofPairs(['Champion', 'Carmine'], ['Grand Duke', 'Mimulus']);
    expect(pairs.map((row) => row.map(({ atLeast }) => atLeast))).toEqual([
      [1 / 4, 1 / 4],
      [1 / 32, 1 / 32],
    ]);
  });

  // The shortened pedigree that circulates, with Lord Raglan as sire of Champion and Carmine, gives 5/32.
  test('more of his ancestors than needed are not assumed', () => {
    const shortened = roanGauntlet.map((each) =>
      each.id === 'Champion' || each.id === 'Carmine' ? { ...each, sire: 'Lord Raglan' } : each,
    );
    expect(kinshipsIn(lineageOf(shortened)).inbreeding('Roan Gauntlet').atLeast).not.toBe(9 / 64);
  });
});

describe('what is not known', () => {
  const kinships = kinshipsIn(
    lineageOf([
      { id: 'A', sex: 'male' },
      { id: 'B', sex: 'female' },
      { id: 'C', sex: 'female' },
      { id: 'ab', sire: 'A', dam: 'B' },
      { id: 'c', dam: 'C' },
      { id: 'abc', sire: 'ab', dam: 'c' },
    ]),
  );

  test('two founders are not unrelated but unknown', () => {
    expect(kinships.between('A', 'B')).toEqual({ atLeast: 0, generations: 0, unknown: true });
    expect(kinships.between('A', 'c').unknown).toBe(true);
  });

  test('a founder and its grandchild are related, as far as is known', () => {
    const { atLeast, unknown } = kinships.between('A', 'abc');
    expect(atLeast).toBe(1 / 8);
    expect(unknown).toBe(false);
  });

  test('two with parents are unrelated as far as those go', () => {
    expect(kinships.between('ab', 'c')).toEqual({ atLeast: 0, generations: 0.5, unknown: false });
  });

  // By hand: one parent of two known is half a generation; ½ (1 + 1) + ½ (1 + ½) = 1.75.
  test('depth counts what is known of each generation', () => {
    expect(kinships.inbreeding('c')).toEqual({ atLeast: 0, generations: 0.5, unknown: true });
    expect(kinships.inbreeding('abc')).toEqual({ atLeast: 0, generations: 1.75, unknown: false });
  });

  test('who is not there is an error', () => {
    expect(() => kinships.inbreeding('Z')).toThrow(RangeError);
  });
});

// Females XX, males XY; first two and the last from a public test suite's values for these pairs, all
// by the recursion: a son has his X from his dam, a daughter one of each parent.
describe('on the X', () => {
  const kinships = kinshipsIn(
    lineageOf([
      ...(['S', 'T'] as const).map((id) => ({ id, sex: 'male' as const })),
      ...(['D', 'E'] as const).map((id) => ({ id, sex: 'female' as const })),
      { id: 'son', sex: 'male', sire: 'S', dam: 'D' },
      { id: 'daughter', sex: 'female', sire: 'S', dam: 'D' },
      { id: 'sister', sex: 'female', sire: 'S', dam: 'D' },
      { id: 'by S of E', sex: 'female', sire: 'S', dam: 'E' },
      { id: 'by T of D', sex: 'female', sire: 'T', dam: 'D' },
    ]),
    'x',
  );
  test.each([
    ['son', 'by S of E', 0],
    ['son', 'by T of D', 1 / 4],
    ['son', 'daughter', 1 / 4],
    ['daughter', 'sister', 3 / 8],
    ['S', 'daughter', 1 / 2],
    ['D', 'son', 1 / 2],
  ])('%s and %s: %d', (a, b, expected) => {
    expect(kinships.between(a, b).atLeast).toBe(expected);
    expect(kinships.between(b, a).atLeast).toBe(expected);
  });

  // Lynch & Walsh 1998, ch. 7: X-linked coancestry of the pair is 1/4.
  test('Royal Duke and Princess Royal: 1/4', () => {
    const males = new Set(roanGauntlet.map(({ sire }) => sire).concat('Roan Gauntlet'));
    const sexed = roanGauntlet.map((each) => ({
      ...each,
      sex: males.has(each.id) ? ('male' as const) : ('female' as const),
    }));
    const onX = kinshipsIn(lineageOf(sexed), 'x');
    expect(onX.between('Royal Duke', 'Princess Royal').atLeast).toBe(1 / 4);
    expect(onX.inbreeding('Roan Gauntlet').unknown).toBe(false);
  });

  test('without a sex there is no answer', () => {
    expect(() => kinshipsIn(lineageOf([{ id: 'A' }]), 'x')).toThrow('The sex of A is not known.');
  });
});
