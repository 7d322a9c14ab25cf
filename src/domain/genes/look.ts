import { genotypeOf, WILD } from './genotype.ts';
import { pairOf } from './inheritance.ts';
import type { Allele, Evidence, GeneSex, Locus } from './locus.ts';

/** What a genotype looks like, as the trade calls it. Genotypes that look alike share the name. */
export interface Look {
  /** Empty for what looks like wild type, carriers among them. */
  readonly name: string;
  /** In a few words, where the name does not say it. */
  readonly appearance?: string;
  readonly evidence: Evidence;
}

/** Throws a RangeError for a genotype there is not. */
export function lookOf(locus: Locus, sex: GeneSex, genotype: number): Look {
  const [a, b] = genotypeOf(locus, sex, genotype).toSorted((x, y) => x - y);
  const [first, second] = [alleleAt(locus, a ?? WILD), alleleAt(locus, b ?? WILD)];
  if (first.id === '+') return besideWild(locus, second);
  const pair = pairOf(locus, a ?? WILD, b ?? WILD);
  const shown = pair?.appearance === undefined ? {} : { appearance: pair.appearance };
  const evidence = pair?.evidence ?? weaker(first.evidence, second.evidence);
  return { name: pair?.name ?? pairName(first, second), evidence, ...shown };
}

export function alleleAt(locus: Locus, index: number): Allele {
  const allele = locus.alleles[index];
  if (!allele) throw new RangeError(`${locus.name} has no allele ${index}.`);
  return allele;
}

const besideWild = (locus: Locus, { id, name, mode, evidence }: Allele): Look =>
  id === '+' || mode === 'recessive'
    ? { name: '', evidence: id === '+' ? locus.evidence : evidence }
    : { name, evidence };

function pairName(first: Allele, second: Allele): string {
  if (first.id !== second.id) return `${first.name}/${second.name}`;
  return first.mode === 'incomplete dominant' ? `Super ${first.name}` : first.name;
}

const grades = ['published', 'trade consensus', 'disputed'];
const weaker = (a: Evidence, b: Evidence): Evidence =>
  grades.indexOf(a.grade) >= grades.indexOf(b.grade) ? a : b;
