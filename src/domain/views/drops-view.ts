import { addDays, daysBetween, type Day } from '../core/calendar.ts';
import type { AnimalId } from '../core/ids.ts';
import type { Picture } from '../picture/picture.ts';
import { barsForAll, barsOnEntry, type Meeting } from '../rotation/bars.ts';
import { checkVisits } from '../rotation/check-visits.ts';
import type { Night, PlanProblem, Visit } from '../rotation/plan-problem.ts';
import { readProblem } from '../rotation/read-problem.ts';
import { longestStay, meetingsOf } from '../rotation/visit-model.ts';
import { barWords, type PlanTongue } from './plan-words.ts';

/** A planned visit that is to be moved. */
export interface DropsAsk {
  readonly male: AnimalId;
  readonly female: AnimalId;
  readonly in: Day;
}

/** An evening on which he could go in with a female, or the limit that it would break. */
export interface Drop {
  readonly in: Day;
  readonly out: Day;
  /** A sentence; absent where nothing stands against it. */
  readonly stop?: string | undefined;
}

export interface DropsView {
  /** With the same female. */
  readonly evenings: readonly Drop[];
  /** With each other female he is wanted for: that evening, or else the first that is free. */
  readonly females: readonly (Drop & { readonly female: AnimalId; readonly name: string })[];
}

/** Where a planned visit can be moved to. Other visits give way to a pin; earlier pins do not. */
export function dropsView(ask: DropsAsk, picture: Picture): DropsView {
  const problem = readProblem(picture);
  const { night, nameOf } = picture.facts;
  const tongue: PlanTongue = { problem, night, nameOf };
  const his = meetingsOf(problem).filter(({ male }) => male.id === ask.male);
  const dropsOf = (meeting: Meeting): readonly Drop[] =>
    Array.from({ length: problem.limits.nights }, (_, into) => dropOn(meeting, into, tongue));
  const own = his.find(({ female }) => female.id === ask.female);
  const wished = daysBetween(night, ask.in);
  return {
    evenings: own ? dropsOf(own) : [],
    females: his.flatMap((meeting) => {
      if (meeting === own) return [];
      const drops = dropsOf(meeting);
      const best = drops[wished]?.stop === undefined ? drops[wished] : undefined;
      const drop = best ?? drops.find(({ stop }) => stop === undefined) ?? drops[wished];
      const { id } = meeting.female;
      return drop ? [{ ...drop, female: id, name: nameOf(id) }] : [];
    }),
  };
}

function dropOn(meeting: Meeting, into: Night, tongue: PlanTongue): Drop {
  const { problem, night } = tongue;
  const stay = longestStay(meeting, into, problem);
  const out = stay ?? into + problem.limits.stayNights;
  const visit: Visit = { male: meeting.male.id, female: meeting.female.id, in: into, out };
  const [bar] = [...barsForAll(meeting), ...barsOnEntry(meeting, into, problem)];
  const stop = bar
    ? barWords(bar, visit, tongue)
    : stay === undefined
      ? barWords({ limit: 'away', who: 'keeper' }, visit, tongue)
      : brokenBy(visit, problem);
  return { in: addDays(night, into), out: addDays(night, out), stop };
}

/** What it breaks beside the pins that are there. */
function brokenBy(visit: Visit, problem: PlanProblem): string | undefined {
  const others = problem.pins.filter(
    (pin) => pin.male !== visit.male || pin.female !== visit.female,
  );
  const before = checkVisits(problem, others);
  const broken = checkVisits({ ...problem, pins: [...others, visit] }, [...others, visit]).find(
    (each) => !before.some((old) => old.limit === each.limit && old.visit === each.visit),
  );
  return broken && `With your other pins it breaks a limit: ${broken.limit}`;
}
