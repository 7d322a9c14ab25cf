import { monthName } from '../../domain/core/month-names.ts';

/** A month at the head of the strip; January says the year. */
export const monthWords = ({
  month,
  year,
}: {
  readonly month: number;
  readonly year: number;
}): string => `${monthName(month)}${month === 1 ? ` ${year}` : ''}`;
