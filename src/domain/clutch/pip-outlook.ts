import { daysBetween, type Day } from '../core/calendar.ts';
import { DAY_MIN, type Warmth } from '../incubation/daily-warmth.ts';
import { pipChances } from '../incubation/pip-chances.ts';
import {
  between as developed,
  progressOf,
  recentPace,
  type Progress,
} from '../incubation/progress.ts';
import { developmentRate, takenError } from '../incubation/rate.ts';
import type { Picture } from '../picture/picture.ts';
import { spanOf } from '../season/span.ts';
import type { Clutch } from '../state/clutch.ts';
import { lagChances } from '../windows/belief.ts';
import { between, notBefore, window, type Window } from '../windows/day-chances.ts';
import type { Dated, OwnInterval } from '../windows/own-interval.ts';
import { firstPip } from './first-pip.ts';
import { incubatorOf, warmthOf } from './warmth-of.ts';

/** When the first egg pips, and what that rests on. */
export interface PipOutlook extends Window {
  readonly laid: Dated;
  readonly ownClutches: number;
  /** How many of them were hers. */
  readonly herClutches: number;
  /** Development so far, from the last night they may have been laid on, in days as at 31.5 °C. */
  readonly developedDays: number;
  /** Share of the time since laying that is known from readings. */
  readonly readShare: number;
  /** Hours hotter than development is known for. */
  readonly beyondHours: number;
  readonly notBefore?: Day | undefined;
  /** The looks and dates leave no day: one of them must be wrong. */
  readonly isPast: boolean;
}

/** Far enough for the coolest incubator. */
const AHEAD_DAYS = 160;

export const isIncubated = ({ laid }: Clutch): boolean => laid?.care !== 'with her';

export function progressUpTo(clutch: Clutch, laid: Dated, until: Day, picture: Picture) {
  const days = Math.max(0, daysBetween(laid.first, until));
  const warmth = warmthOf(clutch, laid.first, days, picture);
  const stands = clutch.stands.at(-1);
  const set = stands && incubatorOf(stands.incubator, picture)?.targetC;
  const pace = recentPace(warmth, developmentRate(set ?? picture.facts.protocol.incubatorTargetC));
  return { warmth, progress: progressOf(warmth, AHEAD_DAYS, pace) };
}

/** Undefined where nobody knows when they were laid, she broods them, or one has pipped. */
export function pipOutlook(
  clutch: Clutch,
  picture: Picture,
  own: readonly OwnInterval[],
): PipOutlook | undefined {
  if (!clutch.laid || !isIncubated(clutch) || firstPip(clutch)) return undefined;
  const { protocol, night, nightOf } = picture.facts;
  const laid = spanOf(clutch.laid, nightOf);
  const { warmth, progress } = progressUpTo(clutch, laid, night, picture);
  const { chances, ownCycles, herCycles } = lagChances('lay to pip', protocol, own, clutch.dam);
  const error = takenError(protocol.unreadDriftC, ownCycles);
  const free = pipChances(between(laid.first, laid.last), chances, progress, error);
  const last = clutch.hatching.findLast(({ seen }) => seen === 'nothing yet');
  const looked = last && nightOf(last.at);
  const cut = looked === undefined ? free : notBefore(looked, free);
  return {
    ...window(cut ?? free),
    laid,
    ownClutches: ownCycles,
    herClutches: herCycles,
    developedDays: developedBy(progress, laid, night),
    readShare: share(warmth),
    beyondHours: warmth.reduce((sum, { beyondMin }) => sum + beyondMin, 0) / 60,
    notBefore: cut === free ? undefined : looked,
    isPast: cut === undefined,
  };
}

const developedBy = (progress: Progress, laid: Dated, night: Day): number => {
  const [from, to] = [daysBetween(laid.first, laid.last), daysBetween(laid.first, night)];
  return developed(progress, from, Math.max(from, to));
};

const share = (warmth: readonly Warmth[]): number =>
  warmth.length === 0
    ? 0
    : warmth.reduce((sum, { knownMin }) => sum + knownMin, 0) / (warmth.length * DAY_MIN);
