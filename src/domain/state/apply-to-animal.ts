import type { RackEvent } from '../events/event.ts';
import { unknownAnimal, type Animal } from './animal.ts';

const KEPT = { offers: 24, weighings: 60, few: 8, seen: 12, recent: 8 };

/** The list with one more at its end, without those that are too old to matter. */
function keep<Each>(list: readonly Each[], each: Each, most: number): readonly Each[] {
  const all = [...list, each];
  return all.length > most ? all.slice(-most) : all;
}

type Told<Shape> = { [Key in keyof Shape]?: Exclude<Shape[Key], undefined> };

/** Leaves out the fields an event says nothing about, so that they do not erase what is known. */
const told = <Shape extends object>(fields: Shape): Told<Shape> =>
  Object.fromEntries(
    Object.entries(fields).filter(([, value]) => value !== undefined),
  ) as Told<Shape>;

/** The animal after the event. Total: any event is accepted in any order, and none can throw. */
export function applyToAnimal(
  before: Animal | undefined,
  event: RackEvent,
  id: Animal['id'],
): Animal {
  const animal = before ?? unknownAnimal(id);
  return { ...animal, ...changes(animal, event), recent: keep(animal.recent, event, KEPT.recent) };
}

function changes(animal: Animal, event: RackEvent): Partial<Animal> {
  switch (event.type) {
    case 'arrived': {
      const { name, sex, hatchedDay, traits, origin, at } = event;
      return { ...told({ name, sex, hatchedDay, traits, origin }), arrivedAt: at, gone: undefined };
    }
    case 'identified': {
      const { name, sex, sexedBy, hatchedDay, traits } = event;
      return told({ name, sex, sexedBy, hatchedDay, traits });
    }
    case 'parents-stated':
      return { dam: event.dam, sires: event.sires };
    case 'moved':
      return { tub: event.tub, visit: undefined };
    case 'quarantine-started':
      return { quarantine: { since: event.at, until: event.until } };
    case 'quarantine-ended':
      return { quarantine: undefined };
    case 'held-back':
      return { heldBack: true };
    case 'left':
      return {
        gone: { how: event.how, at: event.at },
        tub: undefined,
        visit: undefined,
        visitor: undefined,
      };
    case 'came-back':
      return { gone: undefined };
    case 'passed-over':
      return {
        passedOver: {
          ...animal.passedOver,
          [event.rule]: { at: event.at, reason: event.reason },
        },
      };
    case 'meal-offered':
    case 'meal-settled':
    case 'regurgitated':
      return feeding(animal, event);
    case 'introduced':
    case 'pair-seen':
    case 'taken-out':
      return pairing(animal, event);
    case 'follicles-scanned':
      return { scans: keep(animal.scans, event, KEPT.seen) };
    case 'sign-seen':
      return { signs: keep(animal.signs, event, KEPT.seen) };
    case 'ovulated':
      return { ovulation: event };
    default:
      return body(animal, event);
  }
}

type FeedingEvent = Extract<RackEvent, { type: 'meal-offered' | 'meal-settled' | 'regurgitated' }>;

function feeding(animal: Animal, event: FeedingEvent): Partial<Animal> {
  switch (event.type) {
    case 'meal-offered': {
      const { id, at, prey } = event;
      const outcome = animal.settledEarly[id] ?? event.outcome;
      return { offers: keep(animal.offers, { id, at, prey, outcome }, KEPT.offers) };
    }
    case 'meal-settled':
      return {
        offers: animal.offers.map((offer) =>
          offer.id === event.offer ? { ...offer, outcome: event.outcome } : offer,
        ),
        ...(animal.offers.some(({ id }) => id === event.offer)
          ? {}
          : { settledEarly: { ...animal.settledEarly, [event.offer]: event.outcome } }),
      };
    case 'regurgitated':
      return { regurgitations: keep(animal.regurgitations, event.at, KEPT.few) };
  }
}

type PairingEvent = Extract<RackEvent, { type: 'introduced' | 'pair-seen' | 'taken-out' }>;

function pairing(animal: Animal, event: PairingEvent): Partial<Animal> {
  const isMale = animal.id === event.male;
  const other = isMale ? event.female : event.male;
  const side = isMale ? 'visit' : 'visitor';
  switch (event.type) {
    case 'introduced':
      return { [side]: { with: other, tub: event.tub, since: event.at } };
    case 'taken-out':
      return animal[side]?.with === other ? { [side]: undefined } : {};
    case 'pair-seen':
      return { pairSeen: keep(animal.pairSeen, event, KEPT.seen) };
  }
}

function body(animal: Animal, event: RackEvent): Partial<Animal> {
  switch (event.type) {
    case 'weighed': {
      const { id, at, massG, doubt } = event;
      return { weighings: keep(animal.weighings, { id, at, massG, doubt }, KEPT.weighings) };
    }
    case 'opaque-seen':
      // Seen again in the same cycle, it is still in blue since the first look.
      return { opaqueAt: animal.opaqueAt ?? event.at };
    case 'shed':
      return { opaqueAt: undefined, sheds: keep(animal.sheds, event, KEPT.few) };
    case 'condition-judged':
      return { condition: { score: event.score, at: event.at } };
    case 'measured':
      return { lengthCm: event.lengthCm };
    default:
      return {}; // Kept among the recent records, and changing nothing else.
  }
}
