import { daysBetween, type Day } from '../core/calendar.ts';
import type { Money } from '../events/sales.ts';
import type { Picture } from '../picture/picture.ts';
import { storyOf, type Sale } from './sale-of.ts';

/** What was asked and paid in one currency. */
export interface Takings {
  readonly currency: string;
  /** Sales with a price on record. */
  readonly count: number;
  readonly totalMinor: number;
}

/** Of a list of whole days: how many there are, the middle one, and the middle half. */
export interface DaysSpread {
  readonly n: number;
  readonly median: number;
  readonly from: number;
  readonly to: number;
}

export interface SaleNumbers {
  /** Sold in the span, without those that came to nothing. */
  readonly sold: number;
  /** Sold in the span, and fallen through or brought back since. */
  readonly ended: number;
  readonly takings: readonly Takings[];
  /** From hatching to the sale, of those whose day of hatching is known. */
  readonly hatchToSale: DaysSpread | undefined;
  /** From being put up for sale to the sale. */
  readonly onOffer: DaysSpread | undefined;
}

/** Every sale on record of animals on record, oldest first; those that came to nothing too. */
export function allSales(picture: Picture): readonly Sale[] {
  return picture
    .animals()
    .flatMap(({ id }) => {
      const { past, sale } = storyOf(id, picture);
      return sale ? [...past, sale] : past;
    })
    .toSorted((a, b) => (a.at < b.at ? -1 : a.at > b.at ? 1 : a.animal < b.animal ? -1 : 1));
}

/** The sales of a span of days, both ends counted. Days are those of the calendar. */
export const salesIn = (picture: Picture, from: Day, to: Day): readonly Sale[] =>
  allSales(picture).filter(({ at }) => dayOf(at) >= from && dayOf(at) <= to);

/** The numbers of a span for a review. Buyers are not asked for, so erasing one changes none of them. */
export function saleNumbers(picture: Picture, from: Day, to: Day): SaleNumbers {
  const all = salesIn(picture, from, to);
  const held = all.filter(({ ended }) => ended === undefined);
  return {
    sold: held.length,
    ended: all.length - held.length,
    takings: takingsOf(held.flatMap(({ price }) => price ?? [])),
    hatchToSale: spreadOf(
      held.flatMap(({ animal, at }) => {
        const hatched = picture.animal(animal)?.hatchedDay;
        return hatched === undefined ? [] : [daysBetween(hatched, dayOf(at))];
      }),
    ),
    onOffer: spreadOf(
      held.flatMap(({ listedAt, at }) =>
        listedAt === undefined ? [] : [daysBetween(dayOf(listedAt), dayOf(at))],
      ),
    ),
  };
}

/** The calendar day of a moment: what a register counts in, and not the room's nights. */
export const dayOf = (at: string): Day => at.slice(0, 10) as Day;

function takingsOf(prices: readonly Money[]): readonly Takings[] {
  return [...new Set(prices.map(({ currency }) => currency))].toSorted().map((currency) => {
    const own = prices.filter((each) => each.currency === currency);
    const totalMinor = own.reduce((sum, { minor }) => sum + minor, 0);
    return { currency, count: own.length, totalMinor };
  });
}

/** The usual definition with a mean between neighbours: Hyndman & Fan 1996, Am Stat 50:361, type 7. */
function spreadOf(days: readonly number[]): DaysSpread | undefined {
  if (days.length === 0) return undefined;
  const sorted = days.toSorted((a, b) => a - b);
  const at = (share: number): number => {
    const place = share * (sorted.length - 1);
    const below = sorted[Math.floor(place)] ?? 0;
    const above = sorted[Math.ceil(place)] ?? below;
    return below + (place - Math.floor(place)) * (above - below);
  };
  return { n: sorted.length, median: at(0.5), from: at(0.25), to: at(0.75) };
}
