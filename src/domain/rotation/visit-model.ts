import { barsForAll, barsOnEntry, mayComeOut, pauseAfter, type Meeting } from './bars.ts';
import type { LinearModel, Row } from './linear-model.ts';
import type { PlanProblem, Visit } from './plan-problem.ts';
import { worthOf } from './visit-worth.ts';

/** Each visit that could be in a plan, and the model that chooses among them. */
export interface VisitModel {
  /** One for each of the first variables of the model. */
  readonly visits: readonly Visit[];
  readonly model: LinearModel;
  /** Pins that no plan can hold, by themselves or beside an earlier pin. */
  readonly brokenPins: readonly Visit[];
}

/** A possible visit, with the nights on which nobody else may be with him, or with her. */
interface Possible {
  readonly visit: Visit;
  readonly meeting: Meeting;
  readonly heldUntil: { readonly male: number; readonly female: number };
}

/**
 * The plan as a linear model of 0s and 1s: a variable for each visit that is possible by itself, and
 * rows for what two visits cannot share.
 *
 * Visits of one snake that hold it on a common night are each other's rivals, so one row for each snake
 * and night is enough: two spans that meet always share the first night of the later one.
 */
export function visitModel(problem: PlanProblem): VisitModel {
  const possible = meetingsOf(problem).flatMap((meeting) => possibleVisits(meeting, problem));
  const { fixed, brokenPins } = pinned(possible, problem);
  const worthsOfVisits = possible.map(({ visit, meeting }) => worthOf(meeting, visit, problem));
  const rows: Row[] = [
    ...rivals(possible, 'male', problem),
    ...rivals(possible, 'female', problem),
  ];
  const { extra, caps } = femaleCaps(possible, problem);
  return {
    visits: possible.map(({ visit }) => visit),
    model: {
      worths: [...worthsOfVisits, ...Array.from({ length: extra }, () => 0)],
      rows: [...rows, ...caps],
      fixed,
    },
    brokenPins,
  };
}

/** The wanted pairs with all that is known of the two. */
export function meetingsOf({ wanted, males, females }: PlanProblem): readonly Meeting[] {
  const he = new Map(males.map((each) => [each.id, each]));
  const she = new Map(females.map((each) => [each.id, each]));
  return wanted.flatMap((pair) => {
    const [male, female] = [he.get(pair.male), she.get(pair.female)];
    return male && female ? [{ male, female, pair }] : [];
  });
}

function possibleVisits(meeting: Meeting, problem: PlanProblem): readonly Possible[] {
  if (barsForAll(meeting).length > 0) return [];
  const { limits } = problem;
  const found: Possible[] = [];
  for (let into = 0; into < limits.nights; into += 1) {
    if (barsOnEntry(meeting, into, problem).length > 0) continue;
    const { male, female } = meeting;
    const kept = problem.pins.filter(
      (pin) => pin.male === male.id && pin.female === female.id && pin.in === into,
    );
    const full = longestStay(meeting, into, problem);
    const outs = new Set([...(full === undefined ? [] : [full]), ...kept.map(({ out }) => out)]);
    for (const out of outs) {
      const visit: Visit = { male: male.id, female: female.id, in: into, out };
      const isStay = out > into && out - into <= limits.stayNights;
      if (!isStay || !mayComeOut(meeting, visit, problem)) continue;
      const pause = pauseAfter(meeting, visit, problem);
      const heldUntil = { male: visit.out + pause.male, female: visit.out + pause.female };
      found.push({ visit, meeting, heldUntil });
    }
  }
  return found;
}

/** The evening he comes out: the last of the keeper's nights on which he can; undefined without one. */
export function longestStay(
  meeting: Meeting,
  into: number,
  problem: PlanProblem,
): number | undefined {
  const { male, female } = meeting;
  for (let out = into + problem.limits.stayNights; out > into; out -= 1) {
    const visit = { male: male.id, female: female.id, in: into, out };
    if (mayComeOut(meeting, visit, problem)) return out;
  }
  return undefined;
}

function rivals(
  possible: readonly Possible[],
  of: 'male' | 'female',
  { limits }: PlanProblem,
): readonly Row[] {
  const bySnake = grouped(
    possible.map((each, at) => ({ ...each, at })),
    ({ visit }) => visit[of],
  );
  return [...bySnake].flatMap(([id, own]) =>
    nightsOf(limits.nights).flatMap((night): readonly Row[] => {
      const held = own.filter(({ visit, heldUntil }) => visit.in <= night && night < heldUntil[of]);
      // Without a visit that begins this night, the row of a night before says as much.
      if (held.length < 2 || !held.some(({ visit }) => visit.in === night)) return [];
      const terms = held.map(({ at }) => ({ at, times: 1 }));
      return [{ keeps: `${id} is in one place on night ${night}`, terms, atMost: 1 }];
    }),
  );
}

