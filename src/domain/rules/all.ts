import { conflict } from './rule-conflict.ts';
import { damRecovery } from './rule-dam-recovery.ts';
import { eggLook } from './rule-egg-look.ts';
import { eggsLeft } from './rule-eggs-left.ts';
import { escaped } from './rule-escaped.ts';
import { feedDue } from './rule-feed-due.ts';
import { graveSign } from './rule-grave-sign.ts';
import { hatchlingLadder } from './rule-hatchling-ladder.ts';
import { maleOut } from './rule-male-out.ts';
import { mealLeft } from './rule-meal-left.ts';
import { layLate } from './rule-lay-late.ts';
import { nestBox } from './rule-nest-box.ts';
import { ovulationLook } from './rule-ovulation-look.ts';
import { pairAgain } from './rule-pair-again.ts';
import { pairFirst } from './rule-pair-first.ts';
import { plannedVisit } from './rule-planned-visit.ts';
import { refusals } from './rule-refusals.ts';
import { regurgitatedTwice } from './rule-regurgitated-twice.ts';
import { scanDue } from './rule-scan-due.ts';
import { stopPairing } from './rule-stop-pairing.ts';
import { tooFast } from './rule-too-fast.ts';
import { weighDue } from './rule-weigh-due.ts';
import { weightLoss } from './rule-weight-loss.ts';
import type { Rule } from './rule.ts';

/** Every rule, in the order a tub's tasks are shown. A rule that is not listed here does not run. */
export const rules: readonly Rule[] = [
  escaped,
  graveSign,
  regurgitatedTwice,
  weightLoss,
  eggsLeft,
  layLate,
  eggLook,
  ovulationLook,
  stopPairing,
  maleOut,
  nestBox,
  mealLeft,
  feedDue,
  hatchlingLadder,
  refusals,
  plannedVisit,
  pairFirst,
  pairAgain,
  scanDue,
  weighDue,
  tooFast,
  damRecovery,
  conflict,
];
