import { daysBetween, type Day } from '../core/calendar.ts';
import type { AnimalId } from '../core/ids.ts';
import type { Picture } from '../picture/picture.ts';
import type { Rotation, WantedMale } from '../state/rotation.ts';
import { eveningsAway, keptVisits, PLAN_NIGHTS, rotationOf, staysUnderWay } from './kept-plan.ts';
import { femaleFacts, maleFacts } from './snake-facts.ts';
import { unreasonedFor } from './pair-reasons.ts';
import type { Night, PlanProblem, Visit, WantedPair } from './plan-problem.ts';

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
