/** @example percentWords(0.1375) //=> '13.8 %' */
export const percentWords = (share: number): string => {
  const percent = 100 * share;
  return `${Math.abs(percent) < 20 ? percent.toFixed(1).replace(/\.0$/, '') : percent.toFixed(0)} %`;
};
