import type { Source } from '../../sources.ts';
import { fraction, ZERO } from '../fraction.ts';
import type { Allele, Evidence, Linkage, Locus, Mode, Pair, Survival } from '../locus.ts';
import { geneSources } from './gene-sources.ts';

// Short hands for writing the catalogue down.

export const published = (...sources: readonly Source[]): Evidence => ({
  grade: 'published',
  sources,
});
export const agreed: Evidence = { grade: 'trade consensus', sources: [geneSources.trade] };
export const disputed: Evidence = { grade: 'disputed', sources: [geneSources.someSay] };

export const wildType: Allele = {
  id: '+',
  name: 'Normal',
  aliases: [],
  mode: 'recessive',
  evidence: agreed,
};

interface Extra {
  readonly aliases?: readonly string[];
  readonly evidence?: Evidence;
  readonly remark?: string;
}

const allele =
  (mode: Mode) =>
  (id: string, name: string, { aliases = [], evidence = agreed, remark }: Extra = {}): Allele => ({
    id,
    name,
    aliases,
    mode,
    evidence,
    ...(remark === undefined ? {} : { remark }),
  });

export const recessive = allele('recessive');
export const incomplete = allele('incomplete dominant');
export const dominant = allele('dominant');

export const neverSeen = (evidence: Evidence): Survival => ({ share: ZERO, evidence });

type PairExtra = Partial<Omit<Pair, 'alleles'>>;

export const pair = (
  first: string,
  second: string,
  { evidence = agreed, ...rest }: PairExtra = {},
): Pair => ({ alleles: [first, second], evidence, ...rest });

/** Two copies of the same allele. */
export const two = (id: string, extra?: PairExtra): Pair => pair(id, id, extra);

interface Details {
  readonly pairs?: readonly Pair[];
  readonly evidence?: Evidence;
  readonly gene?: string;
  readonly linkage?: Linkage;
}

export const group = (
  id: string,
  name: string,
  alleles: readonly Allele[],
  { pairs = [], evidence = agreed, gene, linkage = { kind: 'autosomal' } }: Details = {},
): Locus => ({
  id,
  name,
  linkage,
  alleles: [wildType, ...alleles],
  pairs,
  evidence,
  ...(gene === undefined ? {} : { gene }),
});

/** A locus with one mutation known, named after it. */
export const alone = (only: Allele, details: Details = {}): Locus =>
  group(only.id, only.name, [only], { evidence: only.evidence, ...details });

export const tenth = fraction(1, 10);
