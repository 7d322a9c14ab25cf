import { freeTub, type Rooms } from './room.ts';
import type { Snake, World } from './world.ts';

// Ninety nights with a swab at the beginning and at the end [common practice, no source].
const QUARANTINE_NIGHTS = 90;
const FIRST_SWAB = 4;
const LAST_SWAB = 76;

/** Swabs, and the way out of the quarantine corner. */
export function watchQuarantine(snake: Snake, rooms: Rooms, world: World): void {
  if (snake.tub.rack.name !== 'Q') return;
  const { book, night, snakes } = world;
  const { id: animal } = snake;
  const nights = night - snake.arrivedOn;
  const place = snake.tub.place;
  if (nights === FIRST_SWAB || nights === LAST_SWAB) {
    const result = nights === LAST_SWAB && { result: 'nothing found' };
    const what = 'serpentovirus, parasites';
    book.write({ type: 'tested', animal, sample: 'oral swab and faeces', what, place, ...result });
  }
  if (nights < QUARANTINE_NIGHTS || snake.opaque || snake.left) return;
  const tub = freeTub(rooms, 'adults', snakes);
  if (!tub) return;
  const remark = 'Two clean tests, no mites seen, eats.';
  book.write({ type: 'quarantine-ended', animal, remark, place });
  snake.tub = tub;
  book.write({ type: 'moved', animal, tub: tub.id, place: tub.place });
}
