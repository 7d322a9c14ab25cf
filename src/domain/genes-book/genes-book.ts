import type { AnimalId } from '../core/ids.ts';
import type { Catalogue } from '../genes/catalogue.ts';
import { locusOf } from '../genes/catalogue.ts';
import { ZERO } from '../genes/fraction.ts';
import { evidenceAtHatching } from '../genes/pedigree/at-hatching.ts';
import { carrierPosteriors, type Posteriors } from '../genes/pedigree/carrier-posteriors.ts';
import type { Evidence } from '../genes/pedigree/evidence.ts';
import { jointPosterior, type Together } from '../genes/pedigree/joint-posterior.ts';
import { pedigreeModel } from '../genes/pedigree/pedigree-model.ts';
import type { ByGenotype, PedigreeModel } from '../genes/pedigree/states.ts';
import { whatMovedIt, type Moved } from '../genes/pedigree/what-moved-it.ts';
import { readTraits, type TraitReading } from '../genes/read-traits.ts';
import type { Picture } from '../picture/picture.ts';
import { isSame, type Entry } from './entry.ts';
import { evidenceAt } from './evidence-at.ts';
import { familyOf, type Family } from './family.ts';
import { catalogueWith, type LeftOut } from './own-genes.ts';
import { isSameStated, statedFathers, type StatedFathers } from './stated-fathers.ts';

/**
 * All that the collection's records say of its genes. Everything is worked out when it is first asked
 * for, one locus at a time, and kept until a record touches it.
 */
export interface GenesBook {
  readonly catalogue: Catalogue;
  /** Genes of the keeper's own that cannot be used. */
  readonly leftOut: readonly LeftOut[];
  readonly family: Family;
  /** Ids of the loci that any record speaks of; at all others every animal is wild type. */
  readonly loci: readonly string[];
  read(text: string): TraitReading;
  model(locus: string): PedigreeModel;
  evidence(locus: string): Evidence;
  posteriors(locus: string): Posteriors;
  /** Chances at a locus; undefined where the records contradict each other, or are too interwoven. */
  chances(animal: AnimalId, locus: string): ByGenotype | undefined;
  /** What it hatched with: without what its own young and tests have told since. */
  atHatching(animal: AnimalId, locus: string): ByGenotype | undefined;
  moved(animal: AnimalId, locus: string): Moved;
  together(a: AnimalId, b: AnimalId, locus: string): Together;
}

interface Kept {
  readonly entries: readonly Entry[];
  readonly stated: readonly StatedFathers[];
  readonly genes: unknown;
  readonly book: GenesBook;
}

const kept = new WeakMap<Picture['ledger'], Kept>();

/** The book of a collection: the same one for as long as no record of genes or parents is added. */
export function genesBook(picture: Picture): GenesBook {
  const entries = picture.animals();
  const genes = picture.house()?.genes;
  const stated = statedFathers(picture);
  const before = kept.get(picture.ledger);
  if (
    before &&
    before.genes === genes &&
    isSameStated(before.stated, stated) &&
    isSame(before.entries, entries)
  ) {
    return before.book;
  }
  const book = createBook(entries, genes ?? [], stated);
  kept.set(picture.ledger, { entries, stated, genes, book });
  return book;
}

/** Errors: none; what cannot be is named in `leftOut`, `family.faults` and the posteriors' troubles. */
export function createBook(
  entries: readonly Entry[],
  genes: Parameters<typeof catalogueWith>[0],
  stated: readonly StatedFathers[] = [],
): GenesBook {
  const { catalogue, leftOut } = catalogueWith(genes);
  const read = remembering((text: string) => readTraits(text, catalogue));
  const model = remembering((locus: string) => pedigreeModel(locusOf(catalogue, locus), ZERO));
  let madeFamily: Family | undefined;
  const family = (): Family => (madeFamily ??= familyOf(entries, stated));
  const evidence = remembering((locus: string) =>
    evidenceAt(locusOf(catalogue, locus), entries, family(), read),
  );
  const posteriors = remembering((locus: string) =>
    carrierPosteriors(family().pedigree, model(locus), evidence(locus)),
  );
  let spokenOf: readonly string[] | undefined;
  const hatched = remembering((key: string) => {
    const [animal = '', locus = ''] = key.split(' ');
    const { pedigree } = family();
    const then = evidenceAtHatching(pedigree, evidence(locus), animal);
    return carrierPosteriors(pedigree, model(locus), then).of.get(animal);
  });
  const moved = remembering((key: string) => {
    const [animal = '', locus = ''] = key.split(' ');
    return whatMovedIt(family().pedigree, model(locus), evidence(locus), animal);
  });
  return {
    catalogue,
    leftOut,
    get family() {
      return family();
    },
    get loci() {
      return (spokenOf ??= lociSpokenOf(entries, catalogue, read));
    },
    read,
    model,
    evidence,
    posteriors,
    chances: (animal, locus) => posteriors(locus).of.get(animal),
    atHatching: (animal, locus) => hatched(`${animal} ${locus}`),
    moved: (animal, locus) => moved(`${animal} ${locus}`),
    together: (a, b, locus) =>
      jointPosterior(family().pedigree, model(locus), evidence(locus), a, b),
  };
}

function lociSpokenOf(
  entries: readonly Entry[],
  { loci }: Catalogue,
  read: GenesBook['read'],
): readonly string[] {
  const spoken = new Set<string>();
  for (const { traits, youngCounted = [], geneTests = [] } of entries) {
    const looks = youngCounted.flatMap(({ counts }) => counts.map((count) => count.looks));
    for (const text of traits === undefined ? looks : [traits, ...looks]) {
      for (const id of read(text).loci.keys()) spoken.add(id);
    }
    for (const { locus } of geneTests) spoken.add(locus);
  }
  return loci.map(({ id }) => id).filter((id) => spoken.has(id));
}

function remembering<Asked, Answer>(work: (asked: Asked) => Answer): (asked: Asked) => Answer {
  const answers = new Map<Asked, Answer>();
  return (asked) => {
    const known = answers.get(asked);
    if (known !== undefined || answers.has(asked)) return known as Answer;
    const answer = work(asked);
    answers.set(asked, answer);
    return answer;
  };
}
