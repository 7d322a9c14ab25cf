import { daysBetween } from '../core/calendar.ts';
import type { Picture } from '../picture/picture.ts';
import { noRotation, type Rotation } from '../state/rotation.ts';
import type { Night, StayUnderWay, Visit } from './plan-problem.ts';
import { plannedOut } from './stay-under-way.ts';

/** How many nights ahead a plan reaches. */
export const PLAN_NIGHTS = 14;

export const rotationOf = (picture: Picture): Rotation => picture.house()?.rotation ?? noRotation;

/** Tonight and later. */
export const eveningsAway = (picture: Picture): readonly Night[] =>
  rotationOf(picture)
    .away.map((day) => daysBetween(picture.facts.night, day))
    .filter((night) => night >= 0);

/** The visits of the plan that was kept last; one older than it reaches is gone by no more. */
export function keptVisits(picture: Picture): readonly Visit[] {
  const { night } = picture.facts;
  const { plan } = rotationOf(picture);
  if (!plan || daysBetween(plan.night, night) >= PLAN_NIGHTS) return [];
  return plan.visits.map(({ female, male, in: into, out }) => {
    return { female, male, in: daysBetween(night, into), out: daysBetween(night, out) };
  });
}

/** The pairs that are together, each with the evening on which he comes out. */
export function staysUnderWay(picture: Picture, away: readonly Night[]): readonly StayUnderWay[] {
  return picture.living().flatMap((male): readonly StayUnderWay[] => {
    if (!male.visit) return [];
    const since = daysBetween(picture.facts.night, picture.facts.nightOf(male.visit.since));
    const out = plannedOut(male, since, away, picture);
    return [{ male: male.id, female: male.visit.with, in: since, out }];
  });
}
