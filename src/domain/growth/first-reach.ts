import { normalCdf } from '../core/normal.ts';
import { ahead, type Followed, type State } from './follow.ts';
import { lengthened } from './scale.ts';

/** A normal in three points that keep its moments up to the fifth (Gauss–Hermite). */
const THREE = [
  { z: -Math.sqrt(3), weight: 1 / 6 },
  { z: 0, weight: 2 / 3 },
  { z: Math.sqrt(3), weight: 1 / 6 },
] as const;

/** So many errors away from the target, today's is as good as one more day's straying. */
const FAR = 4;

/**
 * Chance that an animal has ever been at a mass by each day after its last weight, from day 0 to
 * `withinDays`. It never falls.
 *
 * For a straight course the formula for the first passage of a straying line holds exactly [Cox D.R. &
 * Miller H.D. 1965, The Theory of Stochastic Processes, 5.7]; a slowing one is taken as straight up to each
 * day. Worked out on some days, and between them in a straight line.
 *
 * Unit: grams, days.
 */
export function chancesReached(
  followed: readonly Followed[],
  targetG: number,
  withinDays: number,
): readonly number[] {
  const chances: number[] = [];
  let from = { day: 0, chance: 0 };
  for (const day of someDays(withinDays)) {
    const sum = followed.reduce((all, each) => all + each.weight * chanceBy(each, targetG, day), 0);
    const to = { day, chance: Math.min(1, Math.max(sum, from.chance)) };
    const slope = (to.chance - from.chance) / Math.max(1, to.day - from.day);
    while (chances.length <= day) {
      chances.push(to.chance - slope * (day - chances.length));
    }
    from = to;
  }
  return chances;
}

/** Each week of half a year, then every third. */
function someDays(withinDays: number): readonly number[] {
  const days: number[] = [];
  for (let day = 0; day < withinDays; day += day < 182 ? 7 : 21) days.push(day);
  return [...days, withinDays];
}

function chanceBy({ course, state }: Followed, targetG: number, days: number): number {
  const target = lengthened(targetG, course.power);
  const error = Math.sqrt(state.variance);
  if (target - state.at > FAR * error)
    return passedBy(state.at, ahead(course, state, days), target);
  return THREE.reduce((sum, { z, weight }) => {
    const at = state.at + z * error;
    return sum + weight * passedBy(at, ahead(course, { at, variance: 0 }, days), target);
  }, 0);
}

function passedBy(start: number, end: State, target: number): number {
  const short = target - start;
  if (short <= 0) return 1;
  if (end.variance === 0) return 0;
  const sd = Math.sqrt(end.variance);
  const moved = end.at - start;
  // Above it at the end, or back below it: as likely as a path mirrored at the target.
  const mirrored = normalCdf(-(short + moved) / sd);
  const back = mirrored === 0 ? 0 : Math.exp((2 * moved * short) / end.variance) * mirrored;
  return Math.min(1, normalCdf((moved - short) / sd) + back);
}
