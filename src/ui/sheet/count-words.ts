/** @example count(2, 'row', 'rows') //=> '2 rows' */
export const count = (n: number, one: string, many: string): string =>
  `${n.toLocaleString('en')} ${n === 1 ? one : many}`;
