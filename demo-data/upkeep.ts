import type { Snake, World } from './world.ts';

/** A refilled bowl is tapped in passing. */
const BOWL_SECONDS = 12;
const FULL_CLEAN_NIGHTS = 42;

/** Faeces as they are found, a spot clean with them, and a full clean every six weeks. */
export function lookAfterTub(snake: Snake, { book, chance, night, nights }: World): void {
  const { id: animal, tub } = snake;
  const place = tub.place;
  if (night >= snake.faecesOn) {
    const what = chance.pick(['faeces', 'both', 'both', 'urates'] as const);
    book.write({ type: 'faeces-seen', animal, what, place });
    if (chance.happens(0.5)) book.write({ type: 'tub-cleaned', tub: tub.id, how: 'spot', place });
    snake.faecesOn = Infinity;
  }
  if (night >= snake.fullCleanOn && !snake.visit && !snake.opaque) {
    // Done on a Saturday morning as often as not, and written down in the evening or the day after.
    const before = chance.happens(0.2) && {
      atMs: nights.ms(night - 1, 21 * 60),
      precision: 'day' as const,
    };
    book.write({ type: 'tub-cleaned', tub: tub.id, how: 'full', place }, before || undefined);
    snake.fullCleanOn = night + FULL_CLEAN_NIGHTS + chance.whole(-4, 6);
  }
  if (chance.happens(0.002)) {
    const state = chance.happens(0.8) ? 'tipped' : 'dry';
    book.write({ type: 'water-seen', tub: tub.id, state, place });
  }
}

/** Fresh water along the walk, as many bowls as asked, from where the last time ended. */
export function changeWater(bowls: number, from: number, { book, snakes }: World): number {
  if (snakes.length === 0) return 0;
  book.pace(BOWL_SECONDS);
  for (let n = 0; n < bowls; n += 1) {
    const tub = snakes[(from + n) % snakes.length]?.tub;
    if (tub) book.write({ type: 'water-seen', tub: tub.id, state: 'changed', place: tub.place });
  }
  return (from + bowls) % snakes.length;
}
