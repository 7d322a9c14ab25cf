import { instantMs } from '../core/calendar.ts';
import type { AnimalId, ClutchId } from '../core/ids.ts';
import type { RackEvent } from '../events/event.ts';
import type { Protocol } from '../protocol/values.ts';
import type { NightOf } from '../season/night-of.ts';
import { preLayShed } from '../season/pre-lay.ts';
import { seasonYears } from '../season/season-years.ts';
import { ovulationSpan, spanOf } from '../season/span.ts';
import type { Season, Stay } from '../state/season.ts';
import { ownInterval, type Dated, type OwnInterval } from '../windows/own-interval.ts';
import { everySeason } from './every-season.ts';

/** From one event of a cycle to a later one, as it is looked back at. */
export type Lag = 'ovulation to shed' | 'shed to lay' | 'ovulation to lay' | 'lay to pip';

/** A male's stay with a female. */
export interface Visit {
  readonly male: AnimalId;
  /** A lock was seen while it lasted. */
  readonly locked: boolean;
}

/** One season of one female, as far as a look back counts it. */
export interface Cycle {
  readonly female: AnimalId;
  /** "2026/27" */
  readonly season: string;
  readonly openedAt: Season['openedAt'];
  readonly visits: readonly Visit[];
  readonly paired: boolean;
  /** On record, or shown by a pre-lay shed or eggs. */
  readonly ovulated: boolean;
  readonly laid: boolean;
  readonly clutch?: ClutchId | undefined;
  readonly lags: readonly (readonly [Lag, OwnInterval])[];
}

export const cyclesOf = (
  female: AnimalId,
  records: readonly RackEvent[],
  protocol: Protocol,
  nightOf: NightOf,
): readonly Cycle[] =>
  everySeason(female, records).map((season) => cycleOf(female, season, protocol, nightOf));

function cycleOf(female: AnimalId, season: Season, protocol: Protocol, nightOf: NightOf): Cycle {
  const preLay = preLayShed(season, protocol, nightOf);
  const laid = season.laid && spanOf(season.laid, nightOf);
  const shed = preLay && spanOf(preLay.shed, nightOf);
  // What was only worked out from later events cannot say how long they took to follow.
  const ovulation =
    season.ovulation && season.ovulation.sure !== 'inferred'
      ? ovulationSpan(season.ovulation, nightOf)
      : undefined;
  const seen = season.ovulation && nightOf(season.ovulation.at);
  const named = laid?.last ?? preLay?.night ?? seen ?? nightOf(season.openedAt);
  const lags: readonly (readonly [Lag, Dated | undefined, Dated | undefined])[] = [
    ['ovulation to shed', ovulation, shed],
    ['shed to lay', shed, laid],
    ['ovulation to lay', ovulation, laid],
  ];
  return {
    female,
    season: seasonYears(named),
    openedAt: season.openedAt,
    visits: season.stays.map((stay) => ({ male: stay.male, locked: sawLock(stay, season) })),
    paired: season.stays.length > 0 || season.locks.length > 0,
    ovulated: season.ovulation !== undefined || preLay !== undefined || laid !== undefined,
    laid: laid !== undefined,
    clutch: season.laid?.clutch,
    lags: lags.flatMap(([lag, start, end]) => {
      const interval = start && end && ownInterval(female, start, end);
      return interval ? [[lag, interval] as const] : [];
    }),
  };
}

const sawLock = ({ male, since, until }: Stay, { locks }: Season): boolean =>
  locks.some(
    (lock) =>
      lock.male === male &&
      instantMs(lock.at) >= instantMs(since) &&
      (until === undefined || instantMs(lock.at) <= instantMs(until)),
  );
