import { describe, expect, test } from 'vitest';
import { ballPython } from '../../../src/domain/genes/catalogue/ball-python.ts';
import { clutchOdds, fatherlessOdds } from '../../../src/domain/genes/clutch-odds.ts';
import { fraction, HALF, type Fraction } from '../../../src/domain/genes/fraction.ts';
import { lookTable } from '../../../src/domain/genes/look-table.ts';
import { chanceOf, targetCases } from '../../../src/domain/genes/target-odds.ts';
import type { Want } from '../../../src/domain/genes/target.ts';
import { animal, behind, genotypes, locusNamed, looks, pair, short } from './pairs.ts';

// By hand: independent loci multiply.

const perEgg = (odds: ReturnType<typeof pair>, wants: readonly Want[]): string =>
  short(chanceOf(targetCases(odds, { wants }, { of: 'conceptions' })));

describe('independent loci', () => {
  test('double het x double het: Mendel 1866, 9:3:3:1', () => {
    const odds = pair('DH Clown Pied', 'DH Clown Pied');
    expect(looks(odds)).toEqual({
      Normal: '9/16',
      Pied: '3/16',
      Clown: '3/16',
      'Clown Pied': '1/16',
    });
    // Each locus is het with 2/3, so both with 4/9, one of them with 4/9, neither with 1/9.
    expect(behind(odds, 'Normal')).toBe('66% het Clown, 66% het Pied');
  });

  test('double het x double visual', () => {
    expect(looks(pair('DH Clown Pied', 'Clown, Pied'))).toEqual({
      Normal: '1/4',
      Pied: '1/4',
      Clown: '1/4',
      'Clown Pied': '1/4',
    });
  });

  test('one visual x another: all double het', () => {
    const odds = pair('Clown', 'Pied');
    expect(looks(odds)).toEqual({ Normal: '1' });
    expect(behind(odds, 'Normal')).toBe('het Clown, het Pied');
  });

  test('double het x visual of one', () => {
    const odds = pair('DH Clown Pied', 'Clown');
    expect(looks(odds)).toEqual({ Clown: '1/2', Normal: '1/2' });
    expect([behind(odds, 'Clown'), behind(odds, 'Normal')]).toEqual([
      'Clown, 50% het Pied',
      'het Clown, 50% het Pied',
    ]);
  });

  test('Pastel het Clown x the same', () => {
    const odds = pair('Pastel, het Clown', 'Pastel, het Clown');
    expect(looks(odds)).toEqual({
      'Super Pastel Clown': '1/16',
      'Pastel Clown': '1/8',
      Clown: '1/16',
      'Super Pastel': '3/16',
      Pastel: '3/8',
      Normal: '3/16',
    });
    expect(behind(odds, 'Super Pastel')).toBe('Super Pastel, 66% het Clown');
  });

  test('triple het x triple het', () => {
    const odds = pair('TH Clown Pied Ghost', 'TH Clown Pied Ghost');
    const byVisuals = Object.entries(looks(odds)).map(([name, chance]) => [
      name === 'Normal' ? 0 : name.split(' ').length,
      chance,
    ]);
    // 27:9:9:9:3:3:3:1 in 64.
    expect(byVisuals).toEqual([
      [0, '27/64'],
      ...Array.from({ length: 3 }, () => [1, '9/64']),
      ...Array.from({ length: 3 }, () => [2, '3/64']),
      [3, '1/64'],
    ]);
    const allHet = ['clown', 'pied', 'ghost'].flatMap((locus): Want[] => [
      { locus, carries: locus },
      { locus, look: '' },
    ]);
    // (2/3)^3 of 27/64 is 8/64.
    expect(perEgg(odds, allHet)).toBe('1/8');
  });

  test('four single genes x normal', () => {
    const all = looks(pair('Pastel, Enchi, Leopard, Pinstripe', 'Normal'));
    expect(Object.keys(all)).toHaveLength(16);
    expect(new Set(Object.values(all))).toEqual(new Set(['1/16']));
  });

  test('the rarest looks are told as a number and a chance', () => {
    const { rows, rarer } = lookTable(pair('DH Clown Pied', 'DH Clown Pied'), 2);
    expect(rows.map(({ perHatchling }) => short(perHatchling))).toEqual(['9/16', '3/16']);
    expect([rarer.looks, short(rarer.perHatchling)]).toEqual([2, '1/4']);
  });
});

describe('several males', () => {
  const dam = animal('het Pied', 'female');
  const sires = ['het Pied', 'Normal'].map((text) => ({
    sire: animal(text, 'male'),
    weight: HALF,
  }));

  test.each(['one', 'each egg its own'] as const)(
    'an egg is visual with 1/8, fathers: %s',
    (fathers) => {
      const odds = clutchOdds(dam, sires, ballPython, { fathers });
      // (1/2)(1/4)
      expect(looks(odds)).toEqual({ Normal: '7/8', Pied: '1/8' });
    },
  );

  test('a normal is het with (1/4 + 1/4) / (7/8)', () => {
    expect(behind(clutchOdds(dam, sires, ballPython), 'Normal')).toBe('4/7 het Pied');
  });

  test('one lethal pairing among them costs its share of the eggs', () => {
    const two = ['Spider', 'Normal'].map((text) => ({ sire: animal(text, 'male'), weight: HALF }));
    const odds = clutchOdds(animal('Spider', 'female'), two, ballPython, {
      fathers: 'each egg its own',
    });
    // Eggs: by Spider 1/4 lost, 1/2 Spider, 1/4 normal; by normal 1/2, 1/2. Of 7/8 that live:
    // (1/4 + 1/4) Spider and (1/8 + 1/4) normal.
    expect(short(lookTable(odds).lost.perEgg)).toBe('1/8');
    expect(looks(odds)).toEqual({ Spider: '4/7', Normal: '3/7' });
  });
});

describe('without a sire', () => {
  const dam = animal('het Pied', 'female');
  // Booth et al. 2014 for the mechanism; the shares by hand: het y, either homozygote (1 - y)/2.
  test.each<[Fraction, Record<string, string>]>([
    [fraction(0), { 'pied pied': '1/2', '+ +': '1/2' }],
    [fraction(2, 3), { 'pied +': '2/3', 'pied pied': '1/6', '+ +': '1/6' }],
    [fraction(1), { 'pied +': '1' }],
  ])('alleles parting late with %o', (apart, expected) => {
    const odds = fatherlessOdds(dam, ballPython, apart);
    expect(genotypes(odds, locusNamed('pied'))).toEqual(expected);
    const rows = lookTable(odds).rows;
    expect(rows.map(({ bySex }) => short(bySex.male))).toEqual(rows.map(() => '0'));
  });

  test('two copies that cannot live are lost', () => {
    const odds = fatherlessOdds(animal('Spider', 'female'), ballPython, fraction(2, 3));
    expect(short(lookTable(odds).lost.perEgg)).toBe('1/6');
    expect(looks(odds)).toEqual({ Spider: '4/5', Normal: '1/5' });
  });
});
