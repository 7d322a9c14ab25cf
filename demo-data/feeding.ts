import { takeMeal } from './appetite.ts';
import { keptShare } from './growth.ts';
import { mealInterval, preyFor } from './menu.ts';
import { settlesInTime, stagedMeal } from './staging.ts';
import type { Snake, World } from './world.ts';

/** No food after a meal came back up [common practice, no source]. Unit: nights. */
const HOLD_NIGHTS = 14;

function isOffered(snake: Snake, { night, month, toGo }: World): boolean {
  if (snake.visit || snake.opaque || snake.away || snake.bringsUpOn > night) return false;
  const interval = mealInterval(snake, night, month);
  return stagedMeal(snake.casting.closing, toGo, interval) ?? night >= snake.nextMealOn;
}

function swallow(snake: Snake, preyG: number, part: number, { night, chance, toGo }: World): void {
  snake.lastGainG = preyG * part * keptShare(snake, night);
  snake.massG += snake.lastGainG;
  snake.halfMeal = false;
  snake.faecesOn = chance.happens(0.3) ? night + chance.whole(5, 12) : Infinity;
  const { closing } = snake.casting;
  if (closing.scene === 'regurgitated' && toGo === closing.mealAgo) {
    snake.bringsUpOn = night + closing.mealAgo - (closing.since ?? 0);
  } else if (chance.happens(0.0025) && settlesInTime(closing, toGo, HOLD_NIGHTS + 20)) {
    snake.bringsUpOn = night + chance.whole(1, 3);
  }
}

/** Offers tonight's meal to whoever is due and free to eat. */
export function offerMeal(snake: Snake, world: World): void {
  if (!isOffered(snake, world)) return;
  const { book, chance, night, month } = world;
  const prey = preyFor(snake, night, month, chance);
  const { seen, truth } = takeMeal(snake, world);
  const how = seen === 'left' ? ('left in tub' as const) : ('tongs' as const);
  const offer = book.write({
    type: 'meal-offered',
    animal: snake.id,
    prey,
    outcome: seen,
    how: prey.kind === 'soft-furred rat' ? 'scented' : how,
    place: snake.tub.place,
  });
  const preyG = (prey.eachG ?? 0) * prey.count;
  snake.mealOn = night;
  snake.offers += 1;
  const interval = mealInterval(snake, night, month);
  // A refusal is tried again a little sooner; a busy week comes a night or two later.
  snake.nextMealOn = night + interval + (truth === 'refused' ? -1 : chance.whole(0, 1));
  if (seen === 'left') snake.left = { offer, preyG, turnsOut: truth };
  else if (truth !== 'refused') swallow(snake, preyG, truth === 'partly' ? 0.5 : 1, world);
}

/** The morning look into the tubs where a meal was left. */
export function settleMeal(snake: Snake, world: World): void {
  const { left } = snake;
  if (!left) return;
  // Last night's two are still to be looked at.
  if (snake.casting.closing.scene === 'left' && world.toGo === 1) return;
  const { offer, preyG, turnsOut } = left;
  world.book.write({
    type: 'meal-settled',
    animal: snake.id,
    offer,
    outcome: turnsOut,
    place: snake.tub.place,
  });
  snake.left = undefined;
  if (turnsOut !== 'refused') swallow(snake, preyG, turnsOut === 'partly' ? 0.5 : 1, world);
}

export function lookForRegurgitation(snake: Snake, { book, night }: World): void {
  if (snake.bringsUpOn !== night) return;
  book.write({
    type: 'regurgitated',
    animal: snake.id,
    afterDays: night - snake.mealOn,
    remark: 'Whole, hardly digested. Warm end checked.',
    place: snake.tub.place,
  });
  snake.massG -= snake.lastGainG;
  snake.faecesOn = Infinity;
  snake.nextMealOn = night + HOLD_NIGHTS;
  snake.halfMeal = true;
}
