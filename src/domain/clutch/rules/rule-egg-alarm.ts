import { agoWords, hoursWords, showC } from '../../room/words.ts';
import { newestReading, outsideNow } from './egg-readings.ts';
import type { HatcheryRule, IncubatorFacts } from './hatchery-rule.ts';

/** Old readings say nothing of now. */
const isFresh = ({ incubator, nowMs, protocol }: IncubatorFacts): boolean => {
  const newest = newestReading(incubator);
  return newest !== undefined && nowMs / 60_000 - newest.minute <= protocol.incubatorGapHours * 60;
};

interface Outside {
  readonly words: string;
  readonly lengthMin: number;
  readonly tempC: number;
  readonly ageMin: number;
}

/** The first of several limits that is broken, each with how long it must be. */
function broken(
  facts: IncubatorFacts,
  limits: readonly (readonly [(tempC: number) => boolean, minutes: number, words: string])[],
): Outside | undefined {
  if (!isFresh(facts)) return undefined;
  const { incubator, protocol, nowMs } = facts;
  for (const [isOutside, minutes, words] of limits) {
    const run = outsideNow(incubator, isOutside, minutes, protocol.incubatorGapHours * 60);
    if (!run) continue;
    const { lengthMin, last } = run;
    return { words, lengthMin, tempC: last.tempC, ageMin: nowMs / 60_000 - last.minute };
  }
  return undefined;
}

const because = ({ words, lengthMin, tempC, ageMin }: Outside, clutches: number): string[] => [
  `${showC(tempC)}, read ${agoWords(ageMin)}: ${words}${lengthMin > 0 ? `, for ${hoursWords(lengthMin)}` : ''}.`,
  clutches === 1 ? 'One clutch is in it.' : `${clutches} clutches are in it.`,
];

/** Both series of limits of an incubator: what stops eggs, and what only deserves a look. */
export const eggsInDanger: HatcheryRule<IncubatorFacts> = {
  id: 'I1',
  says: 'Eggs too hot, or cold for hours: the heat is seen to at once. Heat kills faster than cold.',
  source: 'eggAlarms',
  check(facts) {
    const { protocol, clutches, incubator } = facts;
    if (clutches === 0) return undefined;
    const { eggHotAtOnceC, eggTooHotC, eggTooHotMinutes, eggTooColdC, eggTooColdHours } = protocol;
    const outside = broken(facts, [
      [
        (tempC) => tempC >= eggHotAtOnceC,
        0,
        `from ${showC(eggHotAtOnceC)} on it is too hot at once`,
      ],
      [
        (tempC) => tempC >= eggTooHotC,
        eggTooHotMinutes,
        `from ${showC(eggTooHotC)} on it is too hot`,
      ],
      [
        (tempC) => tempC < eggTooColdC,
        eggTooColdHours * 60,
        `under ${showC(eggTooColdC)} is too cold`,
      ],
    ]);
    if (!outside) return undefined;
    return {
      asks: `${incubator.name}: ${showC(outside.tempC)}`,
      state: 'overdue',
      alarm: true,
      because: because(outside, clutches),
      records: [],
    };
  },
};

export const eggsToWatch: HatcheryRule<IncubatorFacts> = {
  id: 'I2',
  says: 'Eggs cool, warm or dry: look at the thermostat, the probe and the box.',
  source: 'eggAlarms',
  check(facts) {
    const { protocol, clutches, incubator } = facts;
    if (clutches === 0 || eggsInDanger.check(facts)) return undefined;
    const { eggLowC, eggHighC, eggAmberMinutes, boxHumidityShare } = protocol;
    const outside = broken(facts, [
      [(tempC) => tempC > eggHighC, eggAmberMinutes, `over ${showC(eggHighC)} is warm`],
      [(tempC) => tempC < eggLowC, eggAmberMinutes, `under ${showC(eggLowC)} is cool`],
    ]);
    const { humidityPercent } = newestReading(incubator) ?? {};
    const isDry = humidityPercent !== undefined && humidityPercent < boxHumidityShare * 100;
    if (!outside && !(isDry && isFresh(facts))) return undefined;
    return {
      asks: outside
        ? `${incubator.name}: ${showC(outside.tempC)}`
        : `${incubator.name}: ${humidityPercent} % humidity`,
      state: 'due',
      alarm: false,
      because: outside
        ? because(outside, clutches)
        : [`${humidityPercent} % humidity; dry under ${Math.round(boxHumidityShare * 100)} %.`],
      records: [],
    };
  },
};
