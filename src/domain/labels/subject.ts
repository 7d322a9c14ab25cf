import type { LabelCode } from '../core/code.ts';

/** What one label is about, in the words that will stand on it. No buyers: labels travel. */
export interface LabelSubject {
  readonly code: LabelCode;
  readonly kind: 'tub' | 'animal' | 'room' | 'clutch' | 'incubator';
  /** Where it stands, as `B4-2`. On a tub's label this is the largest text. */
  readonly position?: string;
  readonly title: string;
  /** Whether it came out of a printer before. */
  readonly wasPrinted?: boolean;
  readonly lines: readonly string[];
}

/** A code in two groups, which is how people read and say seven symbols: `7KQ 2M9X`. */
export const groupedCode = (code: LabelCode): string => `${code.slice(0, 3)} ${code.slice(3)}`;
