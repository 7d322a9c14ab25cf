import type { LinearModel } from '../../domain/rotation/linear-model.ts';

/** The model in the plain text that solvers read (CPLEX LP format). Variables are x0, x1, … */
export function lpText({ worths, rows, fixed }: LinearModel): string {
  const names = worths.map((_, at) => `x${at}`);
  return [
    'Maximize',
    ` worth: ${sum(worths.map((worth, at) => [at, worth]))}`,
    'Subject To',
    ...rows.map(
      ({ terms, atMost }, i) =>
        ` r${i}: ${sum(terms.map(({ at, times }) => [at, times]))} <= ${atMost}`,
    ),
    'Bounds',
    ...names.map((name, at) => ` ${fixed.includes(at) ? 1 : 0} <= ${name} <= 1`),
    'Generals',
    ...names.map((name) => ` ${name}`),
    'End',
    '',
  ].join('\n');
}

const sum = (terms: readonly (readonly [number, number])[]): string =>
  terms.map(([at, times]) => `${times < 0 ? '-' : '+'} ${Math.abs(times)} x${at}`).join('\n ');
