import { addDays, daysBetween, type Day } from '../core/calendar.ts';
import { feedingClass } from '../protocol/feeding-class.ts';
import type { StageFacts } from '../season/standing.ts';
import type { Animal, Weighing } from '../state/animal.ts';
import type { AlarmFacts } from './alarm.ts';
import type { Laying } from './laying.ts';
import { weightReadings, type WeightReading } from './reading.ts';

export const readingsOf = (
  animal: Animal,
  { nightOf, protocol }: StageFacts,
): readonly WeightReading[] => weightReadings(animal, nightOf, protocol);

/** Her clutches, oldest first. */
export const layingsOf = ({ pastSeasons, season }: Animal): readonly Laying[] =>
  [...pastSeasons, season].flatMap((each) => (each?.laid ? [each.laid] : []));

/** A silent season is over: a male of last winter is not held against his weight of last autumn. */
const SEASON_DAYS = 200;

/** What the newest weight is held against. */
export function alarmFacts(animal: Animal, facts: StageFacts): AlarmFacts {
  const { nightOf, night, protocol } = facts;
  const { season } = animal;
  const isYoung = feedingClass(animal, night, protocol) === 'hatchling';
  const opened =
    animal.sex === 'male' && season && !season.closed ? nightOf(season.openedAt) : undefined;
  const isOpen = opened !== undefined && daysBetween(opened, night) <= SEASON_DAYS;
  return {
    kind: isYoung ? 'hatchling' : isOpen ? 'male in season' : 'other',
    readings: readingsOf(animal, facts),
    layings: layingsOf(animal),
    sheds: animal.sheds.map(({ at }) => nightOf(at)),
    protocol,
    seasonNight: isOpen ? opened : undefined,
  };
}

/** Weights after laying, up to which a gain is what her eggs took. */
export const recoveringFrom = (animal: Animal, { nightOf, night, protocol }: StageFacts) =>
  layingsOf(animal).filter(
    ({ at }) => daysBetween(nightOf(at), night) <= 2 * protocol.recoveringDays,
  );

/** Its weights between two nights, newest last, both included. */
export const weighedBetween = (
  { weighings }: Animal,
  from: Day,
  to: Day,
  { nightOf }: StageFacts,
): readonly Weighing[] => weighings.filter(({ at }) => nightOf(at) >= from && nightOf(at) <= to);

/** Its highest weight of late, in grams; undefined where it was never weighed in that time. */
export function highestG(animal: Animal, days: number, facts: StageFacts): number | undefined {
  const from = addDays(facts.night, -days);
  const masses = weighedBetween(animal, from, facts.night, facts).map(({ massG }) => massG);
  return masses.length === 0 ? undefined : Math.max(...masses);
}
