import { daysBetween, type Day } from '../core/calendar.ts';
import type { AnimalId } from '../core/ids.ts';
import type { Picture } from '../picture/picture.ts';
import { noRotation, type Rotation, type WantedMale } from '../state/rotation.ts';
import { femaleFacts, maleFacts } from './snake-facts.ts';
import { plannedOut } from './stay-under-way.ts';
import { unreasonedFor } from './pair-reasons.ts';
import type { Night, PlanProblem, StayUnderWay, Visit, WantedPair } from './plan-problem.ts';

/** How many nights ahead a plan reaches. */
export const PLAN_NIGHTS = 14;

export const rotationOf = (picture: Picture): Rotation => picture.house()?.rotation ?? noRotation;

/** Everything the records say that bears on tonight's plan. */
export function readProblem(picture: Picture): PlanProblem {
  const { protocol, night } = picture.facts;
  const rotation = rotationOf(picture);
  const toNight = (day: Day): Night => daysBetween(night, day);
  const away = eveningsAway(picture);
  const wants = standingWants(picture);
  const ids = (of: 'male' | 'female') => [...new Set(wants.map((each) => each[of]))].toSorted();
  const living = (id: AnimalId) => {
    const animal = picture.animal(id);
    return animal && !animal.gone ? [animal] : [];
  };
  const underWay = staysUnderWay(picture, away);
  return {
    limits: {
      nights: PLAN_NIGHTS,
      stayNights: protocol.maleStayDays,
      mealToPairingNights: protocol.mealToPairingDays,
      betweenVisitsNights: protocol.pairAgainDays,
    },
    males: ids('male')
      .flatMap(living)
      .map((male) => maleFacts(male, picture)),
    females: ids('female')
      .flatMap(living)
      .map((female) => femaleFacts(female, picture)),
    wanted: wantedPairs(wants, rotation, picture),
    underWay,
    pins: rotation.ruled.flatMap(({ female, male, rule }): readonly Visit[] =>
      rule.kind === 'pinned' && toNight(rule.in) >= 0
        ? [{ female, male, in: toNight(rule.in), out: toNight(rule.out) }]
        : [],
    ),
    away,
    kept: keptVisits(picture),
  };
}

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

/** What is wanted still: of a female that has laid since, the wish was of the season before. */
export const standingWants = (picture: Picture): readonly WantedMale[] =>
  rotationOf(picture).wanted.filter(({ female, at }) => {
    const laid = picture.animal(female)?.season?.laid;
    return laid === undefined || picture.facts.nightOf(laid.at) < picture.facts.nightOf(at);
  });

function wantedPairs(
  wants: readonly WantedMale[],
  { ruled }: Rotation,
  picture: Picture,
): readonly WantedPair[] {
  return wants.map((want) => {
    const { female, male } = want;
    const hers = wants.filter((each) => each.female === female);
    const inOrder = [
      ...hers.filter(({ choice }) => choice === 'first').toReversed(),
      ...hers.filter(({ choice }) => choice === 'reserve'),
    ];
    return {
      male,
      female,
      choice: inOrder.indexOf(want),
      unreasoned: unreasonedFor({ male, female }, picture).map(({ says }) => says),
      barred: ruled.some(
        (each) => each.rule.kind === 'apart' && each.female === female && each.male === male,
      ),
    };
  });
}

export function staysUnderWay(picture: Picture, away: readonly Night[]): readonly StayUnderWay[] {
  return picture.living().flatMap((male): readonly StayUnderWay[] => {
    if (!male.visit) return [];
    const since = daysBetween(picture.facts.night, picture.facts.nightOf(male.visit.since));
    const out = plannedOut(male, since, away, picture);
    return [{ male: male.id, female: male.visit.with, in: since, out }];
  });
}
