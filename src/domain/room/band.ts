import type { Day } from '../core/calendar.ts';
import { dayOfNumber } from '../core/calendar.ts';
import type { Protocol } from '../protocol/values.ts';
import type { Programme } from '../state/room-air.ts';
import { inForce, partAt, targetOn, tempIn, type Part, type Target } from './programme.ts';

/** A stretch of local time in which the band stays as it is. Unit: minutes since 1970, local time. */
export interface Band {
  readonly fromMin: number;
  /** Not in it any more. */
  readonly toMin: number;
  readonly part: Part['part'];
  readonly date: Day;
  /** Day or night has just begun: what lies between the two is in band as well. */
  readonly settles: boolean;
  /** What the programme asks for; none: nothing is asked for here. */
  readonly targetC?: number | undefined;
  readonly lowC: number;
  readonly highC: number;
}

/** The band around the programme at a local minute. */
export type BandAt = (localMin: number) => Band;

const DAY_MIN = 24 * 60;

/** The hours of day and night where no programme says other ones. */
export const usualHours = { dayFromMin: 8 * 60, nightFromMin: 20 * 60 } as const;

/**
 * The band of a spot over time: the programme, give or take its tolerance.
 *
 * Air takes a while to follow a thermostat, so for the hours of settling after day or night begins,
 * anything between the two targets is in band as well. Where nothing is asked for, the band has no
 * target and no limits.
 */
export function bandsOf(
  programmes: readonly Programme[],
  spot: 'air' | 'hot spot',
  protocol: Protocol,
): BandAt {
  const toleranceC = spot === 'air' ? protocol.roomToleranceC : protocol.hotSpotToleranceC;
  const settleMin = protocol.roomSettleHours * 60;
  const targets = new Map<Day, Target | undefined>();
  let last: Band | undefined;

  function targetFor(date: Day): Target | undefined {
    if (!targets.has(date)) {
      const programme = inForce(programmes, date);
      targets.set(date, programme && targetOn(programme, date));
    }
    return targets.get(date);
  }

  const tempFor = ({ date, part }: Part): number | undefined => {
    const target = targetFor(date);
    return target && tempIn(target, spot, part);
  };

  function make(localMin: number): Band {
    const dayNumber = Math.floor(localMin / DAY_MIN);
    const hours = inForce(programmes, dayOfNumber(dayNumber)) ?? usualHours;
    const part = partAt(hours, localMin);
    const [fromMin, toMin] = around(localMin, [
      0,
      hours.dayFromMin,
      hours.dayFromMin + settleMin,
      hours.nightFromMin,
      hours.nightFromMin + settleMin,
    ]);
    const targetC = tempFor(part);
    const begin = part.part === 'day' ? hours.dayFromMin : hours.nightFromMin;
    const sinceBegin = (((localMin - begin) % DAY_MIN) + DAY_MIN) % DAY_MIN;
    const settles = sinceBegin < settleMin;
    const stretch = { fromMin, toMin, ...part, settles, targetC };
    if (targetC === undefined) return { ...stretch, lowC: -Infinity, highC: Infinity };
    // Just before this part began: the other part, on the day it counts to.
    const left = settles ? partAt(hours, localMin - sinceBegin - 1) : part;
    const leftC = tempFor(left) ?? targetC;
    return {
      ...stretch,
      lowC: Math.min(targetC, leftC) - toleranceC,
      highC: Math.max(targetC, leftC) + toleranceC,
    };
  }

  return (localMin) => {
    if (!last || localMin < last.fromMin || localMin >= last.toMin) last = make(localMin);
    return last;
  };
}

/** The stretch between two marks of the day that a local minute lies in. */
function around(localMin: number, marks: readonly number[]): readonly [number, number] {
  const midnight = Math.floor(localMin / DAY_MIN) * DAY_MIN;
  let from = midnight;
  let to = midnight + DAY_MIN;
  for (const mark of marks) {
    const at = midnight + (mark % DAY_MIN);
    if (at <= localMin) from = Math.max(from, at);
    else to = Math.min(to, at);
  }
  return [from, to];
}

/** Every stretch of the band over a span of local time. */
export function bandsOver(bandAt: BandAt, fromMin: number, toMin: number): Band[] {
  const bands: Band[] = [];
  for (let at = fromMin; at < toMin;) {
    const band = bandAt(at);
    bands.push({ ...band, fromMin: at, toMin: Math.min(band.toMin, toMin) });
    at = band.toMin;
  }
  return bands;
}
