import { addDays, daysBetween, type Day } from '../src/domain/core/calendar.ts';
import type { Scan } from '../src/domain/follicles/error.ts';
import { chanceFrom, type Chance } from './random.ts';

// Females whose follicles are known to the tenth of a millimetre, and what a probe reads of them: for
// trials of what is said about growth.

export const FIRST_NIGHT = '2026-10-25' as Day;

/** True size of the largest follicle on a day of the season, in millimetres. */
export type TrueMm = (day: number) => number;

/** Box G.E.P. & Muller M.E. 1958, Ann Math Stat 29(2):610–611. */
export function normal(chance: Chance): number {
  const radius = Math.sqrt(-2 * Math.log(1 - chance.next()));
  return radius * Math.cos(2 * Math.PI * chance.next());
}

/** One SD of a probe's error as assumed (`follicleErrorShare`), times a factor. */
export const probeErrorMm = (mm: number, times = 1): number => times * Math.max(1, 0.08 * mm);

/** Nights of looks 14 to 28 days apart. */
export function lookDays(chance: Chance, until: number): readonly number[] {
  const days: number[] = [];
  for (let day = chance.whole(0, 13); day <= until; day += chance.whole(14, 28)) days.push(day);
  return days;
}

let made = 0;

/** What a probe reads on a day. Two axes that differ a little; below 2 mm it sees nothing. */
export function probed(chance: Chance, day: number, mm: number, errorTimes = 1): Scan {
  made += 1;
  const read = mm + normal(chance) * probeErrorMm(mm, errorTimes);
  const apart = chance.between(0, 0.05) * read;
  return {
    id: String(made).padStart(17, '0') as Scan['id'],
    at: `${addDays(FIRST_NIGHT, day)}T22:00:00+01:00` as Scan['at'],
    found:
      read < 2
        ? { method: 'ultrasound' }
        : { method: 'ultrasound', largestMm: [read - apart, read + apart] },
  };
}

export const nightOf = (day: number): Day => addDays(FIRST_NIGHT, day);
export const dayOf = (night: Day): number => daysBetween(FIRST_NIGHT, night);

export interface Female {
  readonly trueMm: TrueMm;
  readonly scans: readonly Scan[];
}

export interface GrowingFemale extends Female {
  /** The moment her follicles are first at a size, in days. */
  readonly reachesOn: (mm: number) => number;
}

/** Rests at 4–8 mm for 0–90 days, then grows 0.2–0.5 mm a day to 45 mm, where the looks end. */
export function growing(seed: number, errorTimes = 1, speedsUp = 0): GrowingFemale {
  const chance = chanceFrom(seed);
  const restMm = chance.between(4, 8);
  const startDay = chance.between(0, 90);
  const rate = chance.between(0.2, 0.5);
  // The rate rises evenly, by the share `speedsUp`, from the start to 45 mm.
  const bend = ((speedsUp / 2) * rate * rate) / (45 - restMm);
  const trueMm: TrueMm = (day) => {
    const grown = Math.max(0, day - startDay);
    return restMm + rate * grown + bend * grown * grown;
  };
  const reachesOn = (mm: number): number => {
    let [low, high] = [startDay, startDay + 400];
    for (let step = 0; step < 40; step += 1) {
      const middle = (low + high) / 2;
      if (trueMm(middle) < mm) low = middle;
      else high = middle;
    }
    return high;
  };
  const scans = lookDays(chance, reachesOn(45)).map((day) =>
    probed(chance, day, trueMm(day), errorTimes),
  );
  return { trueMm, reachesOn, scans };
}

/** Pairs of scans of the same night, of females of all sizes. */
export function repeatScans(
  seed: number,
  pairs: number,
  errorTimes: number,
): readonly (readonly Scan[])[] {
  const chance = chanceFrom(seed);
  return Array.from({ length: pairs }, () => {
    const mm = chance.between(5, 45);
    return [probed(chance, 0, mm, errorTimes), probed(chance, 0, mm, errorTimes)];
  });
}

/** Grows as the others do, turns at 20–30 mm and shrinks by 0.15–0.35 mm a day back to rest. */
export function resorbing(seed: number): Female & { readonly peakDay: number } {
  const chance = chanceFrom(seed);
  const peakMm = chance.between(20, 30);
  const up = chance.between(0.2, 0.5);
  const rate = -chance.between(0.15, 0.35);
  const restMm = chance.between(4, 8);
  const peakDay = (peakMm - restMm) / up;
  const trueMm: TrueMm = (day) =>
    day < peakDay ? restMm + up * day : Math.max(restMm, peakMm + rate * (day - peakDay));
  const scans = lookDays(chance, peakDay + (peakMm - restMm) / -rate + 60).map((day) =>
    probed(chance, day, trueMm(day)),
  );
  return { trueMm, peakDay, scans };
}

/** Rests at 4–8 mm all season. */
export function resting(seed: number): Female {
  const chance = chanceFrom(seed);
  const restMm = chance.between(4, 8);
  const scans = lookDays(chance, 180).map((day) => probed(chance, day, restMm));
  return { trueMm: () => restMm, scans };
}
