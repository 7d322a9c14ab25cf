import type { Lane, LaneMark, LaneWindow } from '../../domain/views/lanes-view.ts';

// The geometry of the season's strip. A female is a cord along the time axis. What happened is on the
// cord: beads as large as her follicles, stitches for locks, knots with a letter for the great days.
// What is coming is a tent pitched on it, from the first day to the last, its ridge over the likeliest.

/** How large the strip is drawn; all lengths in the same unit, pixels or millimetres. */
export interface StripScale {
  readonly perDay: number;
  readonly height: number;
  readonly letter: number;
  readonly line: number;
}

export type Event = LaneWindow['event'];

/** Every event has its own letter and its own filling, so that no colour is needed to tell them apart. */
export const eventLook: Readonly<
  Record<
    Event,
    { readonly letter: string; readonly fill: 'hollow' | 'striped' | 'solid' | 'dashed' }
  >
> = {
  ovulation: { letter: 'O', fill: 'hollow' },
  'pre-lay shed': { letter: 'S', fill: 'striped' },
  eggs: { letter: 'E', fill: 'solid' },
  'first pip': { letter: 'P', fill: 'dashed' },
};

/** Windows that follow each other overlap, so they stand above and hang below the cord in turn. */
const isAbove = (event: Event): boolean => event === 'ovulation' || event === 'eggs';

export const cordY = ({ height }: StripScale): number => height / 2;

/** From the cord to the ridge of a tent. */
const tentRoom = ({ height }: StripScale): number => height * 0.44;

export interface TentShape {
  readonly outline: string;
  /** The pole under the ridge, at the likeliest day. */
  readonly pole: string;
  readonly stripes: string;
  readonly letterX: number;
  readonly letterY: number;
  /** The letter fits inside. */
  readonly holdsLetter: boolean;
}

const SHOULDER = 0.6;

export function tentShape(
  { event, fromAt, likelyAt, toAt }: Pick<LaneWindow, 'event' | 'fromAt' | 'likelyAt' | 'toAt'>,
  scale: StripScale,
): TentShape {
  const { perDay, letter, line } = scale;
  const room = tentRoom(scale);
  const up = isAbove(event) ? -1 : 1;
  const base = cordY(scale) + up * line;
  const [left, ridge, right] = [fromAt * perDay, (likelyAt + 0.5) * perDay, toAt * perDay];
  const [shoulder, top] = [base + up * room * SHOULDER, base + up * room];
  const roofAt = (x: number): number => {
    const part = x < ridge ? (x - left) / (ridge - left) : (right - x) / (right - ridge);
    return shoulder + (top - shoulder) * part;
  };
  const stripes: string[] = [];
  for (let x = left + 2 * line; x < right - line / 2; x += 2.5 * line) {
    stripes.push(`M${near(x)} ${near(base)}V${near(roofAt(x))}`);
  }
  const holdsLetter = right - left > letter * 1.15;
  return {
    outline: `M${near(left)} ${near(base)}V${near(shoulder)}L${near(ridge)} ${near(top)}L${near(right)} ${near(shoulder)}V${near(base)}Z`,
    pole: `M${near(ridge)} ${near(base)}V${near(top)}`,
    stripes: stripes.join(''),
    letterX: near(
      holdsLetter ? within(ridge, left + 0.6 * letter, right - 0.6 * letter) : right + letter * 0.6,
    ),
    letterY: near(base + up * room * 0.36),
    holdsLetter,
  };
}

/** A bead's radius, for a size in millimetres: the beads on a cord grow as she does. */
export const beadRadius = (mm: number, { letter }: StripScale): number =>
  near(letter * (0.13 + 0.4 * Math.min(1, mm / 45)));

export const knotRadius = ({ letter }: StripScale): number => near(letter * 0.66);

export const markX = ({ at }: Pick<LaneMark, 'at'>, { perDay }: StripScale): number =>
  near((at + 0.5) * perDay);

/** A stitch for a lock, from the cord down to the line that shows the visit. */
export const stitchLength = (scale: StripScale): number => near(tentRoom(scale) * 0.34);

/** Where a cord begins, turns from what was into what is coming, and ends. */
export function cordSpan(
  { marks, stays, windows }: Pick<Lane, 'marks' | 'stays' | 'windows'>,
  tonightAt: number,
  { perDay }: StripScale,
): { readonly start: number; readonly tonight: number; readonly end: number } {
  const starts = [...marks.map(({ from }) => from), ...stays.map(({ from }) => from)];
  const ends = windows.map(({ toAt }) => toAt);
  return {
    start: near(Math.min(tonightAt, ...starts) * perDay),
    tonight: near((tonightAt + 0.5) * perDay),
    end: near(Math.max(tonightAt + 0.5, ...ends) * perDay),
  };
}

const within = (value: number, low: number, high: number): number =>
  Math.min(high, Math.max(low, value));

const near = (value: number): number => Math.round(value * 100) / 100;
