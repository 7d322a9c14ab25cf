import type { Day, Moment } from '../core/calendar.ts';
import type { AnimalId, EventId, TubId } from '../core/ids.ts';
import type { EventOf, RackEvent } from '../events/event.ts';
import type { Outcome, Prey } from '../events/feeding.ts';
import type { Sex } from '../events/life.ts';
import type { Season } from './season.ts';

export interface Offer {
  readonly id: EventId;
  readonly at: Moment;
  readonly prey: Prey;
  readonly outcome: Outcome;
  /** How it was given, where that was written down. */
  readonly how?: EventOf<'meal-offered'>['how'] | undefined;
}

export interface Weighing {
  readonly id: EventId;
  readonly at: Moment;
  readonly massG: number;
  readonly doubt?: string | undefined;
}

export interface Together {
  readonly id: EventId;
  readonly with: AnimalId;
  readonly tub: TubId;
  readonly since: Moment;
}

/** What the records say of one animal. Lists run from oldest to newest and keep the recent ones. */
export interface Animal {
  readonly id: AnimalId;
  /** Empty until an arrival is seen: a merge may bring the rest of the story first. */
  readonly name: string;
  readonly sex: Sex;
  readonly sexedBy?: string | undefined;
  readonly hatchedDay?: Day | undefined;
  readonly traits?: string | undefined;
  readonly origin?: string | undefined;
  readonly arrivedAt?: Moment | undefined;
  readonly dam?: AnimalId | undefined;
  readonly sires: readonly AnimalId[];
  /** Its own tub; while a male is on a visit, `visit.tub` is where he is. */
  readonly tub?: TubId | undefined;
  readonly gone?:
    { readonly id: EventId; readonly how: EventOf<'left'>['how']; readonly at: Moment } | undefined;
  readonly quarantine?: { readonly since: Moment; readonly until?: Day | undefined } | undefined;
  readonly heldBack: boolean;
  readonly offers: readonly Offer[];
  /** Outcomes that came before their offers, as can happen when two phones are merged. */
  readonly settledEarly: Readonly<Record<string, Outcome>>;
  /** How it is fed otherwise than its class; the last word counts. */
  readonly feedingExcepted?: EventOf<'feeding-excepted'> | undefined;
  readonly regurgitations: readonly Moment[];
  readonly weighings: readonly Weighing[];
  /** Since when it is in blue; cleared by the shed. */
  readonly opaqueAt?: Moment | undefined;
  readonly sheds: readonly EventOf<'shed'>[];
  readonly condition?: { readonly score: number; readonly at: Moment } | undefined;
  readonly lengthCm?: number | undefined;
  /** A male on a visit. */
  readonly visit?: Together | undefined;
  /** The season under way, or the last one while nothing has begun a new one. */
  readonly season?: Season | undefined;
  /** Earlier seasons, oldest first, cut down to what is learnt from them. */
  readonly pastSeasons: readonly Season[];
  /** Where it came out of, and what was seen on it then. */
  readonly hatched?: EventOf<'hatched'> | undefined;
  /** The last feeling for eggs left in her. */
  readonly eggsFelt?: EventOf<'eggs-felt'> | undefined;
  /** Of a dam: the last count of each clutch's young. */
  readonly youngCounted?: readonly EventOf<'young-counted'>[] | undefined;
  readonly geneTests?: readonly EventOf<'gene-tested'>[] | undefined;
  /** The last course a vet prescribed. */
  readonly treated?: { readonly at: Moment; readonly until?: Day | undefined } | undefined;
  /** The last grave sign, until the same is noted as a lesser one. */
  readonly graveSign?: EventOf<'health-noted'> | undefined;
  /** When each rule was last passed over on purpose. */
  readonly passedOver: Readonly<
    Record<string, { readonly id: EventId; readonly at: Moment; readonly reason: string }>
  >;
  /** The last few records of any kind, for the capture screen. */
  readonly recent: readonly RackEvent[];
}

export const unknownAnimal = (id: AnimalId): Animal => ({
  id,
  name: '',
  sex: 'unknown',
  sires: [],
  heldBack: false,
  offers: [],
  settledEarly: {},
  regurgitations: [],
  weighings: [],
  sheds: [],
  pastSeasons: [],
  passedOver: {},
  recent: [],
});
