import type { Day } from '../core/calendar.ts';
import type { LabelCode } from '../core/code.ts';
import type { AnimalId, RackId, TubId } from '../core/ids.ts';
import type { Picture } from '../picture/picture.ts';
import { acts, type Act, type Task } from '../rules/rule.ts';
import type { Animal } from '../state/animal.ts';
import { choreOf, type Chore } from './chore.ts';
import { roomAlarms, type RoomAlarm } from './room-alarms.ts';

/** All that is asked at one tub, in one line of the list. */
export interface Stop {
  readonly tub?: TubId | undefined;
  readonly code?: LabelCode | undefined;
  readonly position: string;
  readonly rack?: RackId | undefined;
  readonly rackName: string;
  readonly animal: AnimalId;
  readonly name: string;
  readonly sex: Animal['sex'];
  readonly chores: readonly Chore[];
}

export interface TonightView {
  readonly night: Day;
  /** The hour of the next day at which the night is over. */
  readonly rolloverHour: number;
  /** What is wrong with a room; with the animals’ alarms at most five. */
  readonly rooms: readonly RoomAlarm[];
  /** Out of rack order. */
  readonly alarms: readonly Chore[];
  /** In the keeper's walking order; those standing nowhere last. */
  readonly stops: readonly Stop[];
  /** Stops with nothing but blocked chores: not to be done tonight, and why. */
  readonly waiting: readonly Stop[];
  readonly counts: Readonly<Record<Act, number>>;
  readonly animals: number;
}

const MOST_ALARMS = 5;

export function tonightView(picture: Picture): TonightView {
  const { facts } = picture;
  const rooms = roomAlarms(picture).slice(0, MOST_ALARMS);
  const animals = picture.animals();
  const asked = animals.flatMap((animal) => picture.tasks(animal.id));
  const alarms = asked
    .filter(({ alarm }) => alarm)
    .slice(0, MOST_ALARMS - rooms.length)
    .map(choreOf);

  const counts = Object.fromEntries(acts.map((act) => [act, 0])) as Record<Act, number>;
  const stops: Stop[] = [];
  const waiting: Stop[] = [];
  for (const animal of inWalkingOrder(animals, picture)) {
    const chores = picture.tasks(animal.id).filter(({ alarm }) => !alarm);
    if (chores.length === 0) continue;
    const open = chores.filter(({ blocked }) => blocked === undefined);
    for (const { act } of open) counts[act] += 1;
    const stop = stopOf(animal, chores, picture);
    if (open.length > 0) stops.push(stop);
    else waiting.push(stop);
  }
  return {
    night: facts.night,
    rolloverHour: facts.protocol.rolloverHour,
    rooms,
    alarms,
    stops,
    waiting,
    counts,
    animals: animals.filter(({ gone }) => !gone).length,
  };
}

function stopOf(animal: Animal, chores: readonly Task[], picture: Picture): Stop {
  const tubId = picture.whereIs(animal);
  const tub = tubId === undefined ? undefined : picture.tub(tubId);
  const rack = tub?.rack === undefined ? undefined : picture.rack(tub.rack);
  return {
    tub: tubId,
    code: tub?.code,
    position: picture.position(tubId) ?? '–',
    rack: rack?.id,
    rackName: rack?.name ?? 'No tub',
    animal: animal.id,
    name: animal.name,
    sex: animal.sex,
    chores: chores.map(choreOf),
  };
}

/** Animals along the keeper's walk past the tubs they are in now. */
export function inWalkingOrder(animals: readonly Animal[], picture: Picture): readonly Animal[] {
  const place = new Map(picture.walk().map((tub, index) => [tub.id, index]));
  const placeOf = (animal: Animal): number => {
    const tub = picture.whereIs(animal);
    return (tub === undefined ? undefined : place.get(tub)) ?? Number.MAX_SAFE_INTEGER;
  };
  return animals
    .map((animal) => ({ animal, at: placeOf(animal) }))
    .toSorted((a, b) => a.at - b.at || (a.animal.id < b.animal.id ? -1 : 1))
    .map(({ animal }) => animal);
}
