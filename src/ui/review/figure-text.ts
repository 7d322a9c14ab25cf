import { percent } from '../../domain/views/chance-words.ts';
import type { RateFigure, SpreadFigure } from '../../domain/views/review-view.ts';
import { spreadWords } from '../../domain/views/review-words.ts';
import type { OwnInterval } from '../../domain/windows/own-interval.ts';

/** Under so many cases a share is a hint and no more. */
const FEW = 10;

/** @example shareText({ hits: 15, of: 23, … }) //=> '65 %' */
export const shareText = ({ hits, of }: Pick<RateFigure, 'hits' | 'of'>): string =>
  of === 0 ? '–' : percent(hits / of);

/** Rounded outwards, so that it holds what was meant. @example intervalText(…) //=> '44–82 %' */
export const intervalText = ({ of, interval: { low, high } }: RateFigure): string =>
  of === 0 ? '–' : `${Math.floor(100 * low)}–${Math.ceil(100 * high)} %`;

export const isFew = ({ of }: Pick<RateFigure, 'of'>): boolean => of > 0 && of < FEW;

const half = (value: number): string => String(Math.round(value * 2) / 2);

export function spreadTexts({ name, median, quartiles, least, most, n }: SpreadFigure) {
  const { unit, of } = spreadWords[name];
  const say = unit === '%' ? (value: number) => value.toFixed(1) : half;
  return {
    median: `${say(median)} ${unit}`,
    middle: quartiles ? `${say(quartiles[0])} to ${say(quartiles[1])} ${unit}` : undefined,
    range: least === most ? `${say(least)} ${unit}` : `${say(least)} to ${say(most)} ${unit}`,
    of: `${n} ${of}`,
  };
}

/** Under four hundredths it is told as it is, and never as none. */
export function chanceText(p: number): string {
  if (p < 0.001) return 'under 0.001';
  return p < 0.095 ? p.toFixed(3) : p.toFixed(2);
}

/** How many own steps took each number of days; one known only between two looks counts in parts. */
export function byDay(own: readonly OwnInterval[]): ReadonlyMap<number, number> {
  const days = new Map<number, number>();
  for (const { earliestDays, latestDays } of own) {
    const part = 1 / (latestDays - earliestDays + 1);
    for (let day = earliestDays; day <= latestDays; day += 1) {
      days.set(day, (days.get(day) ?? 0) + part);
    }
  }
  return days;
}
