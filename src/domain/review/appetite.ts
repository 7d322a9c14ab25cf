import { instantMs, monthOf, type Day, type Moment } from '../core/calendar.ts';
import type { EventId } from '../core/ids.ts';
import type { EventOf, RackEvent } from '../events/event.ts';
import type { Outcome } from '../events/feeding.ts';
import type { NightOf } from '../season/night-of.ts';
import { seasonYears } from '../season/season-years.ts';

/** Offers with a known end; what was given by hand into the mouth is no answer, and not among them. */
export interface Offers {
  readonly answered: number;
  readonly refused: number;
}

/** The offers to one animal in each season, by month of the year from January on. */
export type Appetite = ReadonlyMap<string, readonly Offers[]>;

export const NO_OFFERS: Offers = { answered: 0, refused: 0 };

export const add = (a: Offers, b: Offers): Offers => ({
  answered: a.answered + b.answered,
  refused: a.refused + b.refused,
});

export const noMonths = (): Offers[] => Array.from({ length: 12 }, () => NO_OFFERS);

type Offer = EventOf<'meal-offered'>;

/** Offers of a record and how each ended, with what was learnt of it later. In no order. */
function endedOffers(records: readonly RackEvent[]): readonly (readonly [Offer, Outcome])[] {
  const settled = new Map<EventId, EventOf<'meal-settled'>>();
  for (const event of records) {
    if (event.type !== 'meal-settled') continue;
    const before = settled.get(event.offer);
    if (!before || instantMs(before.at) <= instantMs(event.at)) settled.set(event.offer, event);
  }
  return records.flatMap((event) =>
    event.type === 'meal-offered'
      ? [[event, settled.get(event.id)?.outcome ?? event.outcome] as const]
      : [],
  );
}

export function appetiteIn(records: readonly RackEvent[], nightOf: NightOf): Appetite {
  const seasons = new Map<string, Offers[]>();
  for (const [{ at, how }, outcome] of endedOffers(records)) {
    if (outcome === 'left' || how === 'assisted') continue;
    const night = nightOf(at);
    const season = seasonYears(night);
    const months = seasons.get(season) ?? noMonths();
    seasons.set(season, months);
    const month = monthOf(night) - 1;
    const offer = { answered: 1, refused: outcome === 'refused' ? 1 : 0 };
    months[month] = add(months[month] ?? NO_OFFERS, offer);
  }
  return seasons;
}

/** Whether it ever took so many meals in a row without help and kept them. */
export function wasEstablished(records: readonly RackEvent[], meals: number): boolean {
  const steps: (readonly [ms: number, isMeal: boolean])[] = [
    ...endedOffers(records).flatMap(([{ at, how }, outcome]) =>
      outcome === 'left'
        ? []
        : [[instantMs(at), how !== 'assisted' && outcome !== 'refused'] as const],
    ),
    ...records.flatMap((event) =>
      event.type === 'regurgitated' ? [[instantMs(event.at), false] as const] : [],
    ),
  ];
  let inRow = 0;
  for (const [, isMeal] of steps.toSorted(([a], [b]) => a - b)) {
    inRow = isMeal ? inRow + 1 : 0;
    if (inRow >= meals) return true;
  }
  return false;
}

/** The night of a moment hangs on its date and hour alone: asked once for each of these. */
export function rememberNights(nightOf: NightOf): NightOf {
  const known = new Map<string, Day>();
  return (moment: Moment) => {
    const hour = moment.slice(0, 13);
    const night = known.get(hour) ?? nightOf(moment);
    known.set(hour, night);
    return night;
  };
}
