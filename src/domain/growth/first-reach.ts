import { normalCdf } from '../core/normal.ts';
import { ahead, type Followed, type State } from './follow.ts';
import type { Course } from './prior.ts';
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
 * A course that closes in on its adult weight and strays is a straying line of its own time [Doob J.L. 1942,
 * Ann Math 43:351–369], and the first passage of one over a straight target is known in full [Cox D.R. & Miller
 * H.D. 1965, The Theory of Stochastic Processes, 5.7]. The target is straight where it is the adult weight, and
 * taken as straight elsewhere. Worked out on some days, and between them in a straight line.
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
  const kept = Math.exp(-course.pace * days);
  if (target - state.at > FAR * error) return passedBy(state, target, course, days, kept);
  return THREE.reduce((sum, { z, weight }) => {
    const start = { at: state.at + z * error, variance: 0 };
    return sum + weight * passedBy(start, target, course, days, kept);
  }, 0);
}

function passedBy(
  start: State,
  target: number,
  course: Course,
  days: number,
  kept: number,
): number {
  const short = target - start.at;
  if (short <= 0) return 1;
  const end = ahead(course, start, days);
  if (end.variance === 0) return 0;
  // Stretched by what is kept of it, the straying is even; the target then bends, and its chord is taken.
  const sd = Math.sqrt(end.variance) / kept;
  const shortAtEnd = (target - end.at) / kept;
  // Beyond it at the end, or back again: as likely as a path mirrored at the chord.
  const mirrored = normalCdf((shortAtEnd - 2 * short) / sd);
  const back =
    mirrored === 0 ? 0 : mirrored * Math.exp((-2 * short * (shortAtEnd - short)) / (sd * sd));
  return Math.min(1, normalCdf(-shortAtEnd / sd) + back);
}
