/** @example tenth(27.24) //=> 27.2 */
export const tenth = (value: number): number => Math.round(value * 10) / 10;
