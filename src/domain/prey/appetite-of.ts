import { addDays, daysBetween } from '../core/calendar.ts';
import { isSeasonOfMales } from '../protocol/cycle-plan.ts';
import { feedingClass } from '../protocol/feeding-class.ts';
import type { RoomFacts } from '../rules/rule.ts';
import type { Animal } from '../state/animal.ts';
import { acceptanceOf, type Acceptance, type AppetiteClass } from './acceptance.ts';

/** Offers farther back than this say nothing of tonight. */
const RECENT_DAYS = 150;

/** How an animal is expected to eat as things stand tonight. */
export function appetiteClass(animal: Animal, room: RoomFacts): AppetiteClass {
  const { night, protocol } = room;
  const kind = feedingClass(animal, night, protocol);
  if (kind === 'hatchling') return 'hatchling';
  const stage = animal.sex === 'female' ? room.standing(animal)?.stage : undefined;
  if (stage === 'ovulated' || stage === 'pre-lay shed') return 'ovulated, before eggs';
  const laid = stage === 'laid' ? animal.season?.laid : undefined;
  if (laid?.care === 'with her') return 'with her eggs';
  if (kind === 'male') return isSeasonOfMales(night, protocol) ? 'male in season' : 'male';
  return kind;
}

/** Its chance to eat: what its class usually eats, corrected by its own offers in the same part of the year. */
export function appetiteOf(animal: Animal, room: RoomFacts): Acceptance {
  const kind = appetiteClass(animal, room);
  return acceptanceOf(kind, outcomesAlike(animal, kind, room), room.protocol);
}

/** In blue it is another snake for a week: only what its class does in blue counts. */
export const appetiteInBlue = ({ protocol }: RoomFacts): Acceptance =>
  acceptanceOf('in blue', [], protocol);

function outcomesAlike(animal: Animal, kind: AppetiteClass, room: RoomFacts) {
  const { night, nightOf, protocol } = room;
  const { ovulation, laid } = animal.season ?? {};
  const since =
    kind === 'with her eggs' && laid
      ? nightOf(laid.at)
      : kind === 'ovulated, before eggs' && ovulation
        ? nightOf(ovulation.at)
        : addDays(night, -RECENT_DAYS);
  return animal.offers
    .filter(({ at, how }) => {
      const offered = nightOf(at);
      const isMale = kind === 'male' || kind === 'male in season';
      return (
        how !== 'assisted' &&
        daysBetween(since, offered) >= 0 &&
        (!isMale || isSeasonOfMales(offered, protocol) === (kind === 'male in season'))
      );
    })
    .map(({ outcome }) => outcome);
}
