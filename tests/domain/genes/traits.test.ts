import { describe, expect, test } from 'vitest';
import { ballPython } from '../../../src/domain/genes/catalogue/ball-python.ts';
import { genotypeOf } from '../../../src/domain/genes/genotype.ts';
import type { GeneSex } from '../../../src/domain/genes/locus.ts';
import { readTraits } from '../../../src/domain/genes/read-traits.ts';
import { locusNamed, short } from './pairs.ts';

// Meanings of trade words: common practice, no source. 66 % is two thirds.

/** `{ clown: '+ clown', pied: '+ pied @2/3, + + @1/3' }` */
function read(text: string, sex: GeneSex = 'female'): Record<string, string> {
  const { loci } = readTraits(text, ballPython, sex);
  return Object.fromEntries(
    [...loci].map(([id, chances]) => {
      const locus = locusNamed(id);
      const genotypes = [...chances[sex]].map(([number, chance]) => {
        const alleles = genotypeOf(locus, sex, number).map((n) => locus.alleles[n]?.id);
        return `${alleles.join(' ')}${short(chance) === '1' ? '' : ` @${short(chance)}`}`;
      });
      return [id, genotypes.join(', ')];
    }),
  );
}
const against = (text: string, sex?: GeneSex) =>
  readTraits(text, ballPython, sex).contradictions.map(({ message }) => message);
const notes = (text: string, sex?: GeneSex) =>
  readTraits(text, ballPython, sex).notes.map(({ message }) => message);

