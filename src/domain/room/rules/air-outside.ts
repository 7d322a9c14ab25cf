import { momentOf } from '../../core/calendar.ts';
import type { Room } from '../../state/place.ts';
import type { Reading } from '../../state/readings.ts';
import { bandsOf, type BandAt } from '../band.ts';
import { agoWords, hoursWords, madeBy, showC } from '../words.ts';
import { lastRun } from './last-run.ts';
import type { AirAlarm, AirFacts } from './room-rule.ts';

/** On which side air can be wrong, and where that begins at a local minute. Unit: °C. */
interface Side {
  readonly limitC: (bandAt: BandAt, reading: Reading) => number;
  readonly isOutside: (tempC: number, limitC: number) => boolean;
  readonly word: 'under' | 'over';
  readonly worst: (...temps: number[]) => number;
}

const localMin = ({ minute, offsetMin }: Reading): number => minute + offsetMin;

/** Too cold: under the limit, and under what the programme wants where that is lower still. */
export const tooCold = ({ protocol }: AirFacts): Side => ({
  limitC: (bandAt, reading) => Math.min(protocol.roomLowC, finite(bandAt(localMin(reading)).lowC)),
  isOutside: (tempC, limitC) => tempC < limitC,
  word: 'under',
  worst: Math.min,
});

/** Too warm: over the limit, and over what the programme wants where that is higher still. */
export const tooWarm = ({ protocol }: AirFacts): Side => ({
  limitC: (bandAt, reading) =>
    Math.max(protocol.roomHighC, -finite(-bandAt(localMin(reading)).highC)),
  isOutside: (tempC, limitC) => tempC > limitC,
  word: 'over',
  worst: Math.max,
});

/** Without a programme a band has no limits, and sets none. */
const finite = (limitC: number): number => (limitC === -Infinity ? Infinity : limitC);

/**
 * Air that has been outside for hours, up to the newest reading of a series, as long as that is
 * fresh and no other reading has found the room well since.
 */
export function airOutside(room: Room, facts: AirFacts, side: Side): AirAlarm | undefined {
  const { protocol, nowMs } = facts;
  const bandAt = bandsOf(room.air.programmes, 'air', protocol);
  const isOutside = (reading: Reading): boolean =>
    side.isOutside(reading.tempC, side.limitC(bandAt, reading));
  const all = room.air.recent.filter(({ spot }) => spot === 'air');
  for (const series of all) {
    const run = lastRun(series, isOutside, protocol.roomGapHours * 60);
    if (!run || run.lengthMin < protocol.roomSustainedHours * 60) continue;
    const { last, lengthMin } = run;
    const ageMin = nowMs / 60_000 - last.minute;
    if (ageMin > protocol.roomFreshHours * 60) continue;
    const isWellSince = all.some(({ readings }) =>
      readings.some((each) => each.minute > last.minute && !isOutside(each)),
    );
    if (isWellSince) continue;
    const worstC = side.worst(...run.readings.map(({ tempC }) => tempC));
    const limitC = side.limitC(bandAt, last);
    const at = momentOf({ ms: last.minute * 60_000, offsetMin: last.offsetMin });
    return {
      asks: `${showC(last.tempC)}: ${side.word} ${showC(limitC)} for ${hoursWords(lengthMin)}`,
      because: [
        `${madeBy(series)}: ${run.readings.length} readings on end ${side.word} ${showC(limitC)}, ${hoursWords(lengthMin)} from first to last, ${showC(worstC)} at worst.`,
        `The last of them was at ${at.slice(11, 16)}, ${agoWords(ageMin)}.`,
      ],
    };
  }
  return undefined;
}
