import type { Day } from '../core/calendar.ts';
import type { AnimalId } from '../core/ids.ts';
import type { GenesBook } from '../genes-book/genes-book.ts';
import { lookId } from '../genes-book/evidence-at.ts';
import { isOnRecord } from '../genes-book/family.ts';
import { locusOf } from '../genes/catalogue.ts';
import type { Trouble } from '../genes/pedigree/trouble.ts';
import type { Picture } from '../picture/picture.ts';
import { namedKin, type NamedKin } from './lineage-view.ts';
import { eventWords } from './words.ts';

/** One thing that was seen, in words, with the snake on whose page the record is. */
export interface FindingLine {
  readonly says: string;
  readonly of: NamedKin;
  /** When it was seen; undefined for what is stated of a snake. */
  readonly night: Day | undefined;
}

/** Why chances at a locus are not told. */
export interface TroubleLine {
  readonly gene: string;
  readonly says: string;
  readonly records: readonly FindingLine[];
}

/** Undefined for one that no record stands behind. */
export function findingLine(
  id: string,
  book: GenesBook,
  picture: Picture,
): FindingLine | undefined {
  for (const member of book.family.pedigree.members) {
    if (lookId(member.id) === id && isOnRecord(book.family, member.id)) {
      const traits = picture.animal(member.id)?.traits ?? 'not said';
      return {
        says: `looks as stated: ${traits}`,
        of: namedKin(member.id, picture),
        night: undefined,
      };
    }
  }
  for (const animal of picture.animals()) {
    const records = [...(animal.geneTests ?? []), ...(animal.youngCounted ?? [])];
    const record = records.find((each) => each.id === id);
    if (!record) continue;
    const night = picture.facts.nightOf(record.at);
    const by =
      record.type === 'young-counted'
        ? ` with ${record.sires.map(({ male }) => (male === 'unknown' ? 'a male not known' : picture.facts.nameOf(male))).join(' or ')}`
        : '';
    const says = `${eventWords(record, picture.facts.nameOf)}${by}`;
    return { says, of: namedKin(animal.id, picture), night };
  }
  return undefined;
}

export function troubleLine(
  trouble: Trouble,
  locus: string,
  book: GenesBook,
  picture: Picture,
): TroubleLine {
  const gene = locusOf(book.catalogue, locus).name;
  if (trouble.kind === 'too-large') {
    const says = `At ${gene} ${trouble.animals.length} snakes are so interwoven that it would take too long: not reckoned.`;
    return { gene, says, records: [] };
  }
  const seen = trouble.findings.flatMap((id) => findingLine(id, book, picture) ?? []);
  const stated = trouble.priors
    .filter((id): id is AnimalId => isOnRecord(book.family, id))
    .map((id) => ({ says: statedWords(id, picture), of: namedKin(id, picture), night: undefined }));
  return {
    gene,
    says: `At ${gene} these cannot all be so. Until one is put right, nothing is said of it here.`,
    records: [...seen, ...stated],
  };
}

const statedWords = (id: AnimalId, picture: Picture): string => {
  const traits = picture.animal(id)?.traits;
  return traits === undefined ? 'nothing stated: taken for a normal' : `stated: ${traits}`;
};
