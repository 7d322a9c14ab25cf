import { addDays, daysBetween, roomNight, type Day } from '../src/domain/core/calendar.ts';
import type { DeviceId } from '../src/domain/core/ids.ts';
import type { EventOf, RackEvent } from '../src/domain/events/event.ts';
import type { Outcome, Prey } from '../src/domain/events/feeding.ts';
import { openLogbook } from './logbook.ts';
import type { Nights } from './nights.ts';
import { chanceFrom } from './random.ts';
import type { Scenario } from './scenario.ts';

/** The phone that lies on the freezer. */
const DEVICE = 'DEM03' as DeviceId;
/** The freezer is written down for the last so many nights; deliveries come every four weeks. */
const KEPT_NIGHTS = 56;
const DELIVERY_NIGHTS = 28;

type Size = Pick<Prey, 'kind' | 'size'>;

interface Use extends Size {
  /** By number of the night: pieces taken out, and what of them went to no snake. */
  readonly thawed: Map<number, number>;
  readonly binned: Map<number, number>;
}

/**
 * What the freezer saw of the last eight weeks: written from the meals there were, on a third phone and
 * with chance of its own, so that the snakes' lives do not hang on it.
 */
export function tellPantry(
  events: readonly RackEvent[],
  nights: Nights,
  scenario: Scenario,
): readonly RackEvent[] {
  const chance = chanceFrom(scenario.seed + 3);
  const book = openLogbook(scenario.offsetMin, chance, DEVICE);
  const begin = Math.max(1, nights.total - KEPT_NIGHTS);
  const uses = usesIn(events, nights, begin);
  const evening = (night: number) => nights.ms(night, 21 * 60 + 3);
  const morning = (night: number) => nights.ms(night, 32 * 60 + 5);
  const useBy = (night: number, days: number): Day => addDays(nights.day(night), days);
  book.pace(6);

  book.wait(evening(begin));
  book.write({ type: 'prey-size-stated', kind: 'rat', size: 'small', eachG: 68 });
  book.write({ type: 'prey-size-stated', kind: 'rat', size: 'large', eachG: null });
  const male = malesOf(events)[0];
  if (male !== undefined) {
    const why = 'takes mice in winter';
    const exceptions = [
      { months: [12, 2] as [number, number], kind: 'mouse' as const, size: 'adult', count: 2, why },
    ];
    book.write({ type: 'feeding-excepted', animal: male, exceptions });
    book.write({
      type: 'started-smaller',
      animal: male,
      why: 'eats well, and is no longer growing',
    });
  }
  for (const use of uses) {
    const { kind, size } = use;
    book.write({ type: 'prey-counted', kind, size, pieces: needed(use, begin) + 4 });
  }
  const [common] = uses;
  for (let night = begin; night < nights.total; night += 1) {
    const isDelivery = night === begin + DELIVERY_NIGHTS - 2;
    book.wait(evening(night));
    for (const use of isDelivery ? uses : []) {
      const { kind, size } = use;
      const pieces = needed(use, night) + chance.whole(6, 14);
      const lot = `Lot ${chance.whole(1_000, 9_999)}`;
      book.write({
        type: 'prey-stocked',
        kind,
        size,
        pieces,
        useBy: useBy(night, 240),
        batch: lot,
      });
    }
    if (common && night === begin + DELIVERY_NIGHTS + 5) {
      const { kind, size } = common;
      const why = 'spoiled' as const;
      book.write({ type: 'prey-thrown-out', kind, size, pieces: 2, from: 'freezer', why });
    }
    for (const { kind, size, thawed } of uses) {
      const pieces = thawed.get(night) ?? 0;
      if (pieces > 0) book.write({ type: 'prey-thawed', kind, size, pieces });
    }
    book.wait(morning(night));
    for (const { kind, size, binned } of uses) {
      const pieces = binned.get(night) ?? 0;
      const why = 'left over' as const;
      if (pieces > 0)
        book.write({ type: 'prey-thrown-out', kind, size, pieces, from: 'thawed', why });
    }
  }
  return book.events;
}

const needed = ({ thawed }: Use, from: number): number =>
  [...thawed].reduce(
    (sum, [night, pieces]) =>
      night >= from && night < from + DELIVERY_NIGHTS ? sum + pieces : sum,
    0,
  );

const malesOf = (events: readonly RackEvent[]) =>
  events.flatMap((event) =>
    event.type === 'arrived' && event.sex === 'male' ? [event.animal] : [],
  );

/** Thawed meals by size, the most used first. */
function usesIn(events: readonly RackEvent[], nights: Nights, begin: number): readonly Use[] {
  const uses = new Map<string, Use>();
  const settled = settledIn(events);
  const struck = new Set(
    events.flatMap((event) => (event.type === 'struck' ? [event.target] : [])),
  );
  for (const event of events) {
    if (event.type !== 'meal-offered' || event.prey.state !== 'thawed') continue;
    if (struck.has(event.id)) continue;
    const night = daysBetween(nights.day(0), roomNight(event.at, 12));
    if (night < begin || night >= nights.total) continue;
    const { kind, size, count } = event.prey;
    const key = `${kind} ${size}`;
    const use = uses.get(key) ?? { kind, size, thawed: new Map(), binned: new Map() };
    uses.set(key, use);
    use.thawed.set(night, (use.thawed.get(night) ?? 0) + count);
    const outcome = settled.get(event.id) ?? event.outcome;
    if (outcome === 'refused') use.binned.set(night, (use.binned.get(night) ?? 0) + count);
  }
  return [...uses.values()].toSorted((a, b) => b.thawed.size - a.thawed.size);
}

const settledIn = (events: readonly RackEvent[]): ReadonlyMap<string, Outcome> =>
  new Map(
    events
      .filter((event): event is EventOf<'meal-settled'> => event.type === 'meal-settled')
      .map(({ offer, outcome }) => [offer, outcome]),
  );
