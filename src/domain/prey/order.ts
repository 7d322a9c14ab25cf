import { addDays, daysBetween, type Day } from '../core/calendar.ts';
import type { Prey } from '../events/feeding.ts';
import type { Protocol } from '../protocol/values.ts';
import { eatenOf, type Acceptance } from './acceptance.ts';
import {
  enoughWith,
  expectedCount,
  sumOfCounts,
  timesPieces,
  type CountChances,
} from './count-chances.ts';
import { usableStock, type StockBatch } from './stock.ts';
import { sizeKey } from './thaw.ts';

/** How one animal is fed in the weeks to come. */
export interface FeedingPlan {
  readonly meal: Pick<Prey, 'kind' | 'size' | 'eachG' | 'count'>;
  readonly acceptance: Acceptance;
  /** The next night it is offered food. */
  readonly next: Day;
  readonly everyDays: number;
}

export interface OrderLine {
  readonly kind: Prey['kind'];
  readonly size: string;
  /** Offers in the time, and pieces for them. */
  readonly offers: number;
  readonly offered: number;
  readonly expected: number;
  /** Enough in nine of ten such times (`thawEnoughShare`). */
  readonly enough: number;
  readonly inStock: number;
  /** In the freezer, and past its date before it is used. */
  readonly goesOff: number;
  readonly order: number;
}

/** How many offers fall on the nights from `from` on and before `until`. */
function offersIn({ next, everyDays }: FeedingPlan, from: Day, until: Day): number {
  // One that is overdue is fed on the first night.
  const days = daysBetween(next < from ? from : next, until);
  return Math.max(0, Math.ceil(days / Math.max(1, everyDays)));
}

/**
 * What to order for some weeks, by size, heaviest first: what is eaten with `thawEnoughShare`, less what is in the
 * freezer and keeps until it is used.
 *
 * Pieces are counted as eaten where refused ones go to the next animal. One that always refuses does so all the time, so its
 * offers are not independent: see `eatenOf`. Source: preyModel.
 */
export function orderList(
  plans: readonly FeedingPlan[],
  stock: readonly StockBatch[],
  facts: { readonly from: Day; readonly weeks: number; readonly protocol: Protocol },
): readonly OrderLine[] {
  const until = addDays(facts.from, 7 * facts.weeks);
  const bySize = new Map<string, FeedingPlan[]>();
  for (const plan of plans) {
    const key = sizeKey(plan.meal);
    bySize.set(key, [...(bySize.get(key) ?? []), plan]);
  }
  return [...bySize.values()]
    .toSorted((a, b) => (b[0]?.meal.eachG ?? 0) - (a[0]?.meal.eachG ?? 0))
    .flatMap((sized) => {
      const [first] = sized;
      if (!first) return [];
      const { kind, size } = first.meal;
      const offers = sized.map((plan) => offersIn(plan, facts.from, until));
      const chances = sumOfCounts(
        sized.map(({ acceptance, meal }, i): CountChances =>
          timesPieces(eatenOf(offers[i] ?? 0, acceptance), meal.count),
        ),
      );
      const enough = enoughWith(facts.protocol.thawEnoughShare, chances);
      const batches = stock.filter((batch) => sizeKey(batch) === sizeKey(first.meal));
      const days = daysBetween(facts.from, until);
      const perDay = days > 0 ? enough / days : 0;
      const { usable, goesOff } = usableStock(batches, { from: facts.from, days, perDay });
      return [
        {
          kind,
          size,
          offers: offers.reduce((sum, each) => sum + each, 0),
          offered: sized.reduce((sum, { meal }, i) => sum + meal.count * (offers[i] ?? 0), 0),
          expected: expectedCount(chances),
          enough,
          inStock: batches.reduce((sum, { pieces }) => sum + pieces, 0),
          goesOff,
          order: Math.max(0, enough - usable),
        },
      ];
    });
}
