import type { Day } from '../core/calendar.ts';
import { dayWords, spanWords } from '../calendar-file/span-words.ts';
import type { Forecast, NextEvent } from '../season/forecast.ts';

/** A coming event, ready to show. */
export interface ComingWindow {
  readonly event: NextEvent;
  /** In four of five cases it comes on one of these days, both included. */
  readonly from: Day;
  readonly likely: Day;
  readonly to: Day;
  /** "12–22 May", or one day. */
  readonly span: string;
  /** "Eggs 12–22 May, most likely 16 May." */
  readonly says: string;
  /** "From the pre-lay shed on 14 Apr; 3 own cycles, 1 of them hers." */
  readonly rests: string;
  /** Its last day is over, and nobody wrote that it came. */
  readonly isOverdue: boolean;
  /** The dates leave no day for it: one of them must be wrong. */
  readonly isPast: boolean;
}

export function comingWindow(forecast: Forecast, night: Day): ComingWindow {
  const { event, from, likely, to, isPast = false } = forecast;
  const span = from === to ? dayWords(from) : spanWords(from, to);
  const most = from === to ? '' : `, most likely ${dayWords(likely)}`;
  return {
    event,
    from,
    likely,
    to,
    span,
    says: `${event.charAt(0).toUpperCase()}${event.slice(1)} ${span}${most}.`,
    rests: restsWords(forecast),
    isOverdue: to < night,
    isPast,
  };
}

/** What a window is counted from, how many own cycles are in it, and what cut it short. */
export function restsWords({
  anchor,
  anchorFirst,
  anchorLast,
  ownCycles,
  herCycles,
  notBefore,
  readShare,
  isPast,
}: Forecast): string {
  const on =
    anchorFirst === anchorLast
      ? `on ${dayWords(anchorFirst)}`
      : betweenWords(anchorFirst, anchorLast);
  const looked = notBefore === undefined ? '' : ` Not yet on ${dayWords(notBefore)}.`;
  const read =
    readShare === undefined
      ? ''
      : ` Warmth of the eggs read ${Math.round(readShare * 100)} % of the time.`;
  const wrong = isPast === true ? ' The looks and dates leave no day for it: which is wrong?' : '';
  return `From ${anchor} ${on}; ${cyclesWords(ownCycles, herCycles)}.${looked}${read}${wrong}`;
}

const betweenWords = (first: Day, last: Day): string =>
  `between ${first.slice(0, 7) === last.slice(0, 7) ? Number(first.slice(8)) : dayWords(first)} and ${dayWords(last)}`;

function cyclesWords(own: number, hers: number): string {
  if (own === 0) return 'no own cycle yet, so as among keepers in general';
  const counted = own === 1 ? '1 own cycle' : `${own} own cycles`;
  if (hers === 0) return `${counted}, none of them hers`;
  return own === hers ? `${counted}, all hers` : `${counted}, ${hers} of them hers`;
}
