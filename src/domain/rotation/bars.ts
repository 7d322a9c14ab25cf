import type {
  Night,
  PlanFemale,
  PlanLimits,
  PlanMale,
  PlanProblem,
  PlanSnake,
  Visit,
  WantedPair,
} from './plan-problem.ts';

/** Each limit of the plan by name. */
export const limitNames = [
  'apart',
  'stopped',
  'not in her window',
  'needs a reason',
  'barred',
  'fed lately',
  'meal due',
  'in blue',
  'rest',
  'interval',
  'away',
  'females per male',
  'one place',
] as const;
export type LimitName = (typeof limitNames)[number];

/** Why one visit cannot be on those nights, whatever else is planned. */
export interface Bar {
  readonly limit: LimitName;
  readonly who: 'male' | 'female' | 'pair' | 'keeper';
  /** The first night it no longer stands against; undefined: it does not pass by itself. */
  readonly until?: Night | undefined;
}

/** All that bears on whether two may meet. */
export interface Meeting {
  readonly male: PlanMale;
  readonly female: PlanFemale;
  readonly pair: WantedPair;
}

/** What bars the two from a visit on any night of the plan. */
export function barsForAll({ male, female, pair }: Meeting): readonly Bar[] {
  const bars: Bar[] = [];
  if (male.apart !== undefined) bars.push({ limit: 'apart', who: 'male' });
  if (female.apart !== undefined) bars.push({ limit: 'apart', who: 'female' });
  if (male.stopped !== undefined) bars.push({ limit: 'stopped', who: 'male' });
  if (!female.window) bars.push({ limit: 'not in her window', who: 'female' });
  if (pair.unreasoned.length > 0) bars.push({ limit: 'needs a reason', who: 'pair' });
  if (pair.barred) bars.push({ limit: 'barred', who: 'pair' });
  if (male.had.length >= male.mostFemales && !male.had.includes(female.id)) {
    bars.push({ limit: 'females per male', who: 'male' });
  }
  return bars;
}

/** What bars him from going in on one evening. */
export function barsOnEntry(
  { male, female }: Meeting,
  night: Night,
  problem: PlanProblem,
): readonly Bar[] {
  const { limits, away } = problem;
  const bars: Bar[] = [];
  const hold = (limit: LimitName, who: Bar['who'], until: Night | undefined): void => {
    if (until !== undefined && night < until) bars.push({ limit, who, until });
  };
  hold('rest', 'male', homeFrom(male, problem));
  hold('interval', 'female', visitFrom(female, problem));
  for (const [who, snake] of [['male', male] as const, ['female', female] as const]) {
    if (snake.ate !== undefined) hold('fed lately', who, snake.ate + limits.mealToPairingNights);
    hold('in blue', who, snake.clearFrom);
    const due = mealHold(snake, limits, problem);
    if (due && night >= due.from) hold('meal due', who, due.until);
  }
  const { window } = female;
  if (window && night < window.from) {
    bars.push({ limit: 'not in her window', who: 'female', until: window.from });
  }
  if (window && night >= window.before) bars.push({ limit: 'not in her window', who: 'female' });
  if (away.includes(night))
    bars.push({ limit: 'away', who: 'keeper', until: nextHome(night, away) });
  return bars;
}

/** Whether he can come out that evening: somebody is there, and her window lasted till then. */
export const mayComeOut = ({ female }: Meeting, { out }: Visit, { away }: PlanProblem): boolean =>
  !away.includes(out) && female.window !== undefined && out <= female.window.before;

/** Nights that must pass after a visit before the next of the same snake, with a meal that waited. */
export function pauseAfter(
  { male, female }: Meeting,
  visit: Visit,
  { limits }: PlanProblem,
): { readonly male: number; readonly female: number } {
  const meal = ({ mealDue }: PlanSnake): number =>
    mealDue !== undefined && mealDue >= visit.in && mealDue <= visit.out
      ? limits.mealToPairingNights
      : 0;
  return {
    male: Math.max(male.restNights, meal(male)),
    female: Math.max(limits.betweenVisitsNights, meal(female)),
  };
}

export function nextHome(from: Night, away: readonly Night[]): Night {
  let night = from;
  while (away.includes(night)) night += 1;
  return night;
}

/** The first evening on which he has rested enough, with the visit he is on. */
export function homeFrom(male: PlanMale, { underWay }: PlanProblem): Night | undefined {
  const home = underWay.find((stay) => stay.male === male.id)?.out ?? male.cameHome;
  return home === undefined ? undefined : home + male.restNights;
}

/** The first evening on which the next male may come to her. */
export function visitFrom(
  female: PlanFemale,
  { underWay, limits }: PlanProblem,
): Night | undefined {
  const outs = underWay.filter((stay) => stay.female === female.id).map(({ out }) => out);
  const ended = outs.length > 0 ? Math.max(...outs) : female.visitEnded;
  return ended === undefined ? undefined : ended + limits.betweenVisitsNights;
}

/** A meal that is due is given on its evening, or when the visit is over, and rests before the next. */
function mealHold(
  snake: PlanSnake,
  limits: PlanLimits,
  { underWay }: PlanProblem,
): { readonly from: Night; readonly until: Night } | undefined {
  if (snake.mealDue === undefined) return undefined;
  const stays = underWay.filter(({ male, female }) => [male, female].includes(snake.id));
  const from = Math.max(snake.mealDue, ...stays.map(({ out }) => out));
  return { from, until: from + limits.mealToPairingNights };
}
