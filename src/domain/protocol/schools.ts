import type { SourceId } from '../sources.ts';
import type { Protocol } from './values.ts';

/** A school of practice: the numbers in which it differs from the defaults. */
export interface School {
  readonly id: 'strict' | 'middle' | 'permissive';
  readonly name: string;
  readonly says: string;
  readonly source: SourceId;
  /** In the units of the values. */
  readonly values: Readonly<Partial<Protocol>>;
}

/**
 * What keepers do differently, where they give figures for it. The defaults are the middle one's.
 *
 * A figure that both schools leave open is in neither: the default stays.
 */
export const schools: readonly School[] = [
  {
    id: 'strict',
    name: 'Strict',
    says: 'Larger and older animals, short visits, long rests, an early stop when he loses weight.',
    source: 'schools',
    values: {
      femaleFromG: 1_800,
      femaleFromMonths: 42,
      maleFromG: 800,
      maleFromMonths: 18,
      maleStayDays: 1,
      maleForgottenDays: 3,
      maleRestDays: 7,
      maleThinRestDays: 10,
      maleFemales: 3,
      youngMaleFemales: 1,
      mealToPairingDays: 5,
      maleLossWatchShare: 0.05,
      maleLossStopShare: 0.1,
      weighOftenDays: 7,
    },
  },
  {
    id: 'middle',
    name: 'Middle',
    says: 'What most keepers do: the numbers this program begins with.',
    source: 'schools',
    values: {},
  },
  {
    id: 'permissive',
    name: 'Permissive',
    says: 'Lighter and younger animals, longer visits, short rests. Watch their weight the more.',
    source: 'schools',
    values: {
      femaleFromG: 1_200,
      femaleFromMonths: 18,
      maleFromG: 350,
      maleFromMonths: 6,
      maleStayDays: 5,
      maleForgottenDays: 7,
      maleRestDays: 2,
      maleThinRestDays: 4,
      maleFemales: 12,
      youngMaleFemales: 4,
      mealToPairingDays: 2,
      maleLossWatchShare: 0.15,
      maleLossStopShare: 0.2,
    },
  },
];
