import type { AnimalId, IncubatorId } from '../core/ids.ts';
import { clutchesIn } from '../clutch/pip-outlook.ts';
import type { Picture } from '../picture/picture.ts';
import { animalParts, type AnimalPart } from './animal-part.ts';
import { add, type Offers } from './appetite.ts';
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
  const byClutch = new Map(cycles.flatMap((cycle) => (cycle.clutch ? [[cycle.clutch, cycle]] : [])));
  const broods = clutchesIn(picture).flatMap(
    (clutch) => broodOf(clutch, byClutch.get(clutch.id), parts, picture) ?? [],
  );
  const isUnderWay = (cycle: Cycle): boolean => {
    const animal = picture.animal(cycle.female);
    const now = animal && picture.standing(animal)?.now;
    return !cycle.laid && now?.season.openedAt === cycle.openedAt;
  };
  const underWay = new Set(cycles.filter(isUnderWay));
  const fed = [...parts.values()].flatMap(({ appetite }) => [...appetite.bySeason.keys()]);
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

export function offersIn(appetite: AnimalPart['appetite'], season: SeasonChoice): Offers {
  const all = season === undefined ? [...appetite.bySeason.values()] : [appetite.bySeason.get(season)];
  return all.reduce<Offers>((sum, each) => (each ? add(sum, each) : sum), NONE);
}
const NONE: Offers = { answered: 0, refused: 0 };

/** What was counted in a season. */
export const countedIn = (past: SeasonsPast, season: SeasonChoice): Counted => ({
  cycles: past.cycles.filter(isIn(season)),
  broods: past.broods.filter(isIn(season)),
  offers: [...past.parts.values()].reduce<Offers>(
    (sum, { appetite }) => add(sum, offersIn(appetite, season)),
    NONE,
  ),
});

/** The same of one female. */
export const ofFemale = (all: Counted, id: AnimalId, offers: Offers): Counted => ({
  cycles: all.cycles.filter(({ female }) => female === id),
  broods: all.broods.filter(({ dam }) => dam === id),
  offers,
});

/** Of one male: females he visited, his own visits alone, and eggs of which only he can be the father. */
export const ofMale = (all: Counted, id: AnimalId, offers: Offers): Counted => ({
  cycles: all.cycles.flatMap((cycle) => {
    const visits = cycle.visits.filter(({ male }) => male === id);
    return visits.length > 0 ? [{ ...cycle, visits }] : [];
  }),
  broods: all.broods.filter(({ father }) => father === id),
  offers,
});

export const ofIncubator = (all: Counted, id: IncubatorId): Counted => ({
  cycles: [],
  broods: all.broods.filter(({ incubator }) => incubator === id),
  offers: NONE,
});
