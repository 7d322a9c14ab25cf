import { addDays, type Day } from '../core/calendar.ts';
import type { AnimalId, TubId } from '../core/ids.ts';
import type { Picture } from '../picture/picture.ts';
import { barsForAll, barsOnEntry } from '../rotation/bars.ts';
import { dueMoves, wasBegun } from '../rotation/due-moves.ts';
import type { Visit } from '../rotation/plan-problem.ts';
import { keptVisits, rotationOf } from '../rotation/kept-plan.ts';
import { readProblem } from '../rotation/read-problem.ts';
import { meetingsOf } from '../rotation/visit-model.ts';
import type { EventOf } from '../events/event.ts';
import { barWords } from './plan-words.ts';

/** A snake and the tub it is to be found in, or brought to. */
export interface MoveEnd {
  readonly id: AnimalId;
  readonly name: string;
  readonly tub: TubId | undefined;
  readonly position: string;
}

/** One male to be moved tonight: two scans, from and to. */
export interface Move {
  readonly kind: 'in' | 'out';
  readonly male: MoveEnd;
  readonly female: MoveEnd;
  /** Why it must not be done as planned. */
  readonly blocked: string | undefined;
  readonly because: string;
}

/** A pair that is together, to be looked at. */
export interface Together {
  readonly male: MoveEnd;
  readonly female: MoveEnd;
  readonly since: Day;
  /** What was seen of them tonight, newest last. */
  readonly seen: readonly EventOf<'pair-seen'>['seen'][];
  /** The evening he comes out. */
  readonly out: Day;
}

export interface MovesView {
  readonly night: Day;
  readonly isAway: boolean;
  /** Outs before ins: his rest begins, and her tub is free. */
  readonly moves: readonly Move[];
  readonly together: readonly Together[];
  /** Visits of the kept plan that were not begun on their evening, a sentence each. */
  readonly missed: readonly string[];
  readonly hasPlan: boolean;
}

/** Tonight's moves by the plan that was kept, each held against the limits as they are now. */
export function movesView(picture: Picture): MovesView {
  const { facts } = picture;
  const problem = readProblem(picture);
  const { away } = rotationOf(picture);
  const kept = keptVisits(picture);
  const due = dueMoves(picture);
  const outs = due.outs.map((stay) => move('out', stay, undefined, picture));
  const ins = due.ins.map((visit) =>
    move('in', visit, blockedNow(visit, problem, picture), picture),
  );
  return {
    night: facts.night,
    isAway: away.includes(facts.night),
    moves: [...outs, ...ins],
    together: problem.underWay.map((stay) => ({
      male: end(stay.male, picture, false),
      female: end(stay.female, picture, true),
      since: addDays(facts.night, stay.in),
      seen: seenTonight(stay, picture),
      out: addDays(facts.night, Math.max(0, stay.out)),
    })),
    missed: kept
      .filter((visit) => visit.in < 0 && !wasBegun(visit, visit.in, picture))
      .map(
        (visit) =>
          `${facts.nameOf(visit.male)} was to go to ${facts.nameOf(visit.female)} and did not. The plan makes up for it.`,
      ),
    hasPlan: kept.length > 0,
  };
}

function blockedNow(
  visit: Visit,
  problem: ReturnType<typeof readProblem>,
  picture: Picture,
): string | undefined {
  const tongue = { problem, night: picture.facts.night, nameOf: picture.facts.nameOf };
  const meeting = meetingsOf(problem).find(
    ({ pair }) => pair.male === visit.male && pair.female === visit.female,
  );
  if (!meeting) return 'This pair is no longer wanted.';
  const [bar] = [...barsForAll(meeting), ...barsOnEntry(meeting, 0, problem)];
  const host = problem.underWay.find(({ female }) => female === visit.female);
  if (host) return `${picture.facts.nameOf(host.male)} is in with her.`;
  return bar && barWords(bar, visit, tongue);
}

function move(
  kind: Move['kind'],
  visit: Visit,
  blocked: string | undefined,
  picture: Picture,
): Move {
  const stays = -visit.in;
  return {
    kind,
    male: end(visit.male, picture, kind === 'out'),
    female: end(visit.female, picture, true),
    blocked,
    because:
      kind === 'out'
        ? `With her for ${stays === 1 ? '1 night' : `${stays} nights`}; he goes home to drink, rest and eat.`
        : `By your plan, for ${visit.out - visit.in === 1 ? '1 night' : `${visit.out - visit.in} nights`}.`,
  };
}

/** Where a snake is now, or of a male that goes home: his own tub. */
function end(id: AnimalId, picture: Picture, isOwn: boolean): MoveEnd {
  const animal = picture.animal(id);
  const tub = isOwn ? animal?.tub : animal && picture.whereIs(animal);
  return {
    id,
    name: picture.facts.nameOf(id),
    tub,
    position: picture.position(tub) ?? '–',
  };
}

function seenTonight(
  { male, female }: Visit,
  { ledger, facts }: Picture,
): readonly EventOf<'pair-seen'>['seen'][] {
  return ledger
    .history(female)
    .flatMap((event) =>
      event.type === 'pair-seen' &&
      event.male === male &&
      facts.nightOf(event.at) === facts.night &&
      ledger.stands(event.id)
        ? [event.seen]
        : [],
    );
}
