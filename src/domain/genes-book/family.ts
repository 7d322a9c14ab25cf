import { daysBetween } from '../core/calendar.ts';
import type { AnimalId } from '../core/ids.ts';
import type { EventOf } from '../events/event.ts';
import {
  readPedigree,
  type Pedigree,
  type PedigreeAnimal,
  type PedigreeClutch,
  type PedigreeFault,
} from '../genes/pedigree/pedigree.ts';
import type { Entry } from './entry.ts';
import { statedFor, type StatedFathers } from './stated-fathers.ts';

/** The collection as one pedigree. */
export interface Family {
  readonly pedigree: Pedigree;
  /** What was cut to make it hold together: parents that cannot be. */
  readonly faults: readonly PedigreeFault[];
  /** Whose parents are both known, or the possible fathers. */
  readonly ownBred: ReadonlySet<string>;
  /** Stand-ins for parents nobody stated. */
  readonly nobody: ReadonlySet<string>;
  /** Every clutch that was counted. */
  readonly counted: readonly EventOf<'young-counted'>[];
}

/** Young of one dam within this time of a count are taken for that clutch: she lays once a year. */
const ONE_CLUTCH_DAYS = 150;

interface Draft {
  readonly animals: Map<string, PedigreeAnimal>;
  readonly clutches: Map<string, PedigreeClutch>;
}

/**
 * Parents as stated, clutches as counted. A parent that is not stated, or a male of whom nothing is
 * known, is an animal without a record. What cannot be is cut and named.
 */
export function familyOf(entries: readonly Entry[], stated: readonly StatedFathers[] = []): Family {
  const draft: Draft = { animals: new Map(), clutches: new Map() };
  const nobody = new Set<string>();
  const ownBred = new Set<string>();
  const counted = entries.flatMap(({ youngCounted = [] }) => youngCounted);
  const stand = (id: string, sex: 'female' | 'male'): string => {
    nobody.add(id);
    draft.animals.set(id, { id, sex });
    return id;
  };
  const meet = (id: string) => {
    if (!draft.animals.has(id)) draft.animals.set(id, { id });
    return id;
  };
  for (const count of counted) {
    const fathers = count.sires.map(({ male, weight = 1 }) => ({
      sire: male === 'unknown' ? stand(`no sire ${count.clutch}`, 'male') : meet(male),
      weight,
    }));
    draft.clutches.set(count.clutch, { id: count.clutch, dam: meet(count.animal), fathers });
  }
  for (const entry of entries) {
    const clutch = clutchOf(entry, counted);
    const { id, sex, dam, sires } = entry;
    const known = sex === 'unknown' ? {} : { sex };
    draft.animals.set(id, { id, ...known, ...(clutch === undefined ? {} : { clutch }) });
    if (clutch === undefined) continue;
    if (dam !== undefined && sires.length > 0) ownBred.add(id);
    if (draft.clutches.has(clutch)) continue;
    const males: readonly (AnimalId | 'unknown' | 'none')[] =
      statedFor(entry, stated)?.sires.map(({ male }) => male) ?? sires;
    draft.clutches.set(clutch, {
      id: clutch,
      dam: dam === undefined ? stand(`no dam ${clutch}`, 'female') : meet(dam),
      fathers: (males.length > 0 ? males : ['unknown' as const]).map((male) => {
        if (male === 'none') return { fatherless: true, weight: 1 };
        const sire = male === 'unknown' ? stand(`no sire ${clutch}`, 'male') : meet(male);
        return { sire, weight: 1 };
      }),
    });
  }
  // A parent met before its own record must not lose what that says: records were set last.
  for (const each of entries) meet(each.id);
  const { pedigree, faults } = mended(draft);
  for (const member of pedigree.members) if (member.clutch === undefined) ownBred.delete(member.id);
  return { pedigree, faults, ownBred, nobody, counted };
}

/**
 * The clutch it is on record to have hatched from. Else siblings of one year are taken to share a
 * clutch, so that one of several males fathered them all; where the day is not known each has a
 * clutch of its own.
 */
function clutchOf(
  { id, dam, sires, hatchedDay, hatched }: Entry,
  counted: readonly EventOf<'young-counted'>[],
): string | undefined {
  if (dam === undefined && sires.length === 0) return undefined;
  const males = [...new Set<string>(sires)].toSorted().join(' ');
  const own = counted.find(
    (count) =>
      count.animal === dam &&
      siresOf(count) === males &&
      (hatched ? hatched.clutch === count.clutch : isNear(hatchedDay, count)),
  );
  if (own) return own.clutch;
  const when = hatched?.clutch ?? hatchedDay?.slice(0, 4) ?? id;
  return `of ${dam ?? 'nobody'} by ${males} in ${when}`;
}

const isNear = (day: Entry['hatchedDay'], count: EventOf<'young-counted'>): boolean =>
  day !== undefined && Math.abs(daysBetween(day, dayOf(count))) <= ONE_CLUTCH_DAYS;

const siresOf = ({ sires }: EventOf<'young-counted'>): string =>
  [...new Set<string>(sires.map(({ male }) => male))].toSorted().join(' ');

const dayOf = ({ at }: EventOf<'young-counted'>) =>
  at.slice(0, 10) as NonNullable<Entry['hatchedDay']>;

/** Every mending takes a clutch or a father away, so it comes to an end. */
function mended({ animals, clutches }: Draft): Pick<Family, 'pedigree' | 'faults'> {
  const faults: PedigreeFault[] = [];
  for (;;) {
    const read = readPedigree([...animals.values()], [...clutches.values()]);
    if (read.ok) return { pedigree: read.value, faults };
    const { problem } = read;
    faults.push(problem);
    const [about = ''] = problem.about;
    const cut = [...clutches.values()].filter((clutch) => isAtFault(clutch, problem, animals));
    if (cut.length === 0) throw new Error(`${problem.message} ${about}`);
    for (const { id } of cut) {
      clutches.delete(id);
      for (const [animal, { clutch, ...rest }] of animals) {
        if (clutch === id) animals.set(animal, rest);
      }
    }
  }
}

function isAtFault(
  clutch: PedigreeClutch,
  { code, about }: PedigreeFault,
  animals: Draft['animals'],
): boolean {
  const [first = ''] = about;
  if (code === 'ring') return animals.get(first)?.clutch === clutch.id;
  if (code === 'dam-is-male') return clutch.dam === first;
  if (code === 'sire-is-female')
    return clutch.fathers.some((each) => 'sire' in each && each.sire === first);
  return clutch.id === first || clutch.dam === first;
}

/** The animals of a pedigree that the keeper has on record. */
export const isOnRecord = ({ nobody }: Family, id: string): id is AnimalId => !nobody.has(id);