describe('what keepers write', () => {
  test.each([
    [
      'Pastel, 100% het Clown, 66% het Pied, super Enchi',
      {
        pastel: '+ pastel',
        clown: '+ clown',
        pied: '+ pied @2/3, + + @1/3',
        enchi: 'enchi enchi',
      },
    ],
    ['PASTEL het pied', { pastel: '+ pastel', pied: '+ pied' }],
    ['Piebald', { pied: 'pied pied' }],
    ['visual Clown', { clown: 'clown clown' }],
    ['het Clown + Pastel\nEnchi', { clown: '+ clown', pastel: '+ pastel', enchi: '+ enchi' }],
    ['DH Clown Pied', { clown: '+ clown', pied: '+ pied' }],
    ['double het Clown, Pied, Ghost', { clown: '+ clown', pied: '+ pied', ghost: 'ghost ghost' }],
    [
      'triple het for Clown, Pied and Ghost',
      { clown: '+ clown', pied: '+ pied', ghost: '+ ghost' },
    ],
    [
      '50 % double het Clown Pied',
      { clown: '+ clown @1/2, + + @1/2', pied: '+ pied @1/2, + + @1/2' },
    ],
    ['het Clown, Pied', { clown: '+ clown', pied: 'pied pied' }],
    [
      'hets: Clown, Pied; Pastel, Ghost',
      { clown: '+ clown', pied: '+ pied', pastel: '+ pastel', ghost: 'ghost ghost' },
    ],
    ['66% het: Clown, Pied', { clown: '+ clown @2/3, + + @1/3', pied: '+ pied @2/3, + + @1/3' }],
    ['Poss. het Clown', { clown: '+ clown @1/2, + + @1/2' }],
    ['Pos het Clown', { clown: '+ clown @1/2, + + @1/2' }],
    ['ph Clown', { clown: '+ clown @1/2, + + @1/2' }],
    ['66% possible het Clown', { clown: '+ clown @2/3, + + @1/3' }],
    ['3/5 het Clown', { clown: '+ clown @3/5, + + @2/5' }],
    ['Butter/Ghost', { bel: '+ butter', ghost: 'ghost ghost' }],
    ['Normal', {}],
    ['wild type het Albino', { tyr: '+ albino' }],
    ['T- Albino', { tyr: 'albino albino' }],
    ['T+ Albino', { caramel: 'caramel caramel' }],
    ['Desert Ghost', { 'desert-ghost': 'desert-ghost desert-ghost' }],
    ['Desert, Ghost', { desert: '+ desert', ghost: 'ghost ghost' }],
    ['black-pastel', { cinnamon: '+ black-pastel' }],
    [
      'Tri Stripe het G Stripe',
      { 'tri-stripe': 'tri-stripe tri-stripe', 'genetic-stripe': '+ genetic-stripe' },
    ],
    ['VPI Axanthic line', { 'axanthic-vpi': 'axanthic-vpi axanthic-vpi' }],
    ['het Scaleless', { scaleless: '+ scaleless' }],
    ['Scaleless', { scaleless: 'scaleless scaleless' }],
    ['het Russo', { bel: '+ russo' }],
  ])('%s', (text, expected) => {
    expect(read(text)).toEqual(expected);
    expect([against(text), readTraits(text, ballPython).unknown]).toEqual([[], []]);
  });

  test.each([
    ['66', '2/3'],
    ['66%', '2/3'],
    ['66.6%', '2/3'],
    ['66,7 %', '2/3'],
    ['67%', '2/3'],
    ['33%', '1/3'],
    ['33.3%', '1/3'],
    ['50%', '1/2'],
    ['25%', '1/4'],
    ['12.5%', '1/8'],
  ])('%s het is %s', (percent, chance) => {
    expect(read(`${percent} het Clown`)['clown']).toContain(`+ clown @${chance}`);
  });

  test.each([
    ['Ivory', 'yellow-belly yellow-belly'],
    ['Freeway', 'yellow-belly asphalt'],
    ['Highway', 'yellow-belly gravel'],
    ['Puma', 'yellow-belly spark'],
    ['Superstripe', 'yellow-belly specter'],
    ['Super Stripe', 'yellow-belly specter'],
    ['Candino', 'albino candy'],
    ['Toffino', 'albino toffee'],
    ['Purple Passion', 'mojave phantom'],
    ['Mystic Potion', 'mojave mystic'],
    ['Crystal', 'mojave special'],
    ['Vanilla Cream', 'fire vanilla'],
    ['8-Ball', 'cinnamon black-pastel'],
    ['8ball', 'cinnamon black-pastel'],
    ['Powerball', 'spotnose spotnose'],
    ['BlkEL', 'fire fire'],
    ['Lesser/Mojave', 'mojave lesser'],
    ['Mojave Lesser', 'mojave lesser'],
    ['Clown Cryptic', 'clown cryptic'],
    ['Candy/Toffee', 'candy toffee'],
  ])('%s is %s', (name, alleles) => {
    expect(Object.values(read(name))).toEqual([alleles]);
  });

  test('Banana of a male lies on his X or his Y', () => {
    expect(read('Banana', 'female')).toEqual({ banana: '+ banana' });
    expect(read('Banana', 'male')).toEqual({ banana: '+ banana @1/2, banana + @1/2' });
    expect(read('Coral Glow, male maker', 'male')).toEqual({ banana: '+ banana' });
    expect(read('female maker Banana', 'male')).toEqual({ banana: 'banana +' });
    expect(read('90% male maker Banana', 'male')).toEqual({
      banana: '+ banana @9/10, banana + @1/10',
    });
    expect(notes('CG', 'male').join('')).toContain('50 % each');
    expect(against('male maker Banana', 'female')).toHaveLength(1);
    expect(against('male maker female maker Banana', 'male')).toHaveLength(1);
  });
});

