import type { AnimalId, IncubatorId } from '../core/ids.ts';
import { clutchesIn } from '../clutch/clutches-in.ts';
import type { Picture } from '../picture/picture.ts';
import { animalParts, type AnimalPart } from './animal-part.ts';
import { add, NO_OFFERS, noMonths, type Offers } from './appetite.ts';
import { broodOf, type Brood } from './broods.ts';
import type { Cycle } from './cycles.ts';
import type { Counted } from './tally.ts';

/** All seasons of a collection, as far as a look back counts them. */
export interface SeasonsPast {
  /** The newest first. */
  readonly seasons: readonly string[];
  /** Cycles that are over. */
  readonly cycles: readonly Cycle[];
  readonly underWay: readonly Cycle[];
  readonly broods: readonly Brood[];
  readonly parts: ReadonlyMap<AnimalId, AnimalPart>;
}

export function seasonsPast(picture: Picture): SeasonsPast {
  const parts = animalParts(picture);
  const cycles = [...parts.values()].flatMap((part) => part.cycles);
  const byClutch = new Map(
    cycles.flatMap((cycle) => (cycle.clutch ? [[cycle.clutch, cycle]] : [])),
  );
  const broods = clutchesIn(picture).flatMap(
    (clutch) => broodOf(clutch, byClutch.get(clutch.id), parts, picture) ?? [],
  );
  const isUnderWay = (cycle: Cycle): boolean => {
    const animal = picture.animal(cycle.female);
    const now = animal && picture.standing(animal)?.now;
    return !cycle.laid && now?.season.openedAt === cycle.openedAt;
  };
  const underWay = new Set(cycles.filter(isUnderWay));
  const fed = [...parts.values()].flatMap(({ appetite }) => [...appetite.keys()]);
  const names = [...cycles, ...broods].map(({ season }) => season);
  return {
    seasons: [...new Set([...names, ...fed])].toSorted().toReversed(),
    cycles: cycles.filter((cycle) => !underWay.has(cycle)),
    underWay: [...underWay],
    broods,
    parts,
  };
}

/** Undefined: all seasons. */
export type SeasonChoice = string | undefined;

const isIn =
  (season: SeasonChoice) =>
  (each: { readonly season: string }): boolean =>
    season === undefined || each.season === season;

/** By month, January first. */
export function monthsIn(parts: Iterable<AnimalPart>, season: SeasonChoice): readonly Offers[] {
  const months = noMonths();
  for (const { appetite } of parts) {
    const chosen = season === undefined ? appetite.values() : [appetite.get(season) ?? []];
    for (const each of chosen) {
      for (const [n, offers] of each.entries()) {
        if (offers.answered > 0) months[n] = add(months[n] ?? NO_OFFERS, offers);
      }
    }
  }
  return months;
}

const offersIn = (parts: Iterable<AnimalPart>, season: SeasonChoice): Offers =>
  monthsIn(parts, season).reduce(add);

/** What was counted in a season. */
export const countedIn = (past: SeasonsPast, season: SeasonChoice): Counted => ({
  cycles: past.cycles.filter(isIn(season)),
  broods: past.broods.filter(isIn(season)),
  offers: offersIn(past.parts.values(), season),
});

/** The same of one animal or incubator each; whoever has nothing to count is not among them. */
export type CountedBy<Id> = ReadonlyMap<Id, Counted>;

interface Sorted<Id> {
  readonly cycles: readonly (readonly [Id, Cycle])[];
  readonly broods: readonly (readonly [Id | undefined, Brood])[];
}

function sorted<Id>({ cycles, broods }: Sorted<Id>, offersOf: (id: Id) => Offers): CountedBy<Id> {
  const made = new Map<Id, { cycles: Cycle[]; broods: Brood[]; offers: Offers }>();
  const of = (id: Id) => {
    const known = made.get(id) ?? { cycles: [], broods: [], offers: offersOf(id) };
    made.set(id, known);
    return known;
  };
  for (const [id, cycle] of cycles) of(id).cycles.push(cycle);
  for (const [id, brood] of broods) if (id !== undefined) of(id).broods.push(brood);
  return made;
}

const offersOf = (past: SeasonsPast, season: SeasonChoice) => (id: AnimalId) => {
  const part = past.parts.get(id);
  return part ? offersIn([part], season) : NO_OFFERS;
};

/** Females that had a male with them, or laid. */
export const byFemale = (all: Counted, past: SeasonsPast, season: SeasonChoice) =>
  sorted<AnimalId>(
    {
      cycles: all.cycles.flatMap((cycle) =>
        cycle.paired || cycle.laid ? [[cycle.female, cycle] as const] : [],
      ),
      broods: all.broods.map((brood) => [brood.dam, brood] as const),
    },
    offersOf(past, season),
  );

/** Of a male: females he visited, his own visits alone, and eggs of which only he can be the father. */
export const byMale = (all: Counted, past: SeasonsPast, season: SeasonChoice) =>
  sorted<AnimalId>(
    {
      cycles: all.cycles.flatMap((cycle) =>
        [...new Set(cycle.visits.map(({ male }) => male))].map((male) => {
          const visits = cycle.visits.filter((visit) => visit.male === male);
          return [male, { ...cycle, visits }] as const;
        }),
      ),
      broods: all.broods.map((brood) => [brood.father, brood] as const),
    },
    offersOf(past, season),
  );

export const byIncubator = ({ broods }: Counted) =>
  sorted<IncubatorId>(
    { cycles: [], broods: broods.map((brood) => [brood.incubator, brood] as const) },
    () => NO_OFFERS,
  );
