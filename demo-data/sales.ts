import { instantMs } from '../src/domain/core/calendar.ts';
import type { AnimalId, DeviceId } from '../src/domain/core/ids.ts';
import type { RackEvent } from '../src/domain/events/event.ts';
import type { Money } from '../src/domain/events/sales.ts';
import { neighbour, teacher } from './buyers.ts';
import { openLogbook } from './logbook.ts';
import type { Nights } from './nights.ts';
import { chanceFrom } from './random.ts';
import type { Scenario } from './scenario.ts';

/** The phone on which sales are written down. */
const DEVICE = 'DEM03' as DeviceId;

const euros = (whole: number): Money => ({ minor: whole * 100, currency: 'EUR' });

/** One that was sold last summer, and what became of some of the last young ones. */
export function tellSales(
  events: readonly RackEvent[],
  nights: Nights,
  { seed, offsetMin }: Scenario,
): readonly RackEvent[] {
  const book = openLogbook(offsetMin, chanceFrom(seed + 3), DEVICE);
  book.pace(8);
  const evening = (ago: number) => book.wait(nights.ms(nights.total - ago, 22 * 60 + 40));

  const left = events.find((event) => event.type === 'left' && event.how === 'sold');
  if (left?.type === 'left') {
    const { animal } = left;
    evening(150);
    book.write({ type: 'source-stated', animal, code: 'C' });
    book.write({ type: 'put-up-for-sale', animal, price: euros(220) });
    evening(125);
    book.write({ type: 'reserved', animal, buyer: teacher, deposit: euros(50) });
    book.wait(instantMs(left.at) - 60_000);
    book.write({ type: 'sold', animal, buyer: teacher, price: euros(200) });
    book.write({ type: 'handed-over', animal, how: 'collected' });
  }

  const [first, second, third, fourth] = eatersOf(events, nights);
  const last = shyOf(events, nights);
  evening(12);
  for (const animal of [first, second, third, fourth, last]) {
    if (animal === undefined) continue;
    book.write({ type: 'source-stated', animal, code: 'C' });
    book.write({ type: 'put-up-for-sale', animal, price: euros(180) });
  }
  evening(8);
  if (first) {
    const until = nights.day(nights.total + 10);
    const deposit = 'half of the price, in cash';
    book.write({ type: 'reserved', animal: first, buyer: neighbour, deposit, until });
  }
  if (second) book.write({ type: 'reserved', animal: second, until: nights.day(nights.total - 5) });
  evening(4);
  if (second) book.write({ type: 'sale-ended', animal: second, why: 'fell through' });
  if (third) book.write({ type: 'taken-off-sale', animal: third });
  if (fourth) book.write({ type: 'sold', animal: fourth });
  return book.events;
}

/** Hatchlings on record on the last nights, those that ate most often first. */
function eatersOf(events: readonly RackEvent[], nights: Nights): readonly AnimalId[] {
  const meals = mealsOf(events, nights);
  return [...meals]
    .filter(([, ate]) => ate > 4)
    .toSorted(byMeals)
    .map(([animal]) => animal);
}

/** The one that has eaten least. */
const shyOf = (events: readonly RackEvent[], nights: Nights): AnimalId | undefined =>
  [...mealsOf(events, nights)]
    .filter(([, ate]) => ate <= 2)
    .toSorted(byMeals)
    .at(-1)?.[0];

const byMeals = ([a, ateA]: readonly [string, number], [b, ateB]: readonly [string, number]) =>
  ateB - ateA || (a < b ? -1 : 1);

/** How often each young one of this year that is here, and not kept back, has eaten. */
function mealsOf(events: readonly RackEvent[], nights: Nights): ReadonlyMap<AnimalId, number> {
  const meals = new Map<AnimalId, number>();
  const born = nights.day(nights.total - 200);
  for (const event of events) {
    if (event.type === 'arrived' && (event.hatchedDay ?? '') > born) meals.set(event.animal, 0);
    if (event.type === 'left' || event.type === 'held-back') meals.delete(event.animal);
    if (event.type === 'meal-offered' && event.outcome === 'ate') {
      const ate = meals.get(event.animal);
      if (ate !== undefined) meals.set(event.animal, ate + 1);
    }
  }
  return meals;
}
