import { eggLook } from './rule-egg-look.ts';
import { escaped } from './rule-escaped.ts';
import { feedDue } from './rule-feed-due.ts';
import { graveSign } from './rule-grave-sign.ts';
import { maleOut } from './rule-male-out.ts';
import { mealLeft } from './rule-meal-left.ts';
import { nestBox } from './rule-nest-box.ts';
import { ovulationLook } from './rule-ovulation-look.ts';
import { pairAgain } from './rule-pair-again.ts';
import { pairFirst } from './rule-pair-first.ts';
import { plannedVisit } from './rule-planned-visit.ts';
import { scanDue } from './rule-scan-due.ts';
import { stopPairing } from './rule-stop-pairing.ts';
import { weighDue } from './rule-weigh-due.ts';
import type { Rule } from './rule.ts';

/**
 * The rules that the buttons at a tub hang on, in the order of all. Those left out call for a look
 * or a vet, and weigh months of records for it: a start lets them come after the first view.
 */
export const tubRules: readonly Rule[] = [
  escaped,
  graveSign,
  eggLook,
  ovulationLook,
  stopPairing,
  maleOut,
  nestBox,
  mealLeft,
  feedDue,
  plannedVisit,
  pairFirst,
  pairAgain,
  scanDue,
  weighDue,
];
