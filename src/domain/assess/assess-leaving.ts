import { addDays } from '../core/calendar.ts';
import type { EventOf } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import { mealsInRow } from '../prey/established.ts';
import type { Animal } from '../state/animal.ts';
import { noObjection, type Doubt, type Verdict } from './doubt.ts';

/** A course without an end on record is taken to last so long. */
const COURSE_DAYS = 30;

/**
 * What stands against letting one go: in quarantine, under treatment, or young and not established.
 * The keeper's word stands, and the law is his to know. Sources: established, vetClock.
 */
export function assessLeaving(
  { how }: Pick<EventOf<'left'>, 'how'>,
  animal: Animal,
  { facts }: Picture,
): Verdict {
  if (how !== 'sold' && how !== 'given') return noObjection;
  const { night, nightOf, protocol } = facts;
  const name = animal.name || 'It';
  const doubts: Doubt[] = [];
  if (animal.quarantine) {
    doubts.push({ code: 'in-quarantine', message: `${name} is in quarantine. Let it go now?` });
  }
  const { treated } = animal;
  if (treated && (treated.until ?? addDays(nightOf(treated.at), COURSE_DAYS)) >= night) {
    doubts.push({
      code: 'under-treatment',
      message: `${name} is under treatment. In places it must not be sold then. Let it go now?`,
    });
  }
  const meals = mealsInRow(animal);
  if (animal.hatched && meals < protocol.establishedMeals) {
    doubts.push({
      code: 'not-established',
      message: `${name} has taken ${meals} unaided ${meals === 1 ? 'meal' : 'meals'} in a row; established is ${protocol.establishedMeals}. Let it go now?`,
    });
  }
  return doubts.length === 0 ? noObjection : { refusals: [], doubts, notes: [] };
}