/** A further variable for each female that is new to a male who may not have all of them. */
function femaleCaps(
  possible: readonly Possible[],
  { limits }: PlanProblem,
): { readonly extra: number; readonly caps: readonly Row[] } {
  const caps: Row[] = [];
  let extra = 0;
  const byMale = grouped(
    possible.map((each, at) => ({ ...each, at })),
    ({ visit }) => visit.male,
  );
  for (const [id, own] of byMale) {
    const male = own[0]?.meeting.male;
    if (!male) continue;
    const fresh = [
      ...grouped(
        own.filter(({ visit }) => !male.had.includes(visit.female)),
        ({ visit }) => visit.female,
      ).values(),
    ];
    const left = male.mostFemales - male.had.length;
    if (fresh.length === 0 || fresh.length <= left) continue;
    const first = possible.length + extra;
    extra += fresh.length;
    caps.push({
      keeps: `${id} has at most ${left} more females`,
      terms: fresh.map((_, i) => ({ at: first + i, times: 1 })),
      atMost: left,
    });
    for (const [i, visits] of fresh.entries()) {
      for (const night of nightsOf(limits.nights)) {
        const held = visits.filter(
          ({ visit, heldUntil }) => visit.in <= night && night < heldUntil.male,
        );
        if (!held.some(({ visit }) => visit.in === night)) continue;
        caps.push({
          keeps: `${id} has that female if he visits her`,
          terms: [...held.map(({ at }) => ({ at, times: 1 })), { at: first + i, times: -1 }],
          atMost: 0,
        });
      }
    }
  }
  return { extra, caps };
}

/** Pins in the keeper's order; one that cannot be beside those before it gives way to them. */
function pinned(
  possible: readonly Possible[],
  { pins }: PlanProblem,
): { readonly fixed: readonly number[]; readonly brokenPins: readonly Visit[] } {
  const taken: { readonly at: number; readonly possible: Possible }[] = [];
  const brokenPins: Visit[] = [];
  for (const pin of pins) {
    const at = possible.findIndex(({ visit }) => isSame(visit, pin));
    const own = possible[at];
    const isFree = own && taken.every((other) => mayBoth(other.possible, own));
    if (!own || !isFree || !hasRoom(own, taken)) brokenPins.push(pin);
    else taken.push({ at, possible: own });
  }
  return { fixed: taken.map(({ at }) => at), brokenPins };
}

const isSame = (a: Visit, b: Visit): boolean =>
  a.male === b.male && a.female === b.female && a.in === b.in && a.out === b.out;

function mayBoth(a: Possible, b: Possible): boolean {
  const [first, then] = a.visit.in <= b.visit.in ? [a, b] : [b, a];
  return (['male', 'female'] as const).every(
    (of) => first.visit[of] !== then.visit[of] || then.visit.in >= first.heldUntil[of],
  );
}

function hasRoom(
  { meeting: { male, female } }: Possible,
  taken: readonly { readonly possible: Possible }[],
): boolean {
  const pinnedTo = taken
    .filter(({ possible }) => possible.visit.male === male.id)
    .map(({ possible }) => possible.visit.female);
  return (
    new Set([...male.had, ...pinnedTo, female.id]).size <=
    Math.max(male.mostFemales, male.had.length)
  );
}

function grouped<Each>(
  all: readonly Each[],
  keyOf: (each: Each) => string,
): ReadonlyMap<string, readonly Each[]> {
  const groups = new Map<string, Each[]>();
  for (const each of all) {
    const key = keyOf(each);
    const group = groups.get(key);
    if (group) group.push(each);
    else groups.set(key, [each]);
  }
  return groups;
}

const nightsOf = (count: number): readonly number[] => Array.from({ length: count }, (_, i) => i);

/** The visits a solution takes, by evening. */
export const visitsTaken = ({ visits }: VisitModel, values: readonly number[]): readonly Visit[] =>
  visits
    .filter((_, at) => (values[at] ?? 0) > 0.5)
    .toSorted((a, b) => a.in - b.in || (a.male < b.male ? -1 : 1));
