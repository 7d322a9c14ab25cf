import { isGravid, nearsOvulation } from './season.ts';
import { settlesInTime } from './staging.ts';
import { ageNights, type Snake, type World } from './world.ts';

/** Longest that a snake stays in blue here. Unit: nights. */
const LONGEST = 14;

/** Nights from shed to shed: the young shed more often [common practice, no source]. */
function shedCycle(snake: Snake, { night, chance }: World): number {
  const age = ageNights(snake, night);
  if (age < 150) return chance.whole(30, 44);
  return age < 700 ? chance.whole(38, 60) : chance.whole(60, 100);
}

function turnsOpaque(snake: Snake, { night, toGo }: World): boolean {
  const { closing } = snake.casting;
  if (closing.scene === 'in blue' && toGo === closing.since) return true;
  if (night < snake.nextOpaqueOn || snake.visit || nearsOvulation(snake, night)) return false;
  return isGravid(snake, night) || settlesInTime(closing, toGo, LONGEST);
}

/** Opaque eyes, and the shed 6 to 14 days later [common practice, no source]. */
export function lookAtSkin(snake: Snake, world: World): void {
  const { book, chance, night, nights } = world;
  const { id: animal, tub } = snake;
  if (!snake.opaque) {
    if (!turnsOpaque(snake, world)) return;
    book.write({ type: 'opaque-seen', animal, place: tub.place });
    snake.opaque = true;
    snake.shedOn = night + chance.whole(6, isGravid(snake, night) ? 9 : LONGEST);
    return;
  }
  if (night < snake.shedOn) return;
  const whole = chance.happens(0.88);
  const quality = whole ? 'whole' : chance.pick(['pieces', 'caps left', 'tail tip left'] as const);
  const preLay = isGravid(snake, night) && { preLay: true };
  const found = chance.happens(0.15) && {
    atMs: nights.ms(night, 6 * 60),
    precision: 'between' as const,
    notBeforeMs: nights.ms(night - 1, 23 * 60),
  };
  book.write({ type: 'shed', animal, quality, place: tub.place, ...preLay }, found || undefined);
  snake.opaque = false;
  // A gravid female keeps her new skin until after the eggs.
  snake.nextOpaqueOn = night + (preLay ? 75 : shedCycle(snake, world));
}
