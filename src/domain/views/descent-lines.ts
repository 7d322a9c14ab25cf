import { dateWords } from '../core/day-words.ts';
import type { AnimalId } from '../core/ids.ts';
import type { Picture } from '../picture/picture.ts';
import { clutchFathers, isSameSet, malesAmong, type Sire } from '../rotation/paternity.ts';
import type { Animal } from '../state/animal.ts';
import type { Clutch } from '../state/clutch.ts';
import { genesView, type GeneLine } from './genes-view.ts';

/** A fact of a card, with its heading. */
export type Fact = readonly [term: string, says: string];

/** Dam and possible sires, each with what it rests on. */
export function parentLines(animal: Animal, picture: Picture): readonly Fact[] {
  const clutch = animal.hatched && clutchOf(animal.hatched.clutch, picture);
  return [
    ['Dam', damWords(animal, clutch, picture)],
    ['Sire', sireWords(animal, clutch, picture)],
  ];
}

const clutchOf = (id: string, { ledger }: Picture): Clutch | undefined => {
  const found = ledger.subjects.get(id as Clutch['id']);
  return found && 'kind' in found && found.kind === 'clutch' ? found : undefined;
};

function damWords(animal: Animal, clutch: Clutch | undefined, picture: Picture): string {
  const { facts } = picture;
  if (clutch?.dam) {
    const laid = clutch.laid ? `, eggs of ${dateWords(facts.nightOf(clutch.laid.at))}` : '';
    return `${described(clutch.dam, picture)}; by records${laid}`;
  }
  return animal.dam ? `${described(animal.dam, picture)}; as stated` : 'not known';
}

const groundWords: Readonly<Record<Sire['grounds'], string>> = {
  together: 'was with her',
  locked: 'seen locked',
  'stored sperm': 'stored sperm',
  'looks of the young': 'by the looks of the young',
  'DNA test': 'DNA test',
};

/**
 * Its own fathers as stated, each with what the clutch says of him; where none is stated, those of the
 * clutch, with one that is not on record or none at all.
 */
function sireWords(animal: Animal, clutch: Clutch | undefined, picture: Picture): string {
  const carried = clutch ? clutchFathers(clutch, picture).sires : [];
  const isOwn = animal.sires.length > 0 && !isSameSet(malesAmong(carried), animal.sires);
  if (!isOwn && carried.length > 0) {
    return carried.map((sire) => fatherWords(sire, picture)).join(', or ');
  }
  if (animal.sires.length === 0) return 'not known';
  const known = new Map(carried.map((sire) => [sire.male, sire]));
  return animal.sires
    .map((male) => {
      const sire = known.get(male);
      return sire ? fatherWords(sire, picture) : `${described(male, picture)} (as stated)`;
    })
    .join(', or ');
}

function fatherWords({ male, grounds }: Sire, picture: Picture): string {
  const words = groundWords[grounds];
  if (male === 'none') return `no father (${words})`;
  return `${male === 'unknown' ? 'an unknown male' : described(male, picture)} (${words})`;
}

/** @example 'Cedar, Pastel het Clown' */
function described(id: AnimalId, picture: Picture): string {
  const traits = picture.animal(id)?.traits;
  const name = picture.facts.nameOf(id);
  return traits === undefined ? name : `${name}, ${traits}`;
}

/** What is claimed of one gene, and how sure it is. */
export interface GeneClaim {
  readonly name: string;
  /** "one copy", "66 %" */
  readonly has: string;
  readonly sure: string;
}

/** From the book of genes: what it carries or may carry by all records. */
export function geneClaims(animal: Animal, picture: Picture): readonly GeneClaim[] {
  const lines = genesView(animal.id, picture)?.lines ?? [];
  return lines.map((line) => ({
    name: line.name,
    has: line.now,
    sure: sureWords(line, animal),
  }));
}

function sureWords({ locus, allele, chance, since, before, hasMoved }: GeneLine, animal: Animal) {
  const test = animal.geneTests?.findLast((each) => each.locus === locus && each.allele === allele);
  const was = `${since} ${before}`;
  if (test) return `DNA test: ${test.result}`;
  if (chance > 0 && chance < 1) return hasMoved ? `possible; ${was}` : `possible, ${since}`;
  if (hasMoved) return `${chance === 0 ? 'ruled out' : 'proven'} by young; ${was}`;
  return since === 'as stated' ? 'as stated' : 'by its parents and its looks';
}
