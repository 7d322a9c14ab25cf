import type { EventId } from '../core/ids.ts';
import { showGrams } from '../core/units.ts';
import type { Animal } from '../state/animal.ts';
import { weightAlarm } from '../weight/alarm.ts';
import type { Drop } from '../weight/drop.ts';
import { alarmFacts, highestG } from '../weight/of-animal.ts';
import { passedOn } from './passed.ts';
import type { RoomFacts, Rule } from './rule.ts';

/** What no limit can be below: a snake nearer to its highest weight is not looked at further. */
function isFarBelow(animal: Animal, room: RoomFacts): boolean {
  const { protocol } = room;
  const newest = animal.weighings.at(-1);
  const top = highestG(animal, protocol.weightPeakDays, room);
  const least = Math.min(
    protocol.paceLossShare,
    protocol.hatchlingLossWatchShare,
    protocol.maleLossWatchShare,
  );
  return newest !== undefined && top !== undefined && newest.massG <= top * (1 - least);
}

/** The two weights, and whatever lies between that could explain the difference. */
function recordsOf(animal: Animal, { before, after }: Drop, room: RoomFacts): readonly EventId[] {
  const { nightOf } = room;
  const isBetween = ({ at }: { readonly at: Animal['weighings'][number]['at'] }): boolean =>
    nightOf(at) >= before.night && nightOf(at) <= after.night;
  const meals = animal.offers.filter(({ outcome }) => outcome !== 'refused');
  const meal = meals.findLast(({ at }) => nightOf(at) <= after.night);
  const fed = meals.filter(({ at }) => nightOf(at) <= before.night).slice(-3);
  const ids = [
    ...animal.weighings.filter(({ id, at }) => id === before.id || isBetween({ at })),
    ...animal.sheds.filter(isBetween),
    ...fed,
    ...(meal ? [meal] : []),
  ].map(({ id }) => id);
  return [...new Set(ids)];
}

export const weightLoss: Rule = {
  id: 'W2',
  says: 'A loss is held against its highest weight, the one before and a male’s before the season; eggs, slips, gut, sheds and fasts are looked at first.',
  source: 'lossLimits',
  vet: true,
  check(animal, room) {
    const newest = animal.weighings.at(-1);
    if (!newest || !isFarBelow(animal, room)) return undefined;
    const passed = passedOn(animal, 'W2', room);
    if (passed !== undefined && passed >= room.nightOf(newest.at)) return undefined;
    const alarm = weightAlarm(alarmFacts(animal, room));
    if (!alarm.speaks) return undefined;
    const isAct = alarm.level === 'act';
    const lost = showGrams(alarm.drop.lostG);
    return {
      act: isAct ? 'call' : 'check',
      asks: isAct
        ? `${animal.name || 'It'} has lost ${lost}: call a reptile vet`
        : `Lost ${lost}: look at it, and weigh it again in a week`,
      due: room.nightOf(newest.at),
      state: isAct ? 'overdue' : 'due',
      alarm: isAct,
      because: alarm.because,
      records: recordsOf(animal, alarm.drop, room),
    };
  },
};
