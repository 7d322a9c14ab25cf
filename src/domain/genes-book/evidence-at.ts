import type { EventOf } from '../events/event.ts';
import type { Locus } from '../genes/locus.ts';
import { genotypeOf, WILD } from '../genes/genotype.ts';
import { testLikelihood, type Evidence, type Finding } from '../genes/pedigree/evidence.ts';
import type { ByGenotype } from '../genes/pedigree/states.ts';
import type { TraitReading } from '../genes/read-traits.ts';
import type { Entry } from './entry.ts';
import type { Family } from './family.ts';
import {
  anything,
  carrying,
  lookLikelihood,
  nothingSaid,
  ofSex,
  openTo,
  saysNothing,
  statedPrior,
} from './likelihood.ts';

/** A laboratory that does not say how often it errs. An assumption, no source. */
export const ASSUMED_TEST = { sensitivity: 0.99, specificity: 0.99 };

export type Read = (text: string) => TraitReading;

/**
 * All that was seen or said at one locus. A founder's traits are its prior. Of an animal whose parents
 * are known its look is evidence, and a "66 % het" is not: that comes from the parents. Of one with a
 * single parent known the whole statement is.
 */
export function evidenceAt(
  locus: Locus,
  entries: readonly Entry[],
  family: Family,
  read: Read,
): Evidence {
  const about = allelesAbout(locus, entries, family, read);
  const priors = new Map<string, ByGenotype>();
  const findings: Finding[] = [];
  const isFounder = (id: string): boolean => {
    const index = family.pedigree.indexOf.get(id);
    return index === undefined || family.pedigree.members[index]?.clutch === undefined;
  };
  const known = new Map(entries.map((entry) => [entry.id as string, entry]));
  for (const { id } of family.pedigree.members) {
    if (!isFounder(id)) continue;
    const { traits } = known.get(id) ?? {};
    const prior =
      traits === undefined ? nothingSaid(locus, about) : statedPrior(read(traits), locus);
    if (prior) priors.set(id, prior);
  }
  for (const { id, traits, geneTests = [] } of entries) {
    if (traits !== undefined && !isFounder(id)) {
      const reading = read(traits);
      const likelihood = family.ownBred.has(id)
        ? lookLikelihood(reading, locus)
        : openTo(reading, locus);
      if (likelihood && !saysNothing(likelihood)) {
        findings.push({ kind: 'look', id: lookId(id), animal: id, likelihood });
      }
    }
    for (const test of geneTests) {
      const finds = test.locus === locus.id ? carrying(locus, test.allele) : undefined;
      if (!finds) continue;
      const { sensitivity, specificity } = { ...ASSUMED_TEST, ...toldOf(test) };
      const likelihood = testLikelihood(test.result, finds, { sensitivity, specificity });
      findings.push({ kind: 'test', id: test.id, animal: id, likelihood });
    }
  }
  const isInPedigree = new Set(family.pedigree.clutches.map(({ id }) => id));
  for (const count of family.counted) {
    if (!isInPedigree.has(count.clutch)) continue;
    const young = youngAt(locus, count, read);
    if (young.length > 0)
      findings.push({ kind: 'young', id: count.id, clutch: count.clutch, young });
  }
  return { priors, findings };
}

export const lookId = (animal: string): string => `look of ${animal}`;

const toldOf = ({ sensitivity, specificity }: EventOf<'gene-tested'>) => ({
  ...(sensitivity === undefined ? {} : { sensitivity }),
  ...(specificity === undefined ? {} : { specificity }),
});

function youngAt(locus: Locus, { counts }: EventOf<'young-counted'>, read: Read) {
  return counts.flatMap(({ looks, sex = 'unknown', count }) => {
    const likelihood = lookLikelihood(read(looks), locus) ?? anything(locus);
    const seen = sex === 'unknown' ? likelihood : ofSex(likelihood, sex);
    return count === 0 || saysNothing(seen) ? [] : [{ count, likelihood: seen }];
  });
}

/** The alleles that anything on record speaks of. */
function allelesAbout(
  locus: Locus,
  entries: readonly Entry[],
  { counted }: Family,
  read: Read,
): ReadonlySet<number> {
  const texts = [
    ...entries.flatMap(({ traits }) => traits ?? []),
    ...counted.flatMap(({ counts }) => counts.map(({ looks }) => looks)),
  ];
  const tested = entries.flatMap(({ geneTests = [] }) =>
    geneTests.filter((test) => test.locus === locus.id).map(({ allele }) => allele),
  );
  const found = [...new Set(texts)].flatMap((text) => {
    const chances = read(text).loci.get(locus.id);
    if (!chances) return [];
    return (['female', 'male'] as const).flatMap((sex) =>
      [...chances[sex].keys()].flatMap((genotype) => genotypeOf(locus, sex, genotype)),
    );
  });
  const named = tested.map((id) => locus.alleles.findIndex((allele) => allele.id === id));
  return new Set([...found, ...named].filter((allele) => allele > WILD));
}
