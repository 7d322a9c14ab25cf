import type { Nights } from './nights.ts';
import type { Chance } from './random.ts';
import type { Season, Snake } from './world.ts';

const NEVER = Number.POSITIVE_INFINITY;
const SHRINKS_MM_PER_NIGHT = 0.25;

const quiet = (start: number, paired: boolean, chance: Chance): Season => ({
  start,
  paired,
  restingMm: chance.between(4, 7),
  growsFrom: NEVER,
  mmPerNight: 0,
  peakMm: 0,
  ovulatesOn: NEVER,
  laysOn: NEVER,
});

/** A female on a visit on the last night has growing follicles, and is a long way from ovulation. */
function late(start: number, last: number, chance: Chance): Season {
  const mmPerNight = chance.between(0.32, 0.4);
  return { ...quiet(start, true, chance), growsFrom: last - 38, mmPerNight, peakMm: 45 };
}

/**
 * Follicles start between mid-September and mid-December, gain a third of a millimetre a night and
 * ovulate at 42 to 48 mm, from early January to early April. One in five fades at 20 to 28 mm.
 * [common practice, no source]
 */
export function seasonOf(snake: Snake, nights: Nights, night: number, chance: Chance): Season {
  const start = nights.seasonStart(night);
  const { closing } = snake.casting;
  const isLast = start === nights.seasonStart(nights.total);
  if (isLast && closing.scene === 'visit') return late(start, nights.total, chance);
  // A newcomer, in quarantine or just out of it, sits the season out.
  const settled = snake.arrivedOn === 0 || snake.arrivedOn < start;
  const ready = settled && snake.massG >= 1500 && start - snake.casting.hatchedOn > 1000;
  if (!ready || chance.happens(0.3)) return quiet(start, false, chance);
  // What is staged as due or in blue tonight must not be off its food for a better reason.
  if (isLast && closing.scene !== 'fed') return quiet(start, true, chance);

  const restingMm = chance.between(5, 8);
  const growsFrom = start + chance.whole(14, 105);
  const mmPerNight = chance.between(0.32, 0.42);
  if (chance.happens(0.2)) {
    const peakMm = chance.between(20, 28);
    const fades = { restingMm, growsFrom, mmPerNight, peakMm };
    return { ...quiet(start, true, chance), ...fades };
  }
  const peakMm = chance.between(42, 48);
  const ovulatesOn = growsFrom + Math.round((peakMm - restingMm) / mmPerNight);
  // Records that begin in spring begin after this year's ovulations.
  if (ovulatesOn < night + 5) return quiet(start, true, chance);
  const laysOn = ovulatesOn + chance.whole(45, 52);
  return { start, paired: true, restingMm, growsFrom, mmPerNight, peakMm, ovulatesOn, laysOn };
}

/** Mean diameter of the largest follicle. Unit: millimetres. */
export function follicleMm(season: Season, night: number): number {
  if (night <= season.growsFrom || night >= season.laysOn) return season.restingMm;
  const grown = season.restingMm + (night - season.growsFrom) * season.mmPerNight;
  if (grown <= season.peakMm || season.ovulatesOn !== NEVER) return Math.min(grown, season.peakMm);
  const pastPeak = (grown - season.peakMm) / season.mmPerNight;
  return Math.max(season.restingMm, season.peakMm - pastPeak * SHRINKS_MM_PER_NIGHT);
}

export const isGravid = ({ season }: Snake, night: number): boolean =>
  season !== undefined && night >= season.ovulatesOn && night < season.laysOn;

/** Near enough to ovulation to be off her food and off limits for a shed. */
export const nearsOvulation = ({ season }: Snake, night: number): boolean =>
  season !== undefined && season.ovulatesOn - night >= 0 && season.ovulatesOn - night <= 20;

/** After eggs, until the mass is back. */
export const isRecovering = (snake: Snake, night: number): boolean =>
  snake.season !== undefined &&
  night >= snake.season.laysOn &&
  snake.massG < 0.98 * snake.casting.adultG;
