import type { AnimalId } from '../../domain/core/ids.ts';
import type { PairSide } from '../../domain/genes-book/pair-sides.ts';

/** `#/pair/<female>/<male>…`: snakes by id, an imagined one as `words`, no male at all as `none`. */
export interface PairRoute {
  /** Undefined: imagined. */
  readonly female: AnimalId | undefined;
  /** Several: one of them is the father. Empty: none. */
  readonly males: readonly (AnimalId | undefined)[];
}

const NONE = 'none';
const WORDS = 'words';

const idIn = (part: string): AnimalId | undefined =>
  part === WORDS || part === '' ? undefined : (part as AnimalId);

/** From the parts after `pair`. */
export function readPairRoute([female = WORDS, ...males]: readonly string[]): PairRoute {
  if (males[0] === NONE) return { female: idIn(female), males: [] };
  return { female: idIn(female), males: males.length === 0 ? [undefined] : males.map(idIn) };
}

export function writePairRoute({ female, males }: PairRoute): string {
  const sires = males.length === 0 ? [NONE] : males.map((male) => male ?? WORDS);
  return ['/pair', female ?? WORDS, ...sires].join('/');
}

export const sideOf = (id: AnimalId | undefined, text: string): PairSide =>
  id === undefined ? { kind: 'words', text } : { kind: 'snake', id };
