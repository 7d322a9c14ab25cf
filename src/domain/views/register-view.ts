import type { Day } from '../core/calendar.ts';
import { dateWords } from '../core/day-words.ts';
import type { AnimalId } from '../core/ids.ts';
import type { Picture } from '../picture/picture.ts';
import { staysIn, type Span } from '../register/tables.ts';
import { showMoney } from '../sale/money.ts';
import { dayOf, saleNumbers, salesIn, type DaysSpread } from '../sale/sale-numbers.ts';

export interface RegisterView {
  readonly kept: number;
  /** What came and went in the span, each with how many: "hatched here", 6. */
  readonly came: readonly (readonly [string, number])[];
  readonly left: readonly (readonly [string, number])[];
  readonly sales: readonly {
    readonly animal: AnimalId;
    readonly name: string;
    readonly on: Day;
    readonly price?: string | undefined;
    readonly ended?: string | undefined;
  }[];
  /** One sentence each, every number with how many it rests on. */
  readonly numbers: readonly string[];
  readonly isWhole: boolean;
}

/** The register of a span of days, both ends counted, as a screen shows it before it is a file. */
export function registerView(span: Span, picture: Picture): RegisterView {
  const stays = staysIn(span, picture);
  const isIn = (day: Day | undefined) => day !== undefined && day >= span.from && day <= span.to;
  return {
    kept: new Set(stays.map(({ animal }) => animal)).size,
    came: counted(stays.filter(({ from }) => isIn(from)).map(({ came }) => came)),
    left: counted(stays.filter(({ to }) => isIn(to)).map(({ left }) => left ?? 'left')),
    sales: salesIn(picture, span.from, span.to).map(({ animal, at, price, ended }) => ({
      animal,
      name: picture.facts.nameOf(animal),
      on: dayOf(at),
      price: price && showMoney(price),
      ended: ended && `${ended.why}, ${dateWords(dayOf(ended.at))}`,
    })),
    numbers: numberWords(span, picture),
    isWhole: picture.ledger.hasHistory,
  };
}

const counted = (words: readonly string[]): readonly (readonly [string, number])[] =>
  [...new Set(words)]
    .toSorted()
    .map((word) => [word, words.filter((each) => each === word).length] as const);

function numberWords({ from, to }: Span, picture: Picture): readonly string[] {
  const { sold, ended, takings, hatchToSale, onOffer } = saleNumbers(picture, from, to);
  return [
    `${sold} sold${ended > 0 ? `, and ${ended} more that came to nothing` : ''}.`,
    ...takings.map(({ currency, count, totalMinor }) => {
      const total = showMoney({ minor: totalMinor, currency });
      return `${total} in all, of ${count} ${count === 1 ? 'sale' : 'sales'} with a price.`;
    }),
    ...spreadWords('From hatching to the sale', hatchToSale),
    ...spreadWords('From being put up to the sale', onOffer),
  ];
}

/** Of fewer than four, the middle half says nothing. */
const LEAST_FOR_HALF = 4;

function spreadWords(what: string, spread: DaysSpread | undefined): readonly string[] {
  if (!spread) return [];
  const { n, median, from, to } = spread;
  const half = n >= LEAST_FOR_HALF ? `; half of them ${Math.round(from)} to ${Math.round(to)}` : '';
  return [`${what}: ${Math.round(median)} days in the middle${half} (${n} known).`];
}
