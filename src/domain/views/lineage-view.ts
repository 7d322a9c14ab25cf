import type { AnimalId, EventId } from '../core/ids.ts';
import type { Sex } from '../events/life.ts';
import { closeKin } from '../lineage/close-kin.ts';
import { familyTree } from '../lineage/family-tree.ts';
import { commonForebears, forebearsOf, type Forebear } from '../lineage/forebears.ts';
import { broodsOf, siblingsOf, type Shared } from '../lineage/kin-groups.ts';
import type { Slip } from '../lineage/stated-parents.ts';
import type { Picture } from '../picture/picture.ts';
import { kinWords, type KinWords } from './kin-words.ts';

export interface NamedKin {
  readonly id: AnimalId;
  readonly name: string;
  readonly sex: Sex;
  readonly isOnRecord: boolean;
}

/** One line of the lineage: an ancestor, or a gap. */
export interface LineageRow extends Pick<
  Forebear,
  'path' | 'generation' | 'role' | 'oneOf' | 'sure' | 'again' | 'isFounder'
> {
  /** Undefined: not known. */
  readonly who: NamedKin | undefined;
  /** "dam’s sire" */
  readonly relation: string;
  /** "1 of 2 possible fathers"; undefined: as stated. */
  readonly doubt: string | undefined;
  readonly hatched: string | undefined;
  readonly traits: string | undefined;
}

/** Parents as stated that cannot be so. */
export interface SlipLine {
  readonly says: string;
  /** On whose pages the statements are, with the record; undefined while the log is still being read. */
  readonly records: readonly (NamedKin & { readonly record: EventId | undefined })[];
}

export interface LineageView {
  readonly self: NamedKin;
  readonly rows: readonly LineageRow[];
  readonly kin: KinWords;
  readonly limits: string;
  readonly common: readonly NamedKin[];
  readonly slips: readonly SlipLine[];
  readonly siblings: readonly { readonly shares: Shared; readonly kin: readonly NamedKin[] }[];
  readonly broods: readonly {
    readonly others: readonly NamedKin[];
    readonly isPerhaps: boolean;
    readonly young: readonly NamedKin[];
  }[];
}

const GENERATIONS = 4;

/** Where an animal comes from and what came of it; undefined when nothing is known of it. */
export function lineageView(id: AnimalId, picture: Picture): LineageView | undefined {
  if (!picture.animal(id)) return undefined;
  const { of, slips, kin } = familyTree(picture);
  const nameOf = (each: AnimalId) => namedKin(each, picture).name;
  const named = (ids: readonly AnimalId[]) => ids.map((each) => namedKin(each, picture));
  const rows = forebearsOf(id, of, GENERATIONS).map((each) => rowOf(each, picture));
  const shown = new Set([id, ...rows.map(({ who }) => who?.id)]);
  return {
    self: namedKin(id, picture),
    rows,
    kin: kinWords(kin.inbreeding(id), 'animal', nameOf),
    limits: closeKin.source.cite,
    common: named(commonForebears(id, of)),
    slips: onePerRing(
      slips.filter(({ young, about }) => shown.has(young) || about.includes(id)),
    ).map((slip) => slipLine(slip, picture)),
    siblings: [...siblingsOf(id, of)].map(([shares, ids]) => ({ shares, kin: named(ids) })),
    broods: broodsOf(id, of).map(({ others, isPerhaps, young }) => ({
      others: named(others),
      isPerhaps,
      young: named(young),
    })),
  };
}

export function namedKin(id: AnimalId, picture: Picture): NamedKin {
  const animal = picture.animal(id);
  if (!animal) return { id, name: 'not on record', sex: 'unknown', isOnRecord: false };
  return { id, name: animal.name || 'Unnamed', sex: animal.sex, isOnRecord: true };
}

function rowOf(forebear: Forebear, picture: Picture): LineageRow {
  const { path, generation, role, id, oneOf, sure, again, isFounder } = forebear;
  const animal = id && picture.animal(id);
  return {
    path,
    generation,
    role,
    oneOf,
    sure,
    again,
    isFounder,
    who: id && namedKin(id, picture),
    relation: relationOf(path),
    doubt: doubtOf(forebear),
    hatched: animal?.hatchedDay?.slice(0, 4),
    traits: animal?.traits,
  };
}

/** @example relationOf('ds') //=> 'dam’s sire' */
const relationOf = (path: string): string =>
  (path.match(/d|s\d*/g) ?? []).map((step) => (step === 'd' ? 'dam' : 'sire')).join('’s ');

function doubtOf({ oneOf, sure }: Forebear): string | undefined {
  if (oneOf > 1) return `1 of ${oneOf} possible fathers`;
  return sure < 1 ? 'only if the one above is the father' : undefined;
}

/** A ring is told once, though each of its links is left out. */
function onePerRing(slips: readonly Slip[]): readonly Slip[] {
  const told = new Set<string>();
  return slips.filter(({ kind, about }) => {
    const ring = about.toSorted().join(' ');
    if (kind !== 'own ancestor') return true;
    return !told.has(ring) && told.add(ring);
  });
}

function slipLine({ kind, young, about }: Slip, picture: Picture): SlipLine {
  const { ledger } = picture;
  const recordOf = (id: AnimalId) =>
    ledger
      .history(id)
      .findLast((event) => event.type === 'parents-stated' && ledger.stands(event.id))?.id;
  const names = about.map((id) => namedKin(id, picture).name);
  const stated = kind === 'own ancestor' ? about : [young];
  return {
    says: slipWords(kind, namedKin(young, picture).name, names),
    records: stated.map((id) => ({ ...namedKin(id, picture), record: recordOf(id) })),
  };
}

function slipWords(kind: Slip['kind'], young: string, about: readonly string[]): string {
  const [first = ''] = about;
  const leftOut = 'That link is left out until it is corrected.';
  switch (kind) {
    case 'own ancestor': {
      const links = about.map((name, n) => `${name} is from ${about[n + 1] ?? first}`);
      return `${young} would be its own ancestor: ${links.join(', ')}. ${leftOut}`;
    }
    case 'both parents':
      return `${first} is stated as both dam and sire of ${young}. What its sex forbids is left out.`;
    case 'male dam':
      return `${first} is male, and stated as the dam of ${young}. ${leftOut}`;
    case 'female sire':
      return `${first} is female, and stated as the sire of ${young}. ${leftOut}`;
    case 'both roles':
      return `${first}, not sexed, is stated as dam of one and sire of another; here of ${young}. ${leftOut}`;
    case 'not on record':
      return `A parent of ${young} is named that is not on record. A merge may bring it.`;
  }
}
