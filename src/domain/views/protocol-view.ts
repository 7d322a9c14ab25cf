import { HOUSE } from '../core/ids.ts';
import type { EventOf } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import { aboutValue, known, type ProtocolChanges } from '../protocol/own-protocol.ts';
import type { ProtocolValue } from '../protocol/protocol-value.ts';
import { choiceOf } from '../protocol/school-choice.ts';
import { schools, type School } from '../protocol/schools.ts';
import { valueGroups } from '../protocol/value-groups.ts';
import { valueReasons } from '../protocol/value-reasons.ts';
import { limitsOf } from '../protocol/value-limits.ts';
import { isShare, showRange, showValue, unitWords } from '../protocol/value-words.ts';
import type { ProtocolKey } from '../protocol/values.ts';
import { sources } from '../sources.ts';
import type { House, Vet } from '../state/house.ts';
import { recordLine, type RecordLine } from './record-line.ts';

/** One number of the protocol, and all that one needs to judge and change it. */
export interface ValueRow {
  readonly key: ProtocolKey;
  readonly name: string;
  readonly why: string;
  readonly source: string;
  readonly unit: ProtocolValue['unit'];
  readonly value: number;
  readonly usual: number;
  /** Of each in words, with its unit. */
  readonly words: string;
  readonly usualWords: string;
  readonly range: string;
  /** A change of the keeper's, or the name of the school it was set with. */
  readonly set?: 'own' | { readonly school: string } | undefined;
  /** What the chosen school says, where that is something else. */
  readonly school?:
    { readonly name: string; readonly value: number; readonly words: string } | undefined;
  readonly entry: ValueEntry;
}

/** How a number is typed and stepped through, as it stands on the screen. */
export interface ValueEntry {
  readonly unit: string;
  /** A share is typed as a percentage: so many times the value. */
  readonly times: number;
  readonly decimals: boolean;
  readonly least: number;
  readonly most: number;
  readonly fineness: number;
  readonly step: number;
}

export interface SchoolRow {
  readonly id: School['id'];
  readonly name: string;
  readonly says: string;
  readonly source: string;
  readonly isChosen: boolean;
  /** What choosing it would set. */
  readonly sets: ProtocolChanges;
  /** Numbers of the keeper's own that it leaves alone, and what it would have. */
  readonly keeps: readonly {
    readonly key: ProtocolKey;
    readonly name: string;
    readonly own: string;
    readonly school: string;
    readonly value: number;
  }[];
}

export interface ProtocolView {
  readonly groups: readonly { readonly title: string; readonly rows: readonly ValueRow[] }[];
  readonly schools: readonly SchoolRow[];
  /** How many numbers are not the defaults. */
  readonly changed: number;
  readonly vet?: Vet | undefined;
  /** Newest first, struck records too. */
  readonly history: readonly RecordLine[];
}

/** How many of the household's records are shown. */
const MOST_LINES = 30;

export function protocolView(picture: Picture): ProtocolView {
  const { ledger } = picture;
  const house = picture.house();
  const groups = valueGroups.map(({ title, keys }) => ({
    title,
    rows: keys.map((key) => valueRow(key, picture)),
  }));
  return {
    groups,
    schools: schools.map((school) => schoolRow(school, house)),
    changed: groups.flatMap(({ rows }) => rows).filter(({ value, usual }) => value !== usual)
      .length,
    vet: house?.vet,
    history: ledger
      .history(HOUSE)
      .toReversed()
      .slice(0, MOST_LINES)
      .map((event) => ({
        ...recordLine(
          event,
          picture,
          ledger.stands(event.id) ? undefined : (ledger.reasonStruck(event.id) ?? 'replaced'),
        ),
        ...(event.type === 'protocol-set' && { words: settingWords(event) }),
      })),
  };
}

function settingWords({ values, school }: EventOf<'protocol-set'>): string {
  const set = known(values).map(([key, value]) => {
    const { unit, value: usual } = aboutValue(key);
    const { name } = valueReasons[key];
    return `${name} ${showValue(value ?? usual, unit)}${value === null ? ', the default' : ''}`;
  });
  const all = school === undefined ? set : [`school: ${school}`, ...set];
  return all.length > 0 ? all.join('; ') : 'protocol looked at';
}

/** The school a keeper follows; before one is chosen, the one the defaults come from. */
const chosenSchool = (house: House | undefined): School | undefined =>
  schools.find(({ id }) => id === (house?.school ?? 'middle'));

function valueRow(key: ProtocolKey, picture: Picture): ValueRow {
  const about = aboutValue(key);
  const { unit, value: usual, from, to } = about;
  const { name, why, source } = valueReasons[key];
  const value = picture.facts.protocol[key];
  const house = picture.house();
  const own = house?.own[key];
  const school = chosenSchool(house);
  const theirs = school?.values[key] ?? usual;
  return {
    key,
    name,
    why,
    source: sources[source].cite,
    unit,
    value,
    usual,
    words: showValue(value, unit),
    usualWords: showValue(usual, unit),
    range: showRange(from, to, unit),
    // What cannot count, as when two phones set numbers against each other, is not in force.
    set: own?.value === value ? setBy(own.school) : undefined,
    school:
      school && theirs !== value && theirs !== usual
        ? { name: school.name, value: theirs, words: showValue(theirs, unit) }
        : undefined,
    entry: entryOf(key),
  };
}

const setBy = (school: string | undefined): ValueRow['set'] =>
  school === undefined
    ? 'own'
    : { school: schools.find(({ id }) => id === school)?.name ?? school };

function entryOf(key: ProtocolKey): ValueEntry {
  const about = aboutValue(key);
  const limits = limitsOf(about);
  const times = isShare(about.unit) ? 100 : 1;
  const typed = (value: number): number => Number((value * times).toFixed(3));
  const fineness = typed(limits.fineness);
  return {
    unit: unitWords(about.unit),
    times,
    decimals: !Number.isInteger(fineness),
    least: typed(limits.least),
    most: typed(limits.most),
    fineness,
    step: typed(limits.step),
  };
}

function schoolRow(school: School, house: House | undefined): SchoolRow {
  const { id, name, says, source } = school;
  const { sets, keeps } = choiceOf(school, house);
  return {
    id,
    name,
    says,
    source: sources[source].cite,
    isChosen: chosenSchool(house)?.id === id,
    sets,
    keeps: keeps.map(({ key, own, school: theirs }) => {
      const { unit } = aboutValue(key);
      const { name: label } = valueReasons[key];
      return {
        key,
        name: label,
        own: showValue(own, unit),
        school: showValue(theirs, unit),
        value: theirs,
      };
    }),
  };
}
