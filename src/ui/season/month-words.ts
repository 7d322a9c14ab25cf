const MONTHS = 'Jan Feb Mar Apr May Jun Jul Aug Sept Oct Nov Dec'.split(' ');

/** A month at the head of the strip; January says the year. */
export const monthWords = ({
  month,
  year,
}: {
  readonly month: number;
  readonly year: number;
}): string => `${MONTHS[month - 1] ?? ''}${month === 1 ? ` ${year}` : ''}`;
