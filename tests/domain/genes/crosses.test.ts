import { describe, expect, test } from 'vitest';
import { ballPython } from '../../../src/domain/genes/catalogue/ball-python.ts';
import { extendCatalogue } from '../../../src/domain/genes/extend-catalogue.ts';
import { certainly } from '../../../src/domain/genes/chances.ts';
import { clutchOdds } from '../../../src/domain/genes/clutch-odds.ts';
import { fraction, ONE } from '../../../src/domain/genes/fraction.ts';
import { lookTable } from '../../../src/domain/genes/look-table.ts';
import { behind, genotypes, locusNamed, looks, nameOf, pair, short } from './pairs.ts';

// Expected numbers are Punnett squares, worked out by hand: gametes multiplied, equal genotypes
// added. The derivation stands beside each that is not plain. Where a law has a name, it is given.

const pied = locusNamed('pied');
const bel = locusNamed('bel');

describe('one recessive', () => {
  test.each([
    // Mendel 1866, Versuche über Pflanzen-Hybriden: 3:1, and 1:2:1 behind it.
    ['het Pied', 'het Pied', { 'pied pied': '1/4', 'pied +': '1/2', '+ +': '1/4' }],
    ['Pied', 'het Pied', { 'pied pied': '1/2', 'pied +': '1/2' }],
    ['Pied', 'Normal', { 'pied +': '1' }],
    ['Pied', 'Pied', { 'pied pied': '1' }],
    ['het Pied', 'Normal', { 'pied +': '1/2', '+ +': '1/2' }],
    // A parent that is het with chance p gives the allele with p/2.
    ['66% het Pied', 'Pied', { 'pied pied': '1/3', 'pied +': '2/3' }],
    ['66% het Pied', 'het Pied', { 'pied pied': '1/6', 'pied +': '1/2', '+ +': '1/3' }],
    ['66% het Pied', '66% het Pied', { 'pied pied': '1/9', 'pied +': '4/9', '+ +': '4/9' }],
    ['50% het Pied', 'het Pied', { 'pied pied': '1/8', 'pied +': '1/2', '+ +': '3/8' }],
    ['50% het Pied', 'Pied', { 'pied pied': '1/4', 'pied +': '3/4' }],
    ['50% het Pied', '50% het Pied', { 'pied pied': '1/16', 'pied +': '3/8', '+ +': '9/16' }],
    ['66% het Pied', '50% het Pied', { 'pied pied': '1/12', 'pied +': '5/12', '+ +': '1/2' }],
    ['66% het Pied', 'Normal', { 'pied +': '1/3', '+ +': '2/3' }],
    ['50% het Pied', 'Normal', { 'pied +': '1/4', '+ +': '3/4' }],
  ])('%s x %s', (a, b, expected) => {
    expect(genotypes(pair(a, b), pied)).toEqual(expected);
    expect(genotypes(pair(b, a), pied)).toEqual(expected);
  });

  test.each([
    // Het over non-visual: (1/2) / (3/4) and so on.
    ['het Pied', 'het Pied', '66% het Pied'],
    ['Pied', 'Normal', 'het Pied'],
    ['het Pied', 'Normal', '50% het Pied'],
    ['66% het Pied', 'Pied', 'het Pied'],
    ['66% het Pied', 'het Pied', '60% het Pied'],
    ['66% het Pied', '66% het Pied', '50% het Pied'],
    ['50% het Pied', 'het Pied', '4/7 het Pied'],
    ['50% het Pied', '50% het Pied', '40% het Pied'],
    ['66% het Pied', '50% het Pied', '5/11 het Pied'],
    ['66% het Pied', 'Normal', '33% het Pied'],
    ['50% het Pied', 'Normal', '25% het Pied'],
  ])('a normal of %s x %s is %s', (a, b, expected) => {
    expect(behind(pair(a, b), 'Normal')).toBe(expected);
  });
});

describe('one visible gene', () => {
  test.each([
    ['Pastel', 'Normal', { Pastel: '1/2', Normal: '1/2' }],
    ['Pastel', 'Pastel', { 'Super Pastel': '1/4', Pastel: '1/2', Normal: '1/4' }],
    ['Super Pastel', 'Normal', { Pastel: '1' }],
    ['Super Pastel', 'Pastel', { 'Super Pastel': '1/2', Pastel: '1/2' }],
    // Two copies look like one.
    ['Pinstripe', 'Pinstripe', { Pinstripe: '3/4', Normal: '1/4' }],
  ])('%s x %s', (a, b, expected) => {
    expect(looks(pair(a, b))).toEqual(expected);
  });

  test('of visible young of two dominants, a third has two copies: (1/4) / (3/4)', () => {
    expect(behind(pair('Pinstripe', 'Pinstripe'), 'Pinstripe')).toBe('33% super Pinstripe');
  });
});

