import { passedOn } from './passed.ts';
import type { Rule } from './rule.ts';

export const conflict: Rule = {
  id: 'S9',
  says: 'Records of one season that cannot all be true are asked about; a wrong date moves all that follows.',
  source: 'windowLimits',
  check(animal, room) {
    const standing = room.standing(animal);
    const [first] = standing?.conflicts ?? [];
    const now = standing?.now;
    if (first === undefined || !now) return undefined;
    const passed = passedOn(animal, 'S9', room);
    if (passed !== undefined && passed >= room.nightOf(now.season.lastAt)) return undefined;
    return {
      act: 'check',
      asks: 'Check her dates: they contradict each other',
      due: room.night,
      state: 'due',
      alarm: false,
      because: standing?.conflicts ?? [],
      records: [now.season.ovulation, now.preLay?.shed, now.season.laid].flatMap((each) =>
        each ? [each.id] : [],
      ),
    };
  },
};
