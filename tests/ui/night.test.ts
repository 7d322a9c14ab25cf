import { expect, test } from 'vitest';
import type { Day } from '../../src/domain/core/calendar.ts';
import { dateWords } from '../../src/domain/core/day-words.ts';
import { nightWords } from '../../src/ui/night.ts';

// The platform's own words for British English (Unicode CLDR) are the second opinion.
const platform = (options: Intl.DateTimeFormatOptions) =>
  new Intl.DateTimeFormat('en-GB', { ...options, timeZone: 'UTC' });
const weekday = platform({ weekday: 'short' });
const month = platform({ day: 'numeric', month: 'short' });
const full = platform({ day: 'numeric', month: 'short', year: 'numeric' });

test('every night of nine years is named as the platform would name it', () => {
  const from = Date.UTC(2023, 0, 1, 12);
  const days = Array.from({ length: 9 * 366 }, (_, i) => new Date(from + i * 86_400_000));
  const as = (name: (day: Day) => string) =>
    days.map((date) => name(date.toISOString().slice(0, 10) as Day));
  expect(as(nightWords)).toEqual(days.map((d) => `${weekday.format(d)} ${month.format(d)}`));
  expect(as(dateWords)).toEqual(days.map((d) => full.format(d)));
});
