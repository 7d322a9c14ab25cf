import { daysBetween, type Day } from '../core/calendar.ts';
import { northernMonth } from '../protocol/cycle-plan.ts';
import { feedingClass } from '../protocol/feeding-class.ts';
import { refusedInRow } from '../rules/refusals-in-row.ts';
import type { RoomFacts } from '../rules/rule.ts';
import type { Animal, Weighing } from '../state/animal.ts';
import { layingBetween } from '../weight/laying.ts';
import { layingsOf } from '../weight/of-animal.ts';
import { weightReadings } from '../weight/reading.ts';
import type { RefusalFacts } from './read-refusals.ts';
import { refusalRun, type OfferNight } from './refusal-run.ts';

/** A sign this old no longer explains a refusal. */
const SIGN_DAYS = 21;
const AFTER_LAYING_DAYS = 90;
/** So soon after hatching, a weight is that of a hatchling that never ate. */
const HATCH_DAYS = 21;

/** What a snake's refusals are read from, and the weights that stand beside them. */
export interface RefusalsOf {
  readonly facts: RefusalFacts;
  readonly weights: readonly Weighing[];
}

/** Undefined where its last offers were not refused. */
export function refusalFacts(animal: Animal, room: RoomFacts): RefusalsOf | undefined {
  const refused = refusedInRow(animal);
  const [first] = refused;
  if (!first) return undefined;
  const { night, nightOf, protocol } = room;
  const run = refusalRun(
    animal.offers.map(({ at, outcome, how }): OfferNight => {
      return { night: nightOf(at), outcome, isAssisted: how === 'assisted' };
    }),
  );
  const kind = feedingClass(animal, night, protocol);
  const standing = animal.sex === 'female' ? room.standing(animal) : undefined;
  const { since, weights, lostShare } = lossSince(animal, kind, run.lastMeal, room);
  const days = daysBetween(since ?? nightOf(first.at), night);
  const laid = layingsOf(animal).at(-1);
  const laidDays = laid && daysBetween(nightOf(laid.at), night);
  const firstShed = animal.sheds[0];
  const clock = [run.lastMeal, firstShed && nightOf(firstShed.at)]
    .filter((each) => each !== undefined)
    .toSorted()
    .at(-1);
  const isNewHere = animal.origin !== undefined && animal.origin !== 'own';
  return {
    weights,
    facts: {
      kind,
      isMale: animal.sex === 'male',
      phase: phaseOf(standing?.stage, animal, laidDays),
      month: northernMonth(night, protocol),
      massG: animal.weighings.at(-1)?.massG,
      largestFollicleMm: standing?.now?.scan?.mm,
      inBlue: animal.opaqueAt !== undefined,
      daysSinceArrival:
        isNewHere && animal.arrivedAt ? daysBetween(nightOf(animal.arrivedAt), night) : undefined,
      daysSinceLaying: laidDays,
      refusals: refused.length,
      days,
      clockDays: clock && daysBetween(clock, night),
      lostShare,
      graveSign: hasGraveSign(animal, room),
    },
  };
}

function phaseOf(
  stage: string | undefined,
  animal: Animal,
  laidDays: number | undefined,
): RefusalFacts['phase'] {
  if (stage === 'ovulated' || stage === 'pre-lay shed') return 'gravid';
  if (stage === 'laid' && animal.season?.laid?.care === 'with her') return 'brooding';
  return laidDays !== undefined && laidDays >= 0 && laidDays <= AFTER_LAYING_DAYS
    ? 'after laying'
    : undefined;
}

function hasGraveSign(
  { graveSign, regurgitations }: Animal,
  { night, nightOf }: RoomFacts,
): boolean {
  const last = regurgitations.at(-1);
  return [graveSign?.at, last].some(
    (at) => at !== undefined && daysBetween(nightOf(at), night) <= SIGN_DAYS,
  );
}

interface Loss {
  readonly since?: Day | undefined;
  readonly weights: readonly Weighing[];
  readonly lostShare?: number | undefined;
}

/** What it lost since it last ate, or since hatching, without eggs and what was in the gut. */
function lossSince(
  animal: Animal,
  kind: RefusalFacts['kind'],
  lastMeal: Day | undefined,
  { nightOf, protocol }: RoomFacts,
): Loss {
  const { weighings, hatchedDay } = animal;
  const after = weighings.at(-1);
  const before =
    kind === 'hatchling' && lastMeal === undefined
      ? weighings.find(
          ({ at }) =>
            hatchedDay !== undefined && daysBetween(hatchedDay, nightOf(at)) <= HATCH_DAYS,
        )
      : (weighings.findLast(({ at }) => lastMeal !== undefined && nightOf(at) <= lastMeal) ??
        weighings.find(({ at }) => lastMeal === undefined || nightOf(at) > lastMeal));
  if (!before || !after || before === after)
    return { since: lastMeal, weights: after ? [after] : [] };
  const [first, last] = weightReadings(
    { ...animal, weighings: [before, after] },
    nightOf,
    protocol,
  );
  const weights = [before, after];
  if (!first || !last || layingBetween(first, last, layingsOf(animal))) {
    return { since: lastMeal, weights: [after] };
  }
  const gutG = first.gut.kind === 'may be full' ? (first.gut.mealG ?? 0) : 0;
  const lostG = before.massG - after.massG;
  const netG = lostG > 0 ? Math.max(0, lostG - gutG) : lostG;
  return { since: lastMeal, weights, lostShare: netG / before.massG };
}
