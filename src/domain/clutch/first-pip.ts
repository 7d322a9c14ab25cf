import { instantMs } from '../core/calendar.ts';
import type { Clutch } from '../state/clutch.ts';

/** The first slit, cut or hatchling of a clutch. */
export function firstPip({ hatching, hatched }: Clutch) {
  const pips = [...hatching.filter(({ seen }) => seen !== 'nothing yet'), ...hatched];
  return pips.toSorted((a, b) => instantMs(a.at) - instantMs(b.at))[0];
}
