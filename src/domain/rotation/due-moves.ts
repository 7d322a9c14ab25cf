import { daysBetween } from '../core/calendar.ts';
import type { Picture } from '../picture/picture.ts';
import type { Night, Visit } from './plan-problem.ts';
import { eveningsAway, keptVisits, staysUnderWay } from './kept-plan.ts';

/** The males that are to be moved tonight: by the kept plan into a tub, and home from one. */
export interface DueMoves {
  readonly ins: readonly Visit[];
  readonly outs: readonly Visit[];
}

/** Reads no more than visits and the plan, so that tonight’s list can ask with every record. */
export const dueMoves = (picture: Picture): DueMoves => ({
  ins: keptVisits(picture).filter((visit) => visit.in === 0 && !wasBegun(visit, 0, picture)),
  outs: staysUnderWay(picture, eveningsAway(picture)).filter(({ out }) => out <= 0),
});

/** Whether he went in with her that evening or later. */
export function wasBegun(visit: Visit, night: Night, picture: Picture): boolean {
  const { facts } = picture;
  const stays = picture.animal(visit.male)?.season?.stays ?? [];
  return stays.some(
    ({ female, since }) =>
      female === visit.female && daysBetween(facts.night, facts.nightOf(since)) >= night,
  );
}
