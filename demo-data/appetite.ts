import type { Outcome } from '../src/domain/events/feeding.ts';
import { isAdult } from './menu.ts';
import { isCoolMonth } from './nights.ts';
import { follicleMm, isGravid, isRecovering, nearsOvulation } from './season.ts';
import { stagedOutcome } from './staging.ts';
import type { LeftMeal, Snake, World } from './world.ts';

/** Deep winter, when some males stop altogether: mid-November to the end of February. */
const isFastingMonth = (month: number): boolean => month === 12 || month <= 2;

/** How likely tonight's meal is taken [common practice, no source]. */
function hunger(snake: Snake, { night, month }: World): number {
  const { casting } = snake;
  if (casting.arrivesOn > casting.hatchedOn + 30 && night - snake.arrivedOn < 21 && night > 30)
    return 0.4; // A new arrival sulks for a few weeks.
  if (snake.massG < 150) return snake.offers < 4 ? 0.6 : 0.93;
  if (!isAdult(snake, night)) return isCoolMonth(month) ? 0.9 : 0.95;
  if (casting.sex === 'male') {
    if (!isCoolMonth(month)) return 0.9;
    return casting.fastsInWinter && isFastingMonth(month) ? 0.12 : 0.6;
  }
  if (isGravid(snake, night)) return 0.25;
  if (nearsOvulation(snake, night)) return 0.1;
  if (isRecovering(snake, night)) return 0.95;
  if (snake.season && follicleMm(snake.season, night) >= 30) return 0.45;
  return isCoolMonth(month) ? 0.75 : 0.88;
}

export interface Taken {
  /** What the keeper can say on closing the tub. */
  readonly seen: Outcome;
  /** What became of it; differs from `seen` for a meal left overnight. */
  readonly truth: LeftMeal['turnsOut'];
}

export function takeMeal(snake: Snake, world: World): Taken {
  const { chance, toGo } = world;
  const staged = stagedOutcome(snake.casting.closing, toGo);
  if (staged === 'left') return { seen: 'left', truth: 'ate' };
  if (staged) return { seen: staged, truth: staged };
  if (!chance.happens(hunger(snake, world))) {
    return { seen: chance.happens(0.35) ? 'left' : 'refused', truth: 'refused' };
  }
  const truth = chance.happens(0.015) ? 'partly' : 'ate';
  return { seen: chance.happens(0.13) ? 'left' : truth, truth };
}
