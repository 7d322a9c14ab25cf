import type { Picture } from '../picture/picture.ts';
import { dueMoves } from '../rotation/due-moves.ts';

/** How many males are to be moved tonight. */
export interface MoveCounts {
  readonly ins: number;
  readonly outs: number;
}

export function moveCounts(picture: Picture): MoveCounts {
  const { ins, outs } = dueMoves(picture);
  return { ins: ins.length, outs: outs.length };
}
