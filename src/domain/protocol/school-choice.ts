import type { House } from '../state/house.ts';
import { aboutValue, isProtocolKey, type ProtocolChanges } from './own-protocol.ts';
import { schools, type School } from './schools.ts';
import type { ProtocolKey } from './values.ts';

/** A number of the keeper's own that a school has another one for. */
export interface KeptNumber {
  readonly key: ProtocolKey;
  readonly own: number;
  readonly school: number;
}

/** What choosing a school comes to. */
export interface SchoolChoice {
  /** What it would set; null where the default is the school's number too. */
  readonly sets: ProtocolChanges;
  /** The keeper's single changes, which it leaves as they are. */
  readonly keeps: readonly KeptNumber[];
}

/** Every value that some school has a number for. */
const disputed: readonly ProtocolKey[] = [
  ...new Set(schools.flatMap(({ values }) => Object.keys(values)).filter(isProtocolKey)),
];

/**
 * The numbers that choosing a school changes, and those it does not.
 *
 * A single change was made for a reason, so a school leaves it alone; the keeper may still take the
 * school's number instead.
 */
export function choiceOf(school: School, house: House | undefined): SchoolChoice {
  const sets: Record<string, number | null> = {};
  const keeps: KeptNumber[] = [];
  for (const key of disputed) {
    const { value: usual } = aboutValue(key);
    const wanted = school.values[key] ?? usual;
    const own = house?.own[key];
    if ((own?.value ?? usual) === wanted) continue;
    if (own && own.school === undefined) keeps.push({ key, own: own.value, school: wanted });
    else sets[key] = wanted === usual ? null : wanted;
  }
  return { sets, keeps };
}
