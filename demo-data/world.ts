import type { LabelCode } from '../src/domain/core/code.ts';
import type { AnimalId, ClutchId, EventId, RackId, TubId } from '../src/domain/core/ids.ts';
import type { Casting } from './cast.ts';
import type { Genes } from './heredity.ts';
import type { Logbook } from './logbook.ts';
import type { Nights } from './nights.ts';
import type { Chance } from './random.ts';

export interface Rack {
  readonly id: RackId;
  readonly name: string;
  readonly rows: number;
  readonly columns: number;
  readonly walk: 'rows' | 'serpentine';
  /** Its turn on the round. */
  readonly turn: number;
}

export interface Tub {
  readonly id: TubId;
  readonly code: LabelCode;
  readonly rack: Rack;
  readonly row: number;
  readonly column: number;
  /** What is copied onto records made at it, `B4-2`. */
  readonly place: string;
  /** Its turn on the keeper's walk through the rooms. */
  readonly turn: number;
}

/** A male in a female's tub. */
export interface Visit {
  readonly male: Snake;
  readonly female: Snake;
  readonly since: number;
  /** The night he is to come out. */
  readonly until: number;
  /** Seen locked on the first looks, as about half of introductions are. */
  readonly locks: boolean;
}

/** A meal left overnight, and what the morning will show. */
export interface LeftMeal {
  readonly offer: EventId;
  /** The whole meal, in grams. */
  readonly preyG: number;
  readonly turnsOut: 'ate' | 'refused' | 'partly';
}

/** What a female's body will do between two Septembers. Unit: night numbers, millimetres. */
export interface Season {
  readonly start: number;
  /** The keeper means to pair her. */
  readonly paired: boolean;
  readonly restingMm: number;
  readonly growsFrom: number;
  readonly mmPerNight: number;
  readonly peakMm: number;
  /** Never: Infinity. */
  readonly ovulatesOn: number;
  readonly laysOn: number;
}

/** An animal as it really is, of which the records tell only a part. All nights are numbers. */
export interface Snake {
  readonly id: AnimalId;
  readonly casting: Casting;
  readonly arrivedOn: number;
  /** Share of its mass lost each day without food. */
  readonly dailyLoss: number;
  tub: Tub;
  massG: number;
  sexKnown: boolean;
  away: boolean;
  mealOn: number;
  nextMealOn: number;
  offers: number;
  left: LeftMeal | undefined;
  bringsUpOn: number;
  lastGainG: number;
  halfMeal: boolean;
  faecesOn: number;
  opaque: boolean;
  nextOpaqueOn: number;
  shedOn: number;
  weighOn: number;
  fullCleanOn: number;
  visit: Visit | undefined;
  /** A male's rest after a visit; a female's time until the next one. */
  restsUntil: number;
  season: Season | undefined;
  scanOn: number;
}

export interface Parents {
  readonly dam: Snake;
  readonly sires: readonly Snake[];
}

export interface Newborn {
  readonly parents: Parents;
  readonly genes: Genes;
  readonly traits: string;
}

/** Who had which young, and what each animal really carries, of which the records tell a part. */
export interface Nursery {
  /** A male was put in with her. */
  met(female: Snake, male: Snake, night: number): void;
  /** Whether this is the first time the two meet since a night. */
  isNews(female: Snake, male: Snake, since: number): boolean;
  laid(dam: Snake, id: ClutchId, goodEggs: number, night: number): void;
  /** Whose young a newcomer from the incubator is, and what it is called after them. */
  born(casting: Casting, world: World): Newborn | undefined;
  /** Remembers what a newcomer carries, once it has its id. */
  named(id: AnimalId, born: Newborn): void;
  genesOf(snake: Snake): Genes;
  /** The young that get no name of their own are counted when all have shed. */
  count(world: World): void;
}

/** Everything the evening round can reach. */
export interface World {
  readonly book: Logbook;
  readonly chance: Chance;
  readonly nights: Nights;
  readonly nursery: Nursery;
  readonly night: number;
  readonly month: number;
  /** Nights until the last one. */
  readonly toGo: number;
  /** Who is in the rooms, in the order of the walk. */
  readonly snakes: readonly Snake[];
}

export const ageNights = (snake: Snake, night: number): number => night - snake.casting.hatchedOn;
