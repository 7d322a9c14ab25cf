import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ballPython } from '../../../src/domain/genes/catalogue/ball-python.ts';
import { certainly, normalised, type Chances } from '../../../src/domain/genes/chances.ts';
import { fraction } from '../../../src/domain/genes/fraction.ts';
import { genotypeCount, genotypeOf, numberOf } from '../../../src/domain/genes/genotype.ts';
import { survivalOf } from '../../../src/domain/genes/inheritance.ts';
import type { GeneSex, Locus } from '../../../src/domain/genes/locus.ts';
import { editDistance } from '../../../src/domain/genes/nearest-names.ts';
import { genotypesOf, readTraits } from '../../../src/domain/genes/read-traits.ts';
import { writeTraits } from '../../../src/domain/genes/write-traits.ts';

const chance = fc
  .tuple(fc.integer({ min: 1, max: 300 }), fc.integer({ min: 1, max: 300 }))
  .map(([a, b]) => ({ yes: fraction(a, a + b), no: fraction(b, a + b) }));

/** Certain genotypes of the living, possible hets, two copies perhaps, and makers. */
function sayable(locus: Locus, sex: GeneSex): fc.Arbitrary<Chances> {
  const living = Array.from({ length: genotypeCount(locus, sex) }, (_, n) => n).filter(
    (n) => n > 0 && survivalOf(locus, sex, n).n > 0n,
  );
  const certain = fc.constantFrom(...living).map(certainly);
  const alleles = fc.integer({ min: 1, max: locus.alleles.length - 1 });
  if (locus.linkage.kind === 'sex-linked' && sex === 'male') {
    const maker = fc.tuple(alleles, chance).map(([allele, { yes, no }]) =>
      normalised([
        [numberOf(locus, sex, [0, allele]), yes],
        [numberOf(locus, sex, [allele, 0]), no],
      ]),
    );
    return fc.oneof(certain, maker);
  }
  const maybe = fc.tuple(alleles, chance).map(([allele, { yes, no }]) =>
    normalised([
      [numberOf(locus, sex, [0, allele]), yes],
      [0, no],
    ]),
  );
  return fc.oneof(certain, maybe);
}

const anyAnimal = fc.constantFrom<GeneSex>('female', 'male').chain((sex) =>
  fc
    .uniqueArray(fc.constantFrom(...ballPython.loci), { maxLength: 9, selector: ({ id }) => id })
    .chain((loci) =>
      fc.tuple(...loci.map((locus) => sayable(locus, sex))).map((all) => ({
        sex,
        genotypes: new Map(loci.map(({ id }, n) => [id, all[n] as Chances])),
      })),
    ),
);

const plain = (genotypes: ReadonlyMap<string, Chances>) =>
  [...genotypes]
    .map(([id, chances]) => [id, [...chances].toSorted(([a], [b]) => a - b)] as const)
    .toSorted(([a], [b]) => (a < b ? -1 : 1));

describe('what is written is read back the same', () => {
  test('for any animal that trade words can say', () => {
    fc.assert(
      fc.property(anyAnimal, ({ sex, genotypes }) => {
        const { text, unsaid } = writeTraits(genotypes, sex, ballPython);
        const reading = readTraits(text, ballPython, sex);
        expect([unsaid, reading.unknown, reading.contradictions]).toEqual([[], [], []]);
        expect(plain(genotypesOf(reading, sex))).toEqual(plain(genotypes));
      }),
      { numRuns: 200 },
    );
  });

  test('in trade words', () => {
    const text = 'pied 2/3 het; SUPER enchi & 100% het clown / pastel, hra';
    const said = 'Enchi super, hypo';
    for (const [written, expected] of [
      [
        'super ENCHI pastel 66.6% het pied 100% het clown',
        'Pastel, Super Enchi, het Clown, 66% het Pied',
      ],
      ['yb yb', 'Yellow Belly'],
      ['mojo butter het hypo', 'Mojave/Butter, het Ghost'],
      ['', 'Normal'],
    ] as const) {
      const reading = readTraits(written, ballPython, 'female');
      expect(writeTraits(genotypesOf(reading, 'female'), 'female', ballPython).text).toBe(expected);
    }
    expect([text, said].map((each) => readTraits(each, ballPython).loci.size > 0)).toEqual([
      true,
      true,
    ]);
  });

  test('more than trade words can say is named and left out', () => {
    const clown = ballPython.loci.find(({ id }) => id === 'clown');
    if (!clown) throw new Error('clown');
    const all = normalised([0, 1, 2].map((n) => [n, fraction(1)] as const));
    const written = writeTraits(new Map([['clown', all]]), 'female', ballPython);
    expect(written).toEqual({ text: 'Normal', unsaid: [clown] });
    expect(genotypeOf(clown, 'female', 2)).toEqual([1, 1]);
  });
});

describe('hostile text', () => {
  const traitish = fc
    .array(
      fc.oneof(
        fc.constantFrom(
          'het',
          'super',
          '66%',
          '1/0',
          '0%',
          '999999999999%',
          'DH',
          'male maker',
          'x',
        ),
        fc.constantFrom(
          'Pastel',
          'Clown',
          '8-Ball',
          '__proto__',
          'constructor',
          'toString',
          '%',
          '/',
        ),
        fc.constantFrom('T+', 'T-', '\u0000', '\uD800', '½', '٣%', '💥', '1e999', '-1%', '…', '\n'),
        fc.string({ unit: 'binary', maxLength: 8 }),
      ),
      { maxLength: 60 },
    )
    .chain((words) => fc.constantFrom(' ', ',', '/', '').map((by) => words.join(by)));

  test('never throws, and each place lies in the text', () => {
    fc.assert(
      fc.property(
        fc.oneof(traitish, fc.string({ unit: 'binary', maxLength: 400 })),
        fc.constantFrom<GeneSex | undefined>('female', 'male', undefined),
        (text, sex) => {
          const { notes, contradictions, unknown, loci } = readTraits(text, ballPython, sex);
          for (const { at, length } of [...notes, ...contradictions, ...unknown]) {
            expect(at >= 0 && length > 0 && at + length <= text.length).toBe(true);
          }
          for (const chances of loci.values()) {
            for (const [number, { n, d }] of chances.female) {
              expect(number >= 0 && n > 0n && n <= d).toBe(true);
            }
          }
        },
      ),
      { numRuns: 300 },
    );
  });

  test('a very long text is cut, and says so', () => {
    const long = 'Pasel, '.repeat(2_000);
    expect(readTraits(long, ballPython).contradictions.at(-1)?.message).toContain('first 2000');
  });
});

test('edit distance: Damerau 1964 in its optimal string alignment', () => {
  // "kitten" to "sitting" is 3 (Wagner & Fischer 1974 give it for Levenshtein's distance).
  expect(editDistance('kitten', 'sitting')).toBe(3);
  // One swap of neighbours; "ca" to "abc" is 3 in this form, 2 in the unrestricted one.
  expect(editDistance('pide', 'pied')).toBe(1);
  expect(editDistance('ca', 'abc')).toBe(3);
  expect([editDistance('', 'abc'), editDistance('abc', ''), editDistance('', '')]).toEqual([
    3, 3, 0,
  ]);
});
