import { addDays, type Day } from '../core/calendar.ts';
import type { Prey } from '../events/feeding.ts';
import type { Picture } from '../picture/picture.ts';
import { chanceEats } from '../prey/acceptance.ts';
import { appetiteOf } from '../prey/appetite-of.ts';
import { batchesOf, freezerOf, inHand, piecesIn, thawedOn } from '../prey/freezer-stock.ts';
import { orderList, type FeedingPlan, type OrderLine } from '../prey/order.ts';
import { stockRules } from '../prey/rules/all.ts';
import type { StockFacts, StockRuleId } from '../prey/rules/stock-rule.ts';
import { countStock, lastsUntil } from '../prey/stock.ts';
import { sizeKey } from '../prey/thaw.ts';
import type { KnownSize } from '../protocol/prey-sizes.ts';
import { dueNight, mealOf, planOf } from '../rules/feeding-due.ts';
import { drawerKey, type Drawer } from '../state/freezer.ts';
import type { SourceId } from '../sources.ts';

/** Something the keeper should know about one size, ready to show. */
export interface StockNote {
  readonly rule: StockRuleId;
  readonly kind: Prey['kind'];
  readonly size: string;
  /** Pieces it is about, where one tap can put it right. */
  readonly pieces: number;
  readonly asks: string;
  readonly because: readonly string[];
  readonly says: string;
  readonly source: SourceId;
}

export interface StockLine {
  readonly kind: Prey['kind'];
  readonly size: string;
  /** By the records; negative where more was taken out than was there. */
  readonly pieces: number;
  readonly past: number;
  readonly countedOn?: Day | undefined;
  readonly batches: Drawer['batches'];
  /** Expected to be eaten in a week. */
  readonly perWeek: number;
  readonly lastsUntil?: Day | undefined;
}

export interface PreyView {
  readonly night: Day;
  readonly weeks: number;
  readonly notes: readonly StockNote[];
  readonly stock: readonly StockLine[];
  readonly order: readonly OrderLine[];
  readonly sizes: readonly KnownSize[];
}

/** The freezer, what to order for some weeks, and what one piece of each size weighs. */
export function preyView(weeks: number, picture: Picture): PreyView {
  const { facts, ledger } = picture;
  const { night, protocol } = facts;
  const freezer = freezerOf(ledger);
  const batches = batchesOf(freezer);
  const plans = plansOf(picture);
  const living = picture.living();
  const counts = [night, addDays(night, -1)].flatMap((each) =>
    thawedOn(each, freezer, living, facts),
  );
  const use = eatenPerDay(plans);
  const drawers = Object.values(freezer?.drawers ?? {}).toSorted((a, b) =>
    drawerKey(a) < drawerKey(b) ? -1 : 1,
  );
  const stock = drawers.map((drawer): StockLine => {
    const own = batches.filter((batch) => sizeKey(batch) === drawerKey(drawer));
    const perDay = use.get(drawerKey(drawer)) ?? 0;
    return {
      kind: drawer.kind,
      size: drawer.size,
      pieces: piecesIn(drawer),
      past: countStock(own, night).past,
      countedOn: drawer.countedAt && facts.nightOf(drawer.countedAt),
      batches: drawer.batches,
      perWeek: 7 * perDay,
      lastsUntil: lastsUntil(own, night, perDay),
    };
  });
  return {
    night,
    weeks,
    notes: drawers.flatMap((drawer, i) => {
      const unthawed = counts
        .filter((count) => sizeKey(count) === drawerKey(drawer))
        .reduce((sum, count) => sum - Math.min(0, inHand(count)), 0);
      return notesOn(drawer, {
        night,
        nightOf: facts.nightOf,
        lastsUntil: stock[i]?.lastsUntil,
        orderDays: protocol.orderDays,
        fedUnthawed: unthawed,
      });
    }),
    stock,
    order: orderList(plans, batches, { from: night, weeks, protocol }),
    sizes: facts.preySizes,
  };
}

/** Pieces expected to be eaten in a day, by size. */
function eatenPerDay(plans: readonly FeedingPlan[]): ReadonlyMap<string, number> {
  const use = new Map<string, number>();
  for (const { meal, acceptance, everyDays } of plans) {
    const key = sizeKey(meal);
    const eaten = (meal.count * chanceEats(acceptance)) / everyDays;
    use.set(key, (use.get(key) ?? 0) + eaten);
  }
  return use;
}

function notesOn(drawer: Drawer, facts: StockFacts): readonly StockNote[] {
  const { kind, size, batches, short } = drawer;
  const past = batches.filter(({ useBy }) => useBy !== undefined && useBy < facts.night);
  const pieces = {
    K1: short,
    K2: 0,
    K3: past.reduce((sum, each) => sum + each.pieces, 0),
    K4: facts.fedUnthawed,
  };
  return stockRules.flatMap(({ id, says, source, check }) => {
    const alarm = check(drawer, facts);
    return alarm ? [{ rule: id, kind, size, pieces: pieces[id], says, source, ...alarm }] : [];
  });
}

/** How each living animal is fed in the weeks to come, with what it is fed now. */
export function plansOf(picture: Picture): readonly FeedingPlan[] {
  const { facts } = picture;
  return picture.living().flatMap((animal) => {
    const meal = mealOf(animal, facts);
    if (meal.state !== 'thawed') return [];
    return [
      {
        meal,
        acceptance: appetiteOf(animal, facts),
        next: dueNight(animal, facts),
        everyDays: planOf(animal, facts).everyDays,
      },
    ];
  });
}
