const DAY_MS = 86_400_000;

const two = (n: number): string => String(n).padStart(2, '0');

/**
 * The date that a day count stands for, as ISO 8601 writes it.
 *
 * Counted from 1900, the count has a 29 February 1900 that never was: days before it are one on,
 * and 60 is that day. Source: ECMA-376 Part 1, 18.17.4.1.
 *
 * Undefined: no such day.
 *
 * @example serialText(45_504.875, false) //=> '2024-07-31 21:00'
 */
export function serialText(serial: number, from1904: boolean): string | undefined {
  if (!(serial >= 0 && serial < 2_958_466)) return undefined;
  const seconds = Math.round(serial * 86_400);
  const days = Math.floor(seconds / 86_400);
  const rest = seconds - days * 86_400;
  const clock = `${two(Math.floor(rest / 3_600))}:${two(Math.floor((rest % 3_600) / 60))}`;
  if (days === 0) return clock;
  if (!from1904 && days === 60) return undefined;
  const epoch = from1904 ? Date.UTC(1904, 0, 1) : Date.UTC(1899, 11, days < 60 ? 31 : 30);
  const day = new Date(epoch + days * DAY_MS).toISOString().slice(0, 10);
  return rest === 0 ? day : `${day} ${clock}`;
}
