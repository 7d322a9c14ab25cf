import { appetiteValues } from './appetite-values.ts';
import { clutchValues } from './clutch-values.ts';
import { follicleValues } from './follicle-values.ts';
import { roomValues } from './room-values.ts';
import type { ProtocolKey } from './values.ts';
import { weightValues } from './weight-values.ts';
import { windowValues } from './window-values.ts';

export interface ValueGroup {
  readonly title: string;
  readonly keys: readonly ProtocolKey[];
}

const keysOf = <Key extends ProtocolKey>(values: Readonly<Record<Key, unknown>>) =>
  Object.keys(values) as Key[];

/** The values under plain headings, in the order in which they are read. Each stands under one. */
export const valueGroups: readonly ValueGroup[] = [
  {
    title: 'Feeding',
    keys: [
      'hatchlingBelowG',
      'adultFromG',
      'feedHatchlingDays',
      'feedGrowerDays',
      'feedFemaleDays',
      'feedFemaleSeasonDays',
      'feedMaleDays',
      'feedMaleSeasonDays',
      'settleInDays',
      'feedOverdueDays',
      'leftHours',
      'blueHoldDays',
      'regurgitationHoldDays',
      'firstMealAfterHoldShare',
    ],
  },
  {
    title: 'Weighing',
    keys: ['weighDays', 'weighOftenDays', 'maleLossWatchShare', 'maleLossStopShare'],
  },
  {
    title: 'Who breeds',
    keys: [
      'femaleFromG',
      'femaleFromMonths',
      'maleFromG',
      'maleFromMonths',
      'recoveredShare',
      'recoveringDays',
    ],
  },
  {
    title: 'Visits',
    keys: [
      'maleStayDays',
      'maleForgottenDays',
      'maleRestDays',
      'maleThinRestDays',
      'maleFemales',
      'youngMaleFemales',
      'pairAgainDays',
      'mealToPairingDays',
      'pairFromMm',
      'pairStopMm',
    ],
  },
  {
    title: 'Follicles',
    keys: [
      'firstScanMonth',
      'scanSmallDays',
      'scanGrowingDays',
      'scanLargeDays',
      'largeFromMm',
      'dailyLooksFromMm',
      'signsFreshDays',
      ...keysOf(follicleValues),
    ],
  },
  {
    title: 'Eggs and laying',
    keys: [
      'preLayFromMm',
      'ovulationToShedFromDays',
      'ovulationToShedUntilDays',
      'nestBoxFromOvulationDays',
      'eggLookFromShedDays',
      'eggLookFromOvulationDays',
      'layLateFromShedDays',
      'layUrgentFromShedDays',
      'layLateFromOvulationDays',
      'layUrgentFromOvulationDays',
    ],
  },
  { title: 'Clutches and young', keys: keysOf(clutchValues) },
  { title: 'Windows', keys: keysOf(windowValues) },
  { title: 'Weights and growth', keys: keysOf(weightValues) },
  { title: 'Appetite and prey', keys: keysOf(appetiteValues) },
  { title: 'Room', keys: keysOf(roomValues) },
  { title: 'Household', keys: ['rolloverHour', 'eveningHour', 'backupDays'] },
];
