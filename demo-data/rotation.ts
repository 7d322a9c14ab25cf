import { addDays } from '../src/domain/core/calendar.ts';
import type { Snake, World } from './world.ts';

const BOARD_TO_GO = 34;
const PLAN_TO_GO = 30;

/**
 * The keeper begins a board for some of the females, and keeps a short plan of it: weeks ago, so that
 * tonight's is still to be made.
 */
export function tellRotation(world: World): void {
  const { book, toGo, nights, night, snakes } = world;
  const inOrder = (role: 'male' | 'female'): readonly Snake[] =>
    snakes
      .filter(({ casting }) => casting.role === role)
      .toSorted((a, b) => a.casting.index - b.casting.index);
  const [males, females] = [inOrder('male'), inOrder('female')];
  const [first, second] = males;
  const [one, two] = females;
  if (!first || !second || !one || !two) return;
  const tonight = nights.day(night);
  if (toGo === BOARD_TO_GO) {
    book.write({ type: 'pair-wanted', female: one.id, male: first.id, choice: 'first' });
    book.write({ type: 'pair-wanted', female: one.id, male: second.id, choice: 'reserve' });
    book.write({ type: 'pair-wanted', female: two.id, male: second.id, choice: 'first' });
    book.write({
      type: 'visit-ruled',
      female: two.id,
      male: first.id,
      rule: { kind: 'apart' },
      remark: 'He bit her last year.',
    });
  }
  if (toGo === PLAN_TO_GO) {
    const [away, last] = [addDays(tonight, 4), addDays(tonight, 5)];
    book.write({ type: 'evenings-away', from: away, last, is: 'away' });
    const visit = { female: one.id, male: first.id, in: tonight, out: addDays(tonight, 3) };
    book.write({ type: 'visits-planned', night: tonight, visits: [visit] });
  }
}
