import type { ClutchFacts, HatcheryRule } from './hatchery-rule.ts';

export const overdueEggs: HatcheryRule<ClutchFacts> = {
  id: 'C3',
  says: 'Eggs far past their time: the probe and the date of laying are checked first. Opening an egg is for someone experienced, or a reptile vet.',
  source: 'pipping',
  vet: true,
  check({ clutch, outlook, counts, protocol }) {
    if (!outlook || counts.inShell === 0) return undefined;
    const developed = Math.floor(outlook.developedDays);
    if (developed < protocol.pipOverdueDays) return undefined;
    return {
      asks: 'Overdue: check the probe and the date of laying',
      state: 'overdue',
      alarm: true,
      because: [
        `${developed} days of development as at 31.5 °C and no pip; overdue from ${protocol.pipOverdueDays}.`,
        `${Math.round(100 * outlook.readShare)} % of that time is known from readings.`,
        'A probe that reads high, or eggs found later than thought, look the same.',
      ],
      records: clutch.laid ? [clutch.laid.id] : [],
    };
  },
};
