/** Months as they stand beside a day; the browser’s own words are slow to get ready. */
export const shortMonths = [
  'Jan',
  'Feb',
  'Mar',
  'Apr',
  'May',
  'Jun',
  'Jul',
  'Aug',
  'Sept',
  'Oct',
  'Nov',
  'Dec',
] as const;

/** @example monthName(9) //=> 'Sept' */
export const monthName = (month: number): string => shortMonths[month - 1] ?? '?';
