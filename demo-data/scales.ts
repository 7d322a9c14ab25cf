import { scaleReadingG } from './growth.ts';
import { isCoolMonth } from './nights.ts';
import { stagedUnweighed } from './staging.ts';
import { isAdult } from './menu.ts';
import type { Snake, World } from './world.ts';

/** Gut contents are gone after this many nights, near enough. */
const EMPTY_NIGHTS = 4;

/** Nights between two weights: monthly, and closer where losing counts [common practice, no source]. */
function weighInterval(snake: Snake, { night, month }: World): number {
  if (snake.casting.role === 'quarantined') return 14;
  if (snake.casting.closing.scene === 'refusing') return 10;
  return snake.casting.sex === 'male' && isAdult(snake, night) && isCoolMonth(month) ? 14 : 30;
}

export function weigh(snake: Snake, world: World): void {
  const { book, chance, night, toGo } = world;
  if (night < snake.weighOn || snake.opaque || snake.visit || snake.away) return;
  if (stagedUnweighed(snake.casting.closing, toGo)) return;
  if (night - snake.mealOn < EMPTY_NIGHTS) return;
  const massG = scaleReadingG(snake.massG, chance);
  book.write({ type: 'weighed', animal: snake.id, massG, place: snake.tub.place });
  snake.weighOn = night + weighInterval(snake, world) + chance.whole(-1, 2);
}
