import type { Course } from './prior.ts';
import { lengthened, stretch } from './scale.ts';

/** A mass on a day, and its error as one SD of its log. Unit: grams. */
export interface Mark {
  readonly days: number;
  readonly massG: number;
  readonly error: number;
}

/** Where a course stands on a day, on its own scale. */
export interface State {
  readonly at: number;
  readonly variance: number;
}

/** A course as the weights leave it: its weight, and where it stands on the day of the last one. */
export interface Followed {
  readonly course: Course;
  readonly weight: number;
  readonly state: State;
}

/** Courses that weigh less than this of the heaviest are dropped. */
const NEGLIGIBLE = 1e-3;

/**
 * How likely each course is by an animal's weights. On its scale a course moves towards the adult mass and strays
 * (an Ornstein–Uhlenbeck process), so its likelihood is that of a Kalman filter [Kalman R.E. 1960, J Basic Eng 82:35–45],
 * from weight to weight whatever lies between. Of the first weight nothing is assumed but its error.
 *
 * Weights of the answer add up to 1. `marks` run from oldest to newest, on different days.
 */
export function follow(courses: readonly Course[], marks: readonly Mark[]): readonly Followed[] {
  const followed = courses.map((course) => ({ course, ...followOne(course, marks) }));
  const best = Math.max(...followed.map(({ log }) => log));
  const likely = followed
    .map(({ course, state, log }) => ({ course, state, weight: Math.exp(log - best) }))
    .filter(({ weight }) => weight > NEGLIGIBLE);
  const all = likely.reduce((sum, { weight }) => sum + weight, 0);
  return likely.map((each) => ({ ...each, weight: each.weight / all }));
}

function followOne(course: Course, marks: readonly Mark[]): { log: number; state: State } {
  const { power } = course;
  let log = Math.log(course.weight);
  let state: State | undefined;
  let days = 0;
  for (const mark of marks) {
    const seen = lengthened(mark.massG, power);
    // The same error of log mass on each scale, so that likelihoods can be compared.
    const unit = stretch(seen, power);
    const error = (mark.error * unit) ** 2;
    if (state) {
      const guess = ahead(course, state, mark.days - days);
      const total = guess.variance + error;
      const off = seen - guess.at;
      log += Math.log(unit) - (Math.log(total) + (off * off) / total) / 2;
      const gain = guess.variance / total;
      state = { at: guess.at + gain * off, variance: guess.variance * (1 - gain) };
    } else {
      state = { at: seen, variance: error };
    }
    days = mark.days;
  }
  return { log, state: state ?? { at: NaN, variance: NaN } };
}

/** Where a course stands some days later. It strays as it would from the mass it starts at. */
export function ahead({ power, adult, pace, strays }: Course, from: State, days: number): State {
  const kept = Math.exp(-pace * days);
  const perDay = (strays * stretch(from.at, power)) ** 2;
  return {
    at: adult + (from.at - adult) * kept,
    variance: from.variance * kept * kept + (perDay * (1 - kept * kept)) / (2 * pace),
  };
}
