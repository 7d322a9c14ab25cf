import type { SignStatistic } from '../season/sign-statistics.ts';

/** A sign's history, ready to show. */
export interface SignLine {
  readonly sign: string;
  readonly says: string;
}

/** "In your records …", with what it was counted in; says so where that is too little. */
export function signLine({ sign, seenIn, cycles, share, lead }: SignStatistic): SignLine {
  const counted = `${seenIn} of ${cycles} cycles`;
  if (!lead) return { sign, says: `Seen in ${counted}: too few to say when it comes.` };
  const { latest, middle, earliest } = lead;
  const percent = `${Math.floor(100 * share.low)}–${Math.ceil(100 * share.high)} %`;
  const when =
    latest === earliest
      ? `${latest} days before ovulation`
      : `${latest}–${earliest} days before ovulation, the middle one ${middle},`;
  return { sign, says: `In your records it came ${when} in ${counted} (${percent}).` };
}
