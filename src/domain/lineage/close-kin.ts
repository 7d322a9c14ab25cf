import type { Source } from '../sources.ts';
import type { Relatedness } from './relatedness.ts';

export type Closeness = 'close' | 'very close' | undefined;

/** Where young are called closely bred: half siblings as parents, and full siblings. */
export const closeKin = {
  close: 1 / 8,
  veryClose: 1 / 4,
  source: {
    kind: 'practice',
    cite: 'Common practice, no source: keepers’ limits reach from never over 1/8 to siblings for three generations. What harm inbreeding does in this species is hardly known.',
  },
} as const satisfies { close: number; veryClose: number; source: Source };

/** By the most it may be. */
export function closenessOf({ atLeast, atMost = atLeast }: Relatedness): Closeness {
  if (atMost >= closeKin.veryClose) return 'very close';
  return atMost >= closeKin.close ? 'close' : undefined;
}
