import { instantMs } from '../core/calendar.ts';
import type { Rule } from './rule.ts';

/** After so long it is no longer a matter of hours. */
const FORGOTTEN_HOURS = 24 * 30;

export const eggsLeft: Rule = {
  id: 'L1',
  says: 'Eggs still felt in her after laying: a reptile vet within a day, urgently within two. Straining, a prolapse or limpness: now.',
  source: 'retainedEggs',
  vet: true,
  check(animal, room) {
    const felt = animal.eggsFelt;
    const laid = room.standing(animal)?.now?.season.laid;
    if (!felt || felt.left === 'none' || !laid) return undefined;
    const hours = Math.floor((room.nowMs - instantMs(laid.at)) / 3_600_000);
    if (instantMs(felt.at) < instantMs(laid.at) || hours > FORGOTTEN_HOURS) return undefined;
    const { eggsLeftCallHours, eggsLeftUrgentHours } = room.protocol;
    const isUrgent = hours >= eggsLeftUrgentHours;
    const name = animal.name || 'She';
    return {
      act: 'call',
      asks: isUrgent
        ? `${name} may hold an egg: a vet, urgently`
        : `${name} may hold an egg: ${hours < eggsLeftCallHours ? 'feel again, have a vet ready' : 'call a vet'}`,
      due: room.nightOf(felt.at),
      state: hours >= eggsLeftCallHours ? 'overdue' : 'due',
      alarm: true,
      because: [
        felt.left === 'some'
          ? 'Eggs were felt in her after laying.'
          : 'It is not sure that all eggs are out.',
        `More than a day is long, and treatment works best within ${eggsLeftUrgentHours} hours of the last egg.`,
      ],
      records: [laid.id, felt.id],
    };
  },
};
