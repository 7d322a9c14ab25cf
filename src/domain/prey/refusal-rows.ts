import type { ProtocolKey } from '../protocol/values.ts';
import type { SourceId } from '../sources.ts';

/** Where a female stands, as far as her appetite goes. */
export type RefusalPhase = 'gravid' | 'brooding' | 'after laying';
export type RefusalClass = 'grower' | 'female' | 'male';

/** What a refusal means in one situation. The first row that fits holds. */
export interface RefusalRow {
  readonly id: string;
  /** All that is given must be so; of lists, one. */
  readonly when: {
    readonly classes?: readonly RefusalClass[];
    readonly isMale?: true;
    readonly phases?: readonly RefusalPhase[];
    readonly months?: readonly number[];
    readonly massFromG?: number;
    readonly follicleFromMm?: ProtocolKey;
    readonly inBlue?: true;
    readonly arrivedWithinDays?: ProtocolKey;
  };
  readonly means: 'good sign' | 'usual' | 'not usual';
  readonly says: string;
  /** Watched from so many refusals in a row, or after so many days. */
  readonly watch?: { readonly refusals?: ProtocolKey; readonly days?: ProtocolKey };
  /** Acted upon from so many refusals, days, or so much lost. */
  readonly act: {
    readonly refusals?: ProtocolKey;
    readonly days?: ProtocolKey;
    readonly lost?: ProtocolKey;
  };
  readonly source: SourceId;
}

const WINTER = [11, 12, 1, 2, 3];
const SUMMER = [4, 5, 6, 7, 8, 9, 10];

export const refusalRows: readonly RefusalRow[] = [
  {
    id: 'brooding',
    when: { phases: ['brooding'] },
    means: 'usual',
    says: 'A female with her eggs fasts, for about two months.',
    act: { lost: 'refusalLossShare' },
    source: 'gravidMeals',
  },
  {
    id: 'gravid',
    when: { phases: ['gravid'] },
    means: 'usual',
    says: 'From ovulation to laying most refuse.',
    act: { lost: 'refusalLossShare' },
    source: 'gravidMeals',
  },
  {
    id: 'after laying',
    when: { phases: ['after laying'] },
    means: 'usual',
    says: 'A female eats again within about three weeks of laying.',
    act: { days: 'postLayRefusalDays', lost: 'paceLossShare' },
    source: 'recovery',
  },
  {
    id: 'ripe follicles',
    when: { classes: ['female', 'grower'], follicleFromMm: 'preLayFromMm' },
    means: 'good sign',
    says: 'With follicles this large, a refusal is a good sign: ovulation is near.',
    act: { lost: 'refusalLossShare' },
    source: 'largeFollicle',
  },
  {
    id: 'in blue',
    when: { inBlue: true },
    means: 'usual',
    says: 'In blue, most refuse for 7 to 14 days.',
    act: { lost: 'refusalLossShare' },
    source: 'inBlue',
  },
  {
    id: 'new arrival',
    when: { arrivedWithinDays: 'arrivalRefusalActDays' },
    means: 'usual',
    says: 'A new arrival may refuse for 2 to 4 weeks.',
    watch: { days: 'arrivalRefusalDays' },
    act: { days: 'arrivalRefusalActDays', lost: 'refusalLossShare' },
    source: 'newArrival',
  },
  {
    id: 'male in winter',
    when: { isMale: true, massFromG: 500, months: WINTER },
    means: 'usual',
    says: 'Males from about 500 g often fast from November to March.',
    act: { lost: 'refusalLossShare' },
    source: 'appetite',
  },
  {
    id: 'grower in summer',
    when: { classes: ['grower'], months: SUMMER },
    means: 'not usual',
    says: 'A grower eats in summer: something around it may be wrong.',
    act: { refusals: 'growerRefusals', lost: 'growerRefusalLossShare' },
    source: 'refusals',
  },
  {
    id: 'grower in winter',
    when: { classes: ['grower'] },
    means: 'usual',
    says: 'Some growers slow down in winter.',
    watch: { refusals: 'growerRefusals' },
    act: { lost: 'growerRefusalLossShare' },
    source: 'refusals',
  },
  {
    id: 'adult',
    when: {},
    means: 'usual',
    says: 'An adult of steady weight may miss meals.',
    watch: { refusals: 'adultRefusals' },
    act: { lost: 'refusalLossShare' },
    source: 'refusals',
  },
];

/** What to look at, the likeliest first. Temperature is the first cause of not eating. Source: refusals. */
export const husbandryLooks: readonly string[] = [
  'Hot spot and air: measured, not read off the thermostat.',
  'Tub not too large or too open; a tight hide.',
  'Prey: smaller, warmer, or the kind it took last.',
  'In blue, or a shed that is stuck?',
  'Disturbed, moved or handled of late?',
  'Breathing, mouth, mites, droppings: look closely.',
];
