import { beyondErrorMm } from './error.ts';
import type { Look } from './looks.ts';

/**
 * The looks that one straight line may run through: the newest stretch of growing or of shrinking.
 *
 * Follicles rest at 4–8 mm for weeks or months before they grow, so a line through the resting scans
 * as well is too flat, and its forecast too late. A resting look therefore ends whatever was before
 * it, and is left out itself: growth began somewhere after it. A line cannot turn either, so a turn
 * beyond error begins a new stretch at the largest (or smallest) size before it. A turn within error
 * does not: then the line carries on, and its interval says how little is known.
 *
 * Fingers that feel nothing say only "smaller than small bumps", which a growing follicle may well be:
 * that look is left out and ends nothing.
 */
export function newestStretch(looks: readonly Look[], restBelowMm: number): readonly Look[] {
  let stretch: readonly Look[] = [];
  let rising = true;
  for (const look of looks) {
    const rests = look.found ? look.mm < restBelowMm : look.mm <= restBelowMm;
    if (rests) {
      stretch = [];
      rising = true;
    } else if (look.found) {
      const turn = turnBefore(stretch, rising, look);
      if (turn !== undefined) rising = !rising;
      stretch = [...stretch.slice(turn), look];
    }
  }
  return stretch;
}

/** Where the stretch turned, if this look is beyond error on the other side of its outermost size. */
function turnBefore(stretch: readonly Look[], rising: boolean, look: Look): number | undefined {
  const sign = rising ? 1 : -1;
  const outermost = Math.max(...stretch.map(({ mm }) => sign * mm));
  const at = stretch.findLastIndex(({ mm }) => sign * mm === outermost);
  const extreme = stretch[at];
  return extreme && outermost - sign * look.mm > beyondErrorMm(extreme, look) ? at : undefined;
}
