import { describe, expect, test } from 'vitest';
import { ballPython } from '../../../src/domain/genes/catalogue/ball-python.ts';
import { catalogueFaults } from '../../../src/domain/genes/catalogue-faults.ts';
import { extendCatalogue, type OwnGenes } from '../../../src/domain/genes/extend-catalogue.ts';
import { fraction, HALF } from '../../../src/domain/genes/fraction.ts';
import { numberOf } from '../../../src/domain/genes/genotype.ts';
import { survivalOf } from '../../../src/domain/genes/inheritance.ts';
import type { Allele, Evidence, Locus } from '../../../src/domain/genes/locus.ts';
import { lookOf } from '../../../src/domain/genes/look.ts';
import { genotypesOf, readTraits } from '../../../src/domain/genes/read-traits.ts';
import { writeTraits } from '../../../src/domain/genes/write-traits.ts';
import { locusNamed, looks, pair } from './pairs.ts';

const mutations = ballPython.loci.flatMap(({ alleles }) => alleles.slice(1));

describe('the catalogue', () => {
  test('is sound', () => {
    expect(catalogueFaults(ballPython)).toEqual([]);
  });

  test('holds at least sixty mutations, each with its evidence', () => {
    expect(mutations.length).toBeGreaterThanOrEqual(60);
    for (const { evidence } of mutations) expect(evidence.sources.length).toBeGreaterThan(0);
  });

  test('calls published only what a publication says', () => {
    // Brown 2022; Dao 2023 for the group only; Garcia-Elfring 2023, 2024, 2025; Lederer 2023;
    // Mallery & Carrillo 2016. No other mutation has a publication known to us.
    const published = mutations.filter(({ evidence }) => evidence.grade === 'published');
    expect(published.map(({ id }) => id).toSorted()).toEqual([
      'albino',
      'axanthic-gch2',
      'banana',
      'clown',
      'ghost',
      'lavender',
      'pied',
      'ultramel',
    ]);
    for (const { evidence } of [...published, ...ballPython.cautions]) {
      const kinds = evidence.sources.map(({ kind }) => kind);
      expect(kinds.includes('published')).toBe(evidence.grade === 'published');
    }
  });

  test('says what is disputed', () => {
    const disputed = mutations.filter(({ evidence }) => evidence.grade === 'disputed');
    expect(disputed.map(({ id }) => id)).toEqual(
      expect.arrayContaining(['woma', 'red-axanthic', 'daddy', 'rainbow', 'whitewash', 'disco']),
    );
    // Nothing of them is asserted: each says what is not known, or that it is not agreed.
    for (const { id, remark } of disputed) expect([id, remark]).toEqual([id, expect.any(String)]);
  });

  test('lets three genotypes die, all by agreement of the trade only', () => {
    const dying = ballPython.loci.flatMap(({ pairs }) =>
      pairs.flatMap(({ alleles, survival }) => (survival ? [[alleles[0], survival] as const] : [])),
    );
    expect(dying.map(([id, { share, evidence }]) => [id, share.n, evidence.grade])).toEqual([
      ['hidden-gene-woma', 0n, 'trade consensus'],
      ['champagne', 0n, 'trade consensus'],
      ['spider', 0n, 'trade consensus'],
    ]);
    // A Spider with a Blackhead lives, breeders agree.
    const spider = locusNamed('spider');
    expect(survivalOf(spider, 'female', numberOf(spider, 'female', [1, 2]))).toEqual(fraction(1));
  });

  test.each([
    ['pied', [0, 1], ''],
    ['pied', [1, 1], 'Pied'],
    ['pinstripe', [1, 1], 'Pinstripe'],
    ['enchi', [0, 1], 'Enchi'],
    ['enchi', [1, 1], 'Super Enchi'],
    ['yellow-belly', [1, 1], 'Ivory'],
    ['clown', [1, 2], 'Clown/Cryptic'],
    ['red-axanthic', [1, 1], 'Red Axanthic'],
  ] as const)('%s %o looks %s', (id, genotype, name) => {
    const locus = locusNamed(id);
    expect(lookOf(locus, 'male', numberOf(locus, 'male', genotype)).name).toBe(name);
  });
});

