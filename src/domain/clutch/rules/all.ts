import { boxAir } from './rule-box-air.ts';
import { eggsInDanger, eggsToWatch } from './rule-egg-alarm.ts';
import type { ClutchFacts, HatcheryRule, IncubatorFacts } from './hatchery-rule.ts';
import { incubatorLook } from './rule-incubator-look.ts';
import { noHeat } from './rule-no-heat.ts';
import { overdueEggs } from './rule-overdue.ts';
import { pipLook } from './rule-pip-look.ts';
import { stuckPip } from './rule-stuck-pip.ts';

/** Every rule about incubators, the gravest first. One that is not listed does not run. */
export const incubatorRules: readonly HatcheryRule<IncubatorFacts>[] = [
  eggsInDanger,
  noHeat,
  eggsToWatch,
  incubatorLook,
];

/** Every rule about eggs. */
export const clutchRules: readonly HatcheryRule<ClutchFacts>[] = [
  overdueEggs,
  stuckPip,
  pipLook,
  boxAir,
];
