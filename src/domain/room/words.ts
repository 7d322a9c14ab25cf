import type { Measured } from '../state/readings.ts';

/** A temperature to the tenth, as thermometers show it. */
export const showC = (tempC: number): string => `${tempC.toFixed(1)} °C`;

/** @example hoursWords(190) //=> '3 h 10 min' */
export function hoursWords(minutes: number): string {
  const whole = Math.round(minutes);
  const [days, hours, rest] = [
    Math.floor(whole / 1440),
    Math.floor((whole % 1440) / 60),
    whole % 60,
  ];
  if (days > 0) return hours === 0 ? `${days} d` : `${days} d ${hours} h`;
  if (hours === 0) return `${rest} min`;
  return rest === 0 ? `${hours} h` : `${hours} h ${rest} min`;
}

/** @example agoWords(4_000) //=> '2 days ago' */
export function agoWords(minutes: number): string {
  if (minutes < 1) return 'just now';
  return minutes < 2 * 1440
    ? `${hoursWords(minutes)} ago`
    : `${Math.floor(minutes / 1440)} days ago`;
}

export const madeBy = ({ sensor }: Pick<Measured, 'sensor'>): string =>
  sensor === undefined ? 'By hand' : sensor;
