import { dayNumber, dayNumberIn, dayOfNumber, type Day } from '../core/calendar.ts';
import type { Programme } from '../state/room-air.ts';

export type Step = Programme['steps'][number];

/** What a room shall be on one day. Unit: °C. */
export interface Target {
  readonly dayC: number;
  readonly nightC: number;
  readonly hotSpotC?: number | undefined;
  /** By night. */
  readonly hotSpotNightC?: number | undefined;
}

/** The programme in force on a day: of those that begin by then, the one that was set last. */
export const inForce = (programmes: readonly Programme[], day: Day): Programme | undefined =>
  programmes.findLast(({ from }) => from <= day);

/**
 * What a programme asks for on a day. From one step to the next the values change by the same
 * amount each day; the steps come round every year.
 */
export function targetOn({ steps }: Programme, day: Day): Target {
  const at = dayNumber(day);
  const year = Number(day.slice(0, 4));
  const dated = [year - 1, year, year + 1]
    .flatMap((each) => steps.map((step) => ({ step, on: dayNumberIn(each, step.month, step.day) })))
    .toSorted((a, b) => a.on - b.on); // Stable: of two on one day, the later one in the list holds.
  const before = dated.findLast(({ on }) => on <= at);
  const after = dated.find(({ on }) => on > at);
  if (!before || !after) throw new Error('A programme has a step in every year.');
  const share = (at - before.on) / (after.on - before.on);
  return between(targetOf(before.step), targetOf(after.step), share);
}

const targetOf = ({ dayC, nightC, hotSpotC, hotSpotNightC }: Step): Target => ({
  dayC,
  nightC,
  hotSpotC,
  hotSpotNightC: hotSpotNightC ?? hotSpotC,
});

function between(a: Target, b: Target, share: number): Target {
  const mix = (from: number, to: number): number => from + (to - from) * share;
  const mixed = (from: number | undefined, to: number | undefined): number | undefined =>
    from === undefined || to === undefined ? undefined : mix(from, to);
  return {
    dayC: mix(a.dayC, b.dayC),
    nightC: mix(a.nightC, b.nightC),
    hotSpotC: mixed(a.hotSpotC, b.hotSpotC),
    hotSpotNightC: mixed(a.hotSpotNightC, b.hotSpotNightC),
  };
}

/** Day or night, and the day it counts to: after midnight, the night is still the evening's. */
export interface Part {
  readonly part: 'day' | 'night';
  readonly date: Day;
}

const DAY_MIN = 24 * 60;

/** Which part of its day a local minute falls in. Unit: minutes since 1970, local time. */
export function partAt(
  { dayFromMin, nightFromMin }: Pick<Programme, 'dayFromMin' | 'nightFromMin'>,
  localMin: number,
): Part {
  const date = Math.floor(localMin / DAY_MIN);
  const minute = localMin - date * DAY_MIN;
  const isDay =
    dayFromMin <= nightFromMin
      ? minute >= dayFromMin && minute < nightFromMin
      : minute >= dayFromMin || minute < nightFromMin;
  if (isDay) {
    // A day that begins in the evening runs past midnight too.
    const isAfterMidnight = dayFromMin > nightFromMin && minute < nightFromMin;
    return { part: 'day', date: dayOfNumber(isAfterMidnight ? date - 1 : date) };
  }
  const isAfterMidnight = dayFromMin <= nightFromMin && minute < dayFromMin;
  return { part: 'night', date: dayOfNumber(isAfterMidnight ? date - 1 : date) };
}

export const tempIn = (target: Target, spot: 'air' | 'hot spot', part: Part['part']) =>
  spot === 'air'
    ? target[part === 'day' ? 'dayC' : 'nightC']
    : target[part === 'day' ? 'hotSpotC' : 'hotSpotNightC'];
