import type { Clutch } from '../state/clutch.ts';

/** Eggs of a season long past, of which nobody wrote the end, are not asked about for ever. */
const FORGOTTEN_DAYS = 120;

/** Whether nobody has written the end of these eggs. */
export const isOpen = ({ closed, laid, counted }: Clutch): boolean =>
  !closed && laid !== undefined && !counted;

/** Whether anything is still expected of them, so many days after laying. */
export const isExpected = (clutch: Clutch, day: number): boolean =>
  isOpen(clutch) && day <= FORGOTTEN_DAYS;
