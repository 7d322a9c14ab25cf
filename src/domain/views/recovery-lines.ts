import { daysBetween } from '../core/calendar.ts';
import { daysWords } from '../core/day-words.ts';
import type { Picture } from '../picture/picture.ts';
import type { Protocol } from '../protocol/values.ts';
import type { Animal } from '../state/animal.ts';
import type { ReadinessLine } from './readiness-line.ts';

/** After that another season, or the mass, says more. */
const UNTIL_DAYS = 120;

/** The clock of a dam's first meal; nothing for one that broods or laid long ago. Source: recovery. */
export function firstMealLine(animal: Animal, picture: Picture): readonly ReadinessLine[] {
  const { protocol, night, nightOf } = picture.facts;
  const laid = picture.standing(animal)?.now?.season.laid;
  if (!laid || laid.care === 'with her') return [];
  const since = nightOf(laid.at);
  const day = daysBetween(since, night);
  if (day > UNTIL_DAYS) return [];
  const meal = animal.offers.find(
    ({ at, outcome }) => (outcome === 'ate' || outcome === 'partly') && nightOf(at) > since,
  );
  const what = 'First meal';
  if (meal) {
    const after = daysWords(daysBetween(since, nightOf(meal.at)));
    return [{ what, says: `Ate ${after} after laying.`, isMet: true }];
  }
  const isLate = day >= protocol.damMealLateDays;
  const says = `None since laying, day ${day}; late from day ${protocol.damMealLateDays}.`;
  return [isLate ? { what, says: `${says} Ask a reptile vet.`, isMet: false } : { what, says }];
}

/** When she should be back. Source: recovery. */
export const backWords = ({ recoveringDays, recoveredShare }: Protocol): string =>
  `Most are back to ${Math.round(recoveredShare * 100)} % within ${daysWords(recoveringDays)}.`;
