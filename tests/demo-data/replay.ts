import { daysBetween, monthOf, roomNight, type Day } from '../../src/domain/core/calendar.ts';
import type { AnimalId, TubId } from '../../src/domain/core/ids.ts';
import type { EventOf, RackEvent } from '../../src/domain/events/event.ts';

/** The records that count: neither struck out nor replaced by a later one. */
export function standing(events: readonly RackEvent[]): RackEvent[] {
  const out = new Set<string>();
  for (const event of events) {
    if (event.type === 'struck') out.add(event.target);
    if (event.replaces) out.add(event.replaces.id);
  }
  return events.filter(({ id, type }) => !out.has(id) && type !== 'struck');
}

export const nightOf = ({ at }: RackEvent): Day => roomNight(at, 12);

/** One animal as its records leave it. */
export interface Told {
  readonly arrived: EventOf<'arrived'>;
  /** As last stated. */
  sex: 'male' | 'female' | 'unknown';
  gone: boolean;
  tub: TubId | undefined;
  /** The letters of the rack it was last moved to. */
  rack: string;
  /** With what became of each, where the morning has told. */
  readonly offers: { id: string; night: Day; outcome: string }[];
  readonly weights: { night: Day; massG: number }[];
  opaqueOn: Day | undefined;
  broughtUpOn: Day | undefined;
  /** The other one, and since when. */
  visit: { readonly other: AnimalId; readonly since: Day } | undefined;
  gravid: boolean;
}

/**
 * Tells the records to a small model of the room that is not the program's, and lists what cannot
 * be: two in a tub, a male in two places, a meal for a pair, a record of one that is gone.
 */
export function replay(events: readonly RackEvent[]) {
  const animals = new Map<AnimalId, Told>();
  const wrong: string[] = [];
  const check = (holds: boolean, what: string, event: RackEvent): void => {
    if (!holds) wrong.push(`${what}: ${JSON.stringify(event)}`);
  };

  for (const event of standing(events)) {
    if (event.type === 'arrived') {
      check(!animals.has(event.animal), 'arrives twice', event);
      animals.set(event.animal, {
        arrived: event,
        sex: event.sex,
        gone: false,
        tub: undefined,
        rack: '',
        offers: [],
        weights: [],
        opaqueOn: undefined,
        broughtUpOn: undefined,
        visit: undefined,
        gravid: false,
      });
    } else if (event.type === 'introduced' || event.type === 'taken-out') {
      const [male, female] = [animals.get(event.male)!, animals.get(event.female)!];
      const enters = event.type === 'introduced';
      check(male.sex === 'male' && female.sex === 'female', 'not a pair', event);
      for (const [each, other] of [
        [male, event.female],
        [female, event.male],
      ] as const) {
        check(enters ? !each.visit : each.visit?.other === other, 'in two places', event);
        each.visit = enters ? { other, since: nightOf(event) } : undefined;
      }
      if (event.type === 'introduced') check(event.tub === female.tub, 'not her tub', event);
      if (enters) check(!male.opaqueOn && !female.opaqueOn, 'paired in blue', event);
    } else if ('animal' in event) {
      const animal = animals.get(event.animal)!;
      check(!animal.gone || event.type === 'came-back', 'gone', event);
      tell(animal, event, animals, check);
    }
  }
  return { animals, wrong };
}

function tell(
  animal: Told,
  event: RackEvent,
  animals: ReadonlyMap<AnimalId, Told>,
  check: (holds: boolean, what: string, event: RackEvent) => void,
): void {
  const night = nightOf(event);
  switch (event.type) {
    case 'moved':
      for (const other of animals.values()) {
        check(other === animal || other.gone || other.tub !== event.tub, 'two in a tub', event);
      }
      animal.tub = event.tub;
      animal.rack = event.place?.replace(/\d.*$/, '') ?? '';
      break;
    case 'meal-offered':
      check(!animal.visit, 'fed on a visit', event);
      check(!animal.opaqueOn, 'fed in blue', event);
      check(
        !animal.broughtUpOn || daysBetween(animal.broughtUpOn, night) >= 10,
        'fed too soon after bringing up a meal',
        event,
      );
      animal.offers.push({ id: event.id, night, outcome: event.outcome });
      break;
    case 'meal-settled': {
      const offer = animal.offers.find(({ id }) => id === event.offer);
      check(offer?.outcome === 'left', 'settles a meal that was not left', event);
      if (offer) offer.outcome = event.outcome;
      break;
    }
    case 'regurgitated':
      check(animal.offers.at(-1)?.outcome !== 'refused', 'brought up nothing', event);
      animal.broughtUpOn = night;
      break;
    case 'weighed':
      animal.weights.push({ night, massG: event.massG });
      break;
    case 'opaque-seen':
      check(!animal.opaqueOn, 'in blue twice', event);
      animal.opaqueOn = night;
      break;
    case 'shed': {
      const nights = animal.opaqueOn ? daysBetween(animal.opaqueOn, night) : 0;
      // 6 to 14 nights [common practice, no source], and a night or two until it is noticed.
      check(nights >= 5 && nights <= 18, `sheds after ${nights} nights`, event);
      animal.opaqueOn = undefined;
      break;
    }
    case 'identified':
      animal.sex = event.sex ?? animal.sex;
      break;
    case 'ovulated':
      animal.gravid = true;
      break;
    case 'laid':
      check(animal.gravid, 'lays without having ovulated', event);
      animal.gravid = false;
      break;
    case 'left':
      animal.gone = true;
      break;
    case 'came-back':
      animal.gone = false;
      break;
    default:
  }
}

/** Nights from meal to meal, by mass, sex and month [common practice, no source]. */
export function rhythm({ sex, weights }: Told, night: Day): number {
  const massG = weights.at(-1)?.massG ?? 0;
  const month = monthOf(night);
  if (massG < 150) return 6;
  if (massG < 700) return 7;
  if (sex === 'male') return month >= 10 || month <= 3 ? 14 : 12;
  return month >= 8 || month <= 3 ? 8 : 14;
}