describe('a genotype that does not live', () => {
  test('is an egg lost, and the hatchlings share what is left', () => {
    const odds = pair('Spider', 'Spider');
    expect(looks(odds)).toEqual({ Spider: '2/3', Normal: '1/3' });
    const { rows, lost } = lookTable(odds);
    expect([short(lost.perEgg), lost.loci]).toEqual(['1/4', ['spider']]);
    expect(rows.map((row) => [nameOf(row), short(row.perEgg)])).toEqual([
      ['Spider', '1/2'],
      ['Normal', '1/4'],
    ]);
  });

  test('leaves independent loci alone', () => {
    // 2/3 or 1/3 Spider by 1/2 Pastel.
    const odds = pair('Spider, Pastel', 'Spider');
    expect(looks(odds)).toEqual({
      'Pastel Spider': '1/3',
      Spider: '1/3',
      Pastel: '1/6',
      Normal: '1/6',
    });
    expect(short(lookTable(odds).lost.perEgg)).toBe('1/4');
  });

  test('may be all there is', () => {
    const both = new Map([['spider', certainly(2)]]);
    const odds = clutchOdds(both, [{ sire: both, weight: ONE }], ballPython);
    const { rows, rarer, lost } = lookTable(odds);
    expect([rows, rarer.looks, short(rarer.perHatchling), short(lost.perEgg)]).toEqual([
      [],
      0,
      '0',
      '1',
    ]);
  });

  test('may live now and then: w/(3+w), 2/(3+w), 1/(3+w) at w = 1/2', () => {
    const { evidence } = locusNamed('champagne');
    const own = extendCatalogue(ballPython, {
      changes: [
        {
          locus: 'champagne',
          pairs: [
            {
              alleles: ['champagne', 'champagne'],
              survival: { share: fraction(1, 2), evidence },
              evidence,
            },
          ],
        },
      ],
    });
    if (!own.ok) throw new Error('refused');
    const odds = pair('Champagne', 'Champagne', own.value);
    expect(looks(odds)).toEqual({ 'Super Champagne': '1/7', Champagne: '4/7', Normal: '2/7' });
    expect(short(lookTable(odds).lost.perEgg)).toBe('1/8');
  });
});

describe('several alleles of one locus', () => {
  test.each([
    [
      'Lesser',
      'Mojave',
      { 'lesser mojave': '1/4', 'lesser +': '1/4', 'mojave +': '1/4', '+ +': '1/4' },
    ],
    // No young with both, and none with neither: two unlinked genes would give 1/4 of each.
    ['Lesser/Mojave', 'Normal', { 'lesser +': '1/2', 'mojave +': '1/2' }],
    [
      'Lesser/Mojave',
      'Mojave',
      { 'lesser mojave': '1/4', 'mojave mojave': '1/4', 'lesser +': '1/4', 'mojave +': '1/4' },
    ],
    [
      'Lesser/Mojave',
      'Lesser/Mojave',
      { 'lesser lesser': '1/4', 'lesser mojave': '1/2', 'mojave mojave': '1/4' },
    ],
  ])('%s x %s', (a, b, expected) => {
    expect(genotypes(pair(a, b), bel)).toEqual(expected);
  });

  test('pairs go by their trade names', () => {
    expect(looks(pair('Freeway', 'Yellow Belly'))).toEqual({
      Ivory: '1/4',
      'Yellow Belly': '1/4',
      Freeway: '1/4',
      Asphalt: '1/4',
    });
    expect(looks(pair('Ivory', 'Asphalt Gravel'))).toEqual({ Freeway: '1/2', Highway: '1/2' });
  });

  test('two recessives of one locus are visual together', () => {
    const odds = pair('het Albino', 'het Candy');
    expect(looks(odds)).toEqual({ Candino: '1/4', Normal: '3/4' });
    // Non-visual: het Albino, het Candy and wild 1/4 each, so a third each.
    expect(behind(odds, 'Normal')).toBe('33% het Albino, 33% het Candy');
    expect(looks(pair('Candino', 'Normal'))).toEqual({ Normal: '1' });
    expect(behind(pair('Candino', 'Normal'), 'Normal')).toBe('50% het Albino, 50% het Candy');
  });

  test('axanthic lines are loci of their own: double hets and no visuals', () => {
    const odds = pair('Axanthic VPI', 'Axanthic TSK');
    expect(looks(odds)).toEqual({ Normal: '1' });
    expect(behind(odds, 'Normal')).toBe('het Axanthic VPI, het Axanthic TSK');
  });
});