describe('a keeper’s own genes', () => {
  const evidence: Evidence = {
    grade: 'trade consensus',
    sources: [{ kind: 'practice', cite: 'Our own crosses.' }],
  };
  const allele = (id: string, name: string, more: Partial<Allele> = {}): Allele => ({
    id,
    name,
    aliases: [],
    mode: 'incomplete dominant',
    evidence,
    ...more,
  });
  const wild = allele('+', 'Normal', { mode: 'recessive' });
  const own = (id: string, alleles: readonly Allele[], more: Partial<Locus> = {}): Locus => ({
    id,
    name: id,
    linkage: { kind: 'autosomal' },
    alleles: [wild, ...alleles],
    pairs: [],
    evidence,
    ...more,
  });
  const faults = (genes: OwnGenes) => {
    const extended = extendCatalogue(ballPython, genes);
    return extended.ok ? [] : extended.problem.map(({ where, message }) => `${where}: ${message}`);
  };

  test('are read, bred and written like any other', () => {
    const extended = extendCatalogue(ballPython, {
      loci: [own('cellar', [allele('cellar', 'Cellar Line')])],
      changes: [
        {
          locus: 'bel',
          alleles: [allele('attic', 'Attic')],
          pairs: [{ alleles: ['attic', 'mojave'], name: 'Skylight', evidence }],
        },
      ],
    });
    if (!extended.ok) throw new Error(JSON.stringify(extended.problem));
    const catalogue = extended.value;
    expect(looks(pair('Attic, Cellar Line', 'Mojave', catalogue))).toEqual({
      Skylight: '1/8',
      'Skylight Cellar Line': '1/8',
      Attic: '1/8',
      'Attic Cellar Line': '1/8',
      Mojave: '1/8',
      'Mojave Cellar Line': '1/8',
      Normal: '1/8',
      'Cellar Line': '1/8',
    });
    const reading = readTraits('Skylight, 66% het Cellar Line', catalogue);
    expect(writeTraits(genotypesOf(reading, 'female'), 'female', catalogue).text).toBe(
      'Skylight, 66% het Cellar Line',
    );
    expect(ballPython.loci.find(({ id }) => id === 'bel')?.alleles).toHaveLength(11);
  });

  test('keep the numbers of the base’s genotypes', () => {
    const extended = extendCatalogue(ballPython, {
      changes: [{ locus: 'bel', alleles: [allele('attic', 'Attic')] }],
    });
    const [before, after] = [ballPython, extended.ok ? extended.value : ballPython].map(
      (catalogue) => [...readTraits('Lesser/Butter', catalogue).loci.values()][0]?.female,
    );
    expect([...(after ?? [])]).toEqual([...(before ?? [])]);
  });

  test.each<[string, OwnGenes, string]>([
    ['an id twice', { loci: [own('pied', [allele('p', 'P Line')])] }, 'Two loci have this id'],
    ['a name twice', { loci: [own('a', [allele('a', 'pastel')])] }, 'Two things have this name'],
    ['an alias twice', { loci: [own('a', [allele('a', 'A', { aliases: ['YB'] })])] }, 'Two things'],
    ['a word with a meaning', { loci: [own('a', [allele('a', 'Super')])] }, 'means something else'],
    ['a number', { loci: [own('a', [allele('a', '66')])] }, 'means something else'],
    ['no letters', { loci: [own('a', [allele('a', '–!')])] }, 'cannot be read'],
    ['a name to be misread', { loci: [own('a', [allele('a', 'Stripe')])] }, 'would be misread'],
    ['an odd id', { loci: [own('A b', [allele('a', 'A')])] }, 'small letters'],
    ['no wild type', { loci: [{ ...own('a', []), alleles: [allele('a', 'A')] }] }, 'wild type'],
    ['no mutation', { loci: [own('a', [])] }, 'besides the wild type'],
    [
      'a pair of strangers',
      { loci: [own('a', [allele('a', 'A')], { pairs: [{ alleles: ['a', 'b'], evidence }] })] },
      'the locus has not',
    ],
    [
      'a share beyond one',
      {
        loci: [
          own('a', [allele('a', 'A')], {
            pairs: [
              { alleles: ['a', 'a'], evidence, survival: { share: fraction(3, 2), evidence } },
            ],
          }),
        ],
      },
      'between 0 and 1',
    ],
    [
      'a second sex-linked locus',
      {
        loci: [
          own('a', [allele('a', 'A')], {
            linkage: { kind: 'sex-linked', recombination: HALF, evidence },
          }),
        ],
      },
      'second sex-linked',
    ],
    [
      'a rate over a half',
      { changes: [{ locus: 'banana', recombination: fraction(3, 4) }] },
      '1/2',
    ],
    [
      'a rate elsewhere',
      { changes: [{ locus: 'pied', recombination: HALF }] },
      'Only a sex-linked',
    ],
    ['no such locus', { changes: [{ locus: 'nowhere' }] }, 'no such locus'],
    [
      'a caution about nothing known',
      {
        cautions: [
          {
            id: 'mine',
            concerns: 'young',
            wants: [{ locus: 'pied', carries: 'nobody' }],
            weight: 'serious',
            message: 'Careful.',
            evidence,
          },
        ],
      },
      'a gene there is not',
    ],
  ])('are refused with %s', (_, genes, message) => {
    expect(faults(genes).join('\n')).toContain(message);
  });
});
