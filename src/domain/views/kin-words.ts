import type { AnimalId } from '../core/ids.ts';
import { closenessOf, type Closeness } from '../lineage/close-kin.ts';
import type { Relatedness } from '../lineage/relatedness.ts';

/** Whose inbreeding is told: an animal's own, or that of a pair's young. */
export type Bred = 'animal' | 'pair';

/** An inbreeding in words, with what it rests on. */
export interface KinWords {
  /** "F 1/8 (12.5 %)" */
  readonly figure: string;
  /** How much is known, and what is open; a sentence each. */
  readonly rests: readonly string[];
  readonly closeness: Closeness;
}

/** @example shareWords(0.125) //=> '1/8 (12.5 %)' */
export function shareWords(share: number): string {
  if (share === 0) return '0';
  const percent = `${Number((share * 100).toPrecision(3))} %`;
  // By descent it is a whole number of halves of halves; long ones are no help.
  for (let parts = 2; parts <= 64; parts *= 2) {
    if (Number.isInteger(share * parts)) return `${share * parts}/${parts} (${percent})`;
  }
  return percent;
}

/** @example depthWords(2.5) //=> 'Parents known for 2.5 generations.' */
export function depthWords(generations: number): string {
  if (generations === 0) return 'No parent is known.';
  const n = Number(generations.toFixed(2));
  return `Parents known for ${n === 1 ? '1 generation' : `${n} generations`}.`;
}

const MANY_OPEN = 'Too many fathers are open to reckon what it may be at most.';

export function kinWords(
  related: Relatedness,
  bred: Bred,
  nameOf: (id: AnimalId) => string,
): KinWords {
  const { atLeast, atMost, generations, unknown, open } = related;
  const whose = bred === 'animal' ? 'F' : 'F of the young';
  const isNothingKnown = unknown && atLeast === 0 && (atMost ?? 0) === 0;
  const figure = isNothingKnown
    ? `${whose} unknown`
    : atMost === atLeast
      ? `${whose} ${shareWords(atLeast)}${atLeast === 0 ? ' as far as is known' : ''}`
      : atMost === undefined
        ? `${whose} at least ${shareWords(atLeast)}`
        : `${whose} ${shareWords(atLeast)} to ${shareWords(atMost)}`;
  const depth =
    bred === 'pair' && generations === 0 ? 'Of one, no parent is known.' : depthWords(generations);
  const fathers = open.map(
    ({ young, sires }) =>
      `The father of ${young.map(nameOf).join(', ')} is ${sires.map(nameOf).join(' or ')}.`,
  );
  return {
    figure,
    rests: [
      depth,
      ...(isNothingKnown ? ['Unknown, not unrelated.'] : []),
      ...(atMost === atLeast ? [] : fathers),
      ...(atMost === undefined ? [MANY_OPEN] : []),
    ],
    closeness: closenessOf(related),
  };
}
