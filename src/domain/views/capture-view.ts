import type { Day } from '../core/calendar.ts';
import type { LabelCode } from '../core/code.ts';
import type { AnimalId, ClutchId, EventId, IncubatorId, RoomId, TubId } from '../core/ids.ts';
import type { Prey } from '../events/feeding.ts';
import type { Picture } from '../picture/picture.ts';
import { showMeal, showPrey } from '../protocol/planned-meal.ts';
import { feedingBlock } from '../rules/feeding-block.ts';
import { mealOf } from '../rules/feeding-due.ts';
import type { Animal } from '../state/animal.ts';
import type { Tub } from '../state/place.ts';
import { choreOf, type Chore } from './chore.ts';
import { recordLine, type RecordLine } from './record-line.ts';
import { seasonStart, type SeasonStart } from './season-start.ts';

/** One snake at the tub, and what its buttons will write. */
export interface Occupant {
  readonly id: AnimalId;
  readonly name: string;
  readonly sex: Animal['sex'];
  readonly traits?: string | undefined;
  readonly massG?: number | undefined;
  readonly massNight?: Day | undefined;
  readonly quarantine: boolean;
  readonly gone?: string | undefined;
  readonly inBlue: boolean;
  readonly meal: Prey;
  /** "1 small rat, 65 g" */
  readonly mealWords: string;
  /** "1 small rat" */
  readonly mealShort: string;
  readonly feedingBlock?: string | undefined;
  /** A meal left in the tub, not yet settled. */
  readonly left?: { readonly offer: EventId; readonly words: string } | undefined;
  /** Where it stands in its season; undefined where its sex is not known. */
  readonly season?: SeasonStart | undefined;
  readonly chores: readonly Chore[];
  readonly recent: readonly RecordLine[];
}

export interface CaptureView {
  readonly tub?: TubId | undefined;
  readonly code?: LabelCode | undefined;
  readonly position?: string | undefined;
  readonly room?: string | undefined;
  readonly night: Day;
  /** Whoever is in the tub now: its owner first, then a visitor. Empty: nobody. */
  readonly occupants: readonly Occupant[];
  /** The owner, where he is away on a visit. */
  readonly away?:
    | {
        readonly id: AnimalId;
        readonly name: string;
        readonly with: string;
        readonly position: string;
      }
    | undefined;
  /** A pair that is together in this tub. */
  readonly pair?:
    { readonly male: AnimalId; readonly female: AnimalId; readonly since: Day } | undefined;
  /** The next tub along the walk where something is to be done. */
  readonly next?: NextStop | undefined;
}

export interface NextStop {
  readonly tub: TubId;
  readonly position: string;
  readonly asks: string;
}

/** What a scanned or typed label leads to. */
export type Found =
  | { readonly kind: 'capture'; readonly view: CaptureView }
  | { readonly kind: 'room'; readonly room: RoomId }
  | { readonly kind: 'clutch'; readonly clutch: ClutchId }
  | { readonly kind: 'incubator'; readonly incubator: IncubatorId }
  | { readonly kind: 'unknown'; readonly code: LabelCode }
  | { readonly kind: 'unassigned'; readonly code: LabelCode };

const FEW = 4;

export function findByCode(code: LabelCode, picture: Picture): Found {
  const label = picture.label(code);
  if (!label) return { kind: 'unknown', code };
  if (!label.to) return { kind: 'unassigned', code };
  if (label.to.kind === 'tub') {
    return { kind: 'capture', view: captureTub(label.to.tub, picture) };
  }
  if (label.to.kind !== 'animal') return label.to;
  const view = captureAnimal(label.to.animal, picture);
  return view ? { kind: 'capture', view } : { kind: 'unknown', code };
}

export function captureTub(id: TubId, picture: Picture): CaptureView {
  const tub = picture.tub(id);
  const present = picture.inTub(id);
  return capture(tub, present, picture);
}

/** The screen of one snake, wherever it is; the rest of its tub comes with it. */
export function captureAnimal(id: AnimalId, picture: Picture): CaptureView | undefined {
  const animal = picture.animal(id);
  if (!animal) return undefined;
  const tubId = picture.whereIs(animal);
  const tub = tubId === undefined ? undefined : picture.tub(tubId);
  const others = tubId === undefined ? [] : picture.inTub(tubId).filter((each) => each.id !== id);
  return capture(tub, [animal, ...others], picture);
}

function capture(tub: Tub | undefined, present: readonly Animal[], picture: Picture): CaptureView {
  const rack = tub?.rack === undefined ? undefined : picture.rack(tub.rack);
  const room = rack?.room === undefined ? undefined : picture.room(rack.room);
  const awayAnimal =
    tub &&
    picture.ownersOf(tub.id).find(({ visit }) => visit !== undefined && visit.tub !== tub.id);
  return {
    tub: tub?.id,
    code: tub?.code,
    position: picture.position(tub?.id),
    room: room?.name,
    night: picture.facts.night,
    occupants: present.map((animal) => occupant(animal, picture)),
    away: awayAnimal?.visit && {
      id: awayAnimal.id,
      name: awayAnimal.name,
      with: picture.facts.nameOf(awayAnimal.visit.with),
      position: picture.position(awayAnimal.visit.tub) ?? 'another tub',
    },
    pair: pairIn(present, picture),
    next: tub && nextStop(tub.id, picture),
  };
}

function pairIn(present: readonly Animal[], picture: Picture): CaptureView['pair'] {
  const male = present.find(({ visit }) => visit && present.some(({ id }) => id === visit.with));
  return (
    male?.visit && {
      male: male.id,
      female: male.visit.with,
      since: picture.facts.nightOf(male.visit.since),
    }
  );
}

function occupant(animal: Animal, picture: Picture): Occupant {
  const { facts } = picture;
  const weighing = animal.weighings.at(-1);
  const tasks = picture.tasks(animal.id);
  const meal = mealOf(animal, facts);
  const left = animal.offers.findLast(({ outcome }) => outcome === 'left');
  return {
    id: animal.id,
    name: animal.name || 'Unnamed',
    sex: animal.sex,
    traits: animal.traits,
    massG: weighing?.massG,
    massNight: weighing && facts.nightOf(weighing.at),
    quarantine: animal.quarantine !== undefined,
    gone: animal.gone?.how,
    inBlue: animal.opaqueAt !== undefined,
    meal,
    mealWords: showMeal(meal),
    mealShort: showPrey(meal),
    feedingBlock: feedingBlock(animal, facts),
    left: left && { offer: left.id, words: showPrey(left.prey) },
    season: seasonStart(animal, picture),
    chores: tasks.map(choreOf),
    recent: animal.recent
      .slice(-FEW)
      .toReversed()
      .map((event) => recordLine(event, picture)),
  };
}

/** The next tub in walking order, after this one, with something open tonight. */
export function nextStop(after: TubId, picture: Picture): NextStop | undefined {
  const walk = picture.walk();
  const here = walk.findIndex(({ id }) => id === after);
  const ahead = here < 0 ? walk : [...walk.slice(here + 1), ...walk.slice(0, here)];
  for (const tub of ahead) {
    const open = picture
      .inTub(tub.id)
      .flatMap(({ id }) => picture.tasks(id))
      .find(({ blocked, alarm }) => blocked === undefined && !alarm);
    if (open) {
      return { tub: tub.id, position: picture.position(tub.id) ?? '', asks: open.asks };
    }
  }
  return undefined;
}
