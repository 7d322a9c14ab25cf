import { daysBetween, momentOf } from '../../core/calendar.ts';
import type { Reading } from '../../state/readings.ts';
import { agoWords } from '../words.ts';
import type { RoomRule } from './room-rule.ts';

const DAYS = 7;

export const roomUnread: RoomRule = {
  id: 'R4',
  says: 'A room that is read by hand every day, and was not, is worth a look.',
  source: 'household',
  check(room, { protocol, nowMs, nightOf }) {
    const nightAt = ({ minute, offsetMin }: Reading) =>
      nightOf(momentOf({ ms: minute * 60_000, offsetMin }));
    const all = room.air.recent.flatMap(({ readings }) => readings);
    const byHand = room.air.recent
      .filter(({ sensor }) => sensor === undefined)
      .flatMap(({ readings }) => readings);
    const [last, lastByHand] = [lastOf(all), lastOf(byHand)];
    if (!last || !lastByHand) return undefined;
    const lastNight = nightAt(lastByHand);
    const nights = new Set(
      byHand.map(nightAt).filter((night) => daysBetween(night, lastNight) < DAYS),
    );
    const ageMin = nowMs / 60_000 - last.minute;
    const isHabit = nights.size >= protocol.roomHabitDays;
    const isLate =
      ageMin > protocol.roomSilentHours * 60 && ageMin <= protocol.roomSilentEndDays * 24 * 60;
    return isHabit && isLate
      ? {
          asks: 'Read the room',
          because: [
            `Read by hand on ${nights.size} of ${DAYS} days up to the last time, which was ${agoWords(ageMin)}.`,
          ],
        }
      : undefined;
  },
};

const lastOf = (readings: readonly Reading[]): Reading | undefined =>
  readings.reduce<Reading | undefined>((a, b) => (a && a.minute > b.minute ? a : b), undefined);
