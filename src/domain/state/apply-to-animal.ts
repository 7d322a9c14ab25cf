import type { EventOf, RackEvent } from '../events/event.ts';
import { unknownAnimal, type Animal } from './animal.ts';
import type { Copy } from './copy.ts';
import { keep } from './keep.ts';
import { applyToSeasons } from './apply-to-seasons.ts';

/** A severity of `health-noted`. */
const GRAVE = 3;

const KEPT = { offers: 16, weighings: 30, few: 6, recent: 6 };

type Told<Shape> = { [Key in keyof Shape]?: Exclude<Shape[Key], undefined> };

/** Leaves out the fields an event says nothing about, so that they do not erase what is known. */
const told = <Shape extends object>(fields: Shape): Told<Shape> =>
  Object.fromEntries(
    Object.entries(fields).filter(([, value]) => value !== undefined),
  ) as Told<Shape>;

/** The animal after the events. Total: any event is accepted in any order, and none can throw. */
export function applyToAnimal(
  before: Animal | undefined,
  events: readonly RackEvent[],
  id: Animal['id'],
): Animal {
  const animal: Copy<Animal> = before ? { ...before } : unknownAnimal(id);
  for (const event of events) change(animal, event);
  animal.recent = [...animal.recent, ...events.slice(-KEPT.recent)].slice(-KEPT.recent);
  return animal;
}

function change(animal: Copy<Animal>, event: RackEvent): void {
  switch (event.type) {
    case 'arrived': {
      const { name, sex, hatchedDay, traits, origin, at } = event;
      Object.assign(animal, told({ name, sex, hatchedDay, traits, origin }));
      animal.arrivedAt = at;
      animal.gone = undefined;
      break;
    }
    case 'identified': {
      const { name, sex, sexedBy, hatchedDay, traits } = event;
      Object.assign(animal, told({ name, sex, sexedBy, hatchedDay, traits }));
      break;
    }
    case 'parents-stated':
      animal.dam = event.dam;
      animal.sires = event.sires;
      break;
    case 'moved':
      animal.tub = event.tub;
      animal.visit = undefined;
      break;
    case 'quarantine-started':
      animal.quarantine = { since: event.at, until: event.until };
      break;
    case 'quarantine-ended':
      animal.quarantine = undefined;
      break;
    case 'held-back':
      animal.heldBack = true;
      break;
    case 'put-up-for-sale':
      animal.heldBack = false;
      break;
    case 'left':
      animal.gone = { id: event.id, how: event.how, at: event.at };
      animal.tub = undefined;
      animal.visit = undefined;
      break;
    case 'came-back':
      animal.gone = undefined;
      break;
    case 'passed-over':
      animal.passedOver = {
        ...animal.passedOver,
        [event.rule]: { id: event.id, at: event.at, reason: event.reason },
      };
      break;
    case 'health-noted': {
      const isSame = animal.graveSign?.system === event.system;
      if (event.severity >= GRAVE) animal.graveSign = event;
      else if (isSame) animal.graveSign = undefined;
      break;
    }
    case 'treated':
      animal.treated = { at: event.at, until: event.until };
      break;
    case 'hatched':
      animal.hatched = event;
      break;
    case 'eggs-felt':
      animal.eggsFelt = event;
      break;
    case 'young-counted':
    case 'gene-tested':
      learnGenes(animal, event);
      break;
    case 'feeding-excepted':
      animal.feedingExcepted = event;
      break;
    case 'meal-offered':
    case 'meal-settled':
    case 'regurgitated':
      feed(animal, event);
      break;
    case 'introduced':
    case 'taken-out':
      visit(animal, event);
      applyToSeasons(animal, event);
      break;
    case 'pair-seen':
    case 'follicles-scanned':
    case 'sign-seen':
    case 'ovulated':
    case 'nothing-yet':
    case 'nest-box-set':
    case 'laid':
    case 'season-closed':
      applyToSeasons(animal, event);
      break;
    default:
      changeBody(animal, event);
  }
}

type FeedingEvent = Extract<RackEvent, { type: 'meal-offered' | 'meal-settled' | 'regurgitated' }>;

function feed(animal: Copy<Animal>, event: FeedingEvent): void {
  switch (event.type) {
    case 'meal-offered': {
      const { id, at, prey, how } = event;
      const outcome = animal.settledEarly[id] ?? event.outcome;
      animal.offers = keep(animal.offers, { id, at, prey, outcome, how }, KEPT.offers);
      break;
    }
    case 'meal-settled': {
      const { offer: settled, outcome } = event;
      if (animal.offers.some(({ id }) => id === settled)) {
        animal.offers = animal.offers.map((offer) =>
          offer.id === settled ? { ...offer, outcome } : offer,
        );
      } else {
        animal.settledEarly = { ...animal.settledEarly, [settled]: outcome };
      }
      break;
    }
    case 'regurgitated':
      animal.regurgitations = keep(animal.regurgitations, event.at, KEPT.few);
  }
}

/** Young are kept in their dam's records alone; of two counts of a clutch the later one stands. */
function learnGenes(
  animal: Copy<Animal>,
  event: EventOf<'young-counted'> | EventOf<'gene-tested'>,
): void {
  if (event.type === 'gene-tested') animal.geneTests = [...(animal.geneTests ?? []), event];
  else if (animal.id === event.animal) {
    const others = (animal.youngCounted ?? []).filter(({ clutch }) => clutch !== event.clutch);
    animal.youngCounted = [...others, event];
  }
}

/** Where he is, is written in the male's own record alone; hers is read from it. */
function visit(animal: Copy<Animal>, event: EventOf<'introduced' | 'taken-out'>): void {
  if (animal.id !== event.male) return;
  if (event.type === 'introduced') {
    animal.visit = { id: event.id, with: event.female, tub: event.tub, since: event.at };
  } else if (animal.visit?.with === event.female) {
    animal.visit = undefined;
  }
}

function changeBody(animal: Copy<Animal>, event: RackEvent): void {
  switch (event.type) {
    case 'weighed': {
      const { id, at, massG, doubt } = event;
      animal.weighings = keep(animal.weighings, { id, at, massG, doubt }, KEPT.weighings);
      break;
    }
    case 'opaque-seen':
      // Seen again in the same cycle, it is still in blue since the first look.
      animal.opaqueAt ??= event.at;
      break;
    case 'shed':
      animal.opaqueAt = undefined;
      animal.sheds = keep(animal.sheds, event, KEPT.few);
      applyToSeasons(animal, event);
      break;
    case 'condition-judged':
      animal.condition = { score: event.score, at: event.at };
      break;
    case 'measured':
      animal.lengthCm = event.lengthCm;
      break;
    default: // Kept among the recent records, and changing nothing else.
  }
}