describe('taken with a remark', () => {
  test.each([
    ['het Pastel', 'shows'],
    ['super Clown', 'recessive'],
    ['super Pinstripe', 'breeding'],
    ['pos het Clown', '50 % is assumed'],
    ['66% Clown', 'chance to be het'],
    ['het Clown Pied', 'Read as het Pied'],
    ['het Clown/Pied', 'Read as het Pied'],
    ['Pastel Pastel', 'twice'],
    ['50% het Clown, 50% het Clown', 'twice'],
    ['het Clown, 50% het Clown', 'twice'],
    ['Ivory Yellow Belly', 'twice'],
    ['super Ivory', 'already'],
    ['Woma', 'disputed'],
    ['het Red Axanthic', 'disputed'],
    ['Cryptic, 66% het Clown', 'would show'],
  ])('%s', (text, words) => {
    expect(notes(text).join(' ')).toContain(words);
    expect(against(text)).toEqual([]);
    expect(Object.keys(read(text)).length).toBeGreaterThan(0);
  });
});

describe('cannot be so, and the locus is left out', () => {
  test.each([
    ['Mojave Lesser Phantom', 'two at most'],
    ['Super Mojave Lesser', 'two at most'],
    ['Ivory Asphalt', 'two at most'],
    ['Lesser Mojave, 66% het Phantom', 'two at most'],
    ['Albino het Candy', 'Candino'],
    ['het Albino, het Candy', 'Candino'],
    ['66% het Albino, 66% het Candy', 'Candino'],
    ['het Albino, 50% het Candy', 'Candino'],
    ['super Spider', 'never seen'],
    ['Pearl', 'never seen'],
    ['super Puma', 'no super'],
    ['het Puma', 'nothing is het'],
    ['super het Clown', 'not both'],
    ['66%', 'No trait follows'],
    ['Clown het', 'No trait follows'],
    ['120% het', 'between 0 and 100'],
    ['1/0 het', 'between 0 and 100'],
    ['66% het Clown, 50% het Clown', 'Two different chances'],
  ])('%s', (text, words) => {
    expect(against(text).join(' ')).toContain(words);
  });

  test.each(['Mojave Lesser Phantom', 'Albino het Candy', 'super Spider'])('%s', (text) => {
    expect(read(text)).toEqual({});
  });

  test('a normal that shows something', () => {
    expect(against('Normal Pastel')).toHaveLength(1);
    expect(against('Normal het Clown')).toEqual([]);
  });

  test('the place is told', () => {
    const [first] = readTraits('Pastel, Mojave Lesser Phantom', ballPython).contradictions;
    expect([first?.at, first?.length]).toEqual([8, 'Mojave Lesser Phantom'.length]);
  });
});

describe('not understood, and kept as said', () => {
  const unknown = (text: string) => readTraits(text, ballPython).unknown;

  test('each word has its place and the nearest names', () => {
    const text = 'Pastel, het Pide, Enchii';
    expect(unknown(text).map(({ at, length }) => text.slice(at, at + length))).toEqual([
      'het Pide',
      'Enchii',
    ]);
    expect(unknown(text).map(({ nearest }) => nearest[0])).toEqual(['Pied', 'Enchi']);
    expect(read(text)).toEqual({ pastel: '+ pastel' });
  });

  test('a slip in a long name is not taken for the short one in it', () => {
    expect(read('Blak Pastel')).toEqual({});
    expect(unknown('Blak Pastel')[0]?.nearest[0]).toBe('Black Pastel');
    expect(unknown('Yellow')[0]?.nearest).toContain('Yellow Belly');
  });

  test('what names no one genotype says what to write', () => {
    expect(unknown('het Axanthic')[0]?.message).toContain('name the line');
    expect(unknown('BEL')[0]?.message).toContain('name both genes');
  });

  test('a year or a ratio of sexes is no chance', () => {
    expect(read('2019 Pastel, 1.2 Clown')).toEqual({ pastel: '+ pastel', clown: 'clown clown' });
    expect(unknown('2019 Pastel, 1.2 Clown').map(({ words }) => words)).toEqual(['2019', '1.2']);
  });

  test('what nobody knows has no neighbours', () => {
    expect(unknown('Xylophone')).toEqual([{ at: 0, length: 9, words: 'xylophone', nearest: [] }]);
  });
});
