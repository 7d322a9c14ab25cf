import type { Moment } from '../core/calendar.ts';
import type { AnimalId, EventId } from '../core/ids.ts';
import type { EventOf } from '../events/event.ts';

/** A record of a season, and when it happened, as well as that is known. */
export interface Seen {
  readonly id: EventId;
  readonly at: Moment;
  /** The last look at which it had not happened yet, where no more is known. */
  readonly notBefore?: Moment | undefined;
}

export interface Stay {
  /** The introduction, and the taking out. */
  readonly id: EventId;
  readonly outId?: EventId | undefined;
  readonly male: AnimalId;
  readonly female: AnimalId;
  readonly since: Moment;
  readonly until?: Moment | undefined;
}

export interface Scan extends Seen {
  readonly found: EventOf<'follicles-scanned'>['found'];
}

export interface SeasonShed extends Seen {
  /** What the keeper said; undefined where nobody was asked. */
  readonly preLay?: boolean | undefined;
}

export interface SeenSign extends Seen {
  readonly sign: EventOf<'sign-seen'>['sign'];
}

export type Laid = Seen &
  Pick<
    EventOf<'laid'>,
    'clutch' | 'good' | 'slugs' | 'unsure' | 'clutchMassG' | 'damMassG' | 'care'
  >;

/**
 * What the records say of one season of one snake. It opens with the first scan, introduction or
 * sign, never with a date. Lists run from oldest to newest.
 */
export interface Season {
  readonly openedAt: Moment;
  /** Of the last record in it. */
  readonly lastAt: Moment;
  /** The last mass before it opened, in grams. */
  readonly baselineG?: number | undefined;
  readonly scans: readonly Scan[];
  readonly signs: readonly SeenSign[];
  readonly stays: readonly Stay[];
  readonly locks: readonly (Seen & { readonly male: AnimalId; readonly female: AnimalId })[];
  readonly sheds: readonly SeasonShed[];
  readonly ovulation?: (Seen & Pick<EventOf<'ovulated'>, 'sure'>) | undefined;
  /** The last looks that found nothing yet. */
  readonly noOvulation?: Seen | undefined;
  readonly noEggs?: Seen | undefined;
  readonly nestBox?: (Seen & Pick<EventOf<'nest-box-set'>, 'is'>) | undefined;
  readonly laid?: Laid | undefined;
  readonly closed?: (Seen & Pick<EventOf<'season-closed'>, 'why'>) | undefined;
}
