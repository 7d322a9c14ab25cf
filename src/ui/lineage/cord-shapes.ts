// The geometry of a lineage. Every animal is a knot on a cord; the cords of its parents are tied in
// below it, one step further in with every generation, and end in a fray where parents are not known.

export const STEP = 22;
export const KNOT_Y = 26;
const FIRST_X = 14;
const KNOT = 7;

export const laneX = (generation: number): number => FIRST_X + generation * STEP;

export interface Cords {
  /** Lanes that pass by on their way to a parent further down. */
  readonly passing: readonly number[];
  /** Its own cord goes on below the knot. */
  readonly goesOn: boolean;
}

/** What is drawn beside each row, from the generations of all rows in reading order. */
export function cordsOf(generations: readonly number[]): readonly Cords[] {
  return generations.map((generation, row) => {
    const below = generations.slice(row + 1);
    const passing = Array.from({ length: generation }, (_, lane) => lane).filter((lane) => {
      const next = below.findIndex((each) => each <= lane + 1);
      return next >= 0 && below[next] === lane + 1;
    });
    return { passing, goesOn: below[0] === generation + 1 };
  });
}

/** From the child’s lane at the top of the row to the knot. */
export function joinPath(generation: number): string {
  const [from, to] = [laneX(generation - 1), laneX(generation)];
  return `M${from} 0C${from} ${KNOT_Y * 0.7} ${from + STEP * 0.3} ${KNOT_Y} ${to - KNOT} ${KNOT_Y}`;
}

/** Round for females, square for males, on its corner where the sex is not known. */
export function knotPath(sex: 'female' | 'male' | 'unknown', generation: number): string {
  const x = laneX(generation);
  const r = KNOT;
  if (sex === 'female') {
    return `M${x - r} ${KNOT_Y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0Z`;
  }
  if (sex === 'male') {
    const half = r * 0.9;
    return `M${x - half} ${KNOT_Y - half}h${2 * half}v${2 * half}h${-2 * half}Z`;
  }
  return `M${x} ${KNOT_Y - r}L${x + r} ${KNOT_Y}L${x} ${KNOT_Y + r}L${x - r} ${KNOT_Y}Z`;
}

/** A cord that comes apart: below a knot, or in the place of one. */
export function frayPath(generation: number, isBelow: boolean): string {
  const x = laneX(generation);
  if (!isBelow) {
    const from = x - KNOT;
    return [-6, 0, 6]
      .map((dy) => `M${from} ${KNOT_Y}l${2 * KNOT - Math.abs(dy) * 0.4} ${dy}`)
      .join('');
  }
  const top = KNOT_Y + KNOT;
  return [-5, 0, 5].map((dx) => `M${x} ${top}l${dx} ${11 - Math.abs(dx) * 0.4}`).join('');
}
