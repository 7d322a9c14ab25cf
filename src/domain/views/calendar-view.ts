import { addDays } from '../core/calendar.ts';
import type { CalendarEntry } from '../calendar-file/entry.ts';
import type { Picture } from '../picture/picture.ts';
import { days } from '../rules/dates.ts';
import type { RoomFacts } from '../rules/rule.ts';
import type { Animal } from '../state/animal.ts';

/**
 * What has a date and is still to come, for the keeper's own calendar.
 *
 * Meals and weighings are not among them: each one moves the next, and tonight's list knows better.
 */
export const calendarEntries = (picture: Picture): readonly CalendarEntry[] =>
  picture
    .living()
    .flatMap((animal) => [takingOut(animal, picture.facts), quarantineEnd(animal, picture.facts)])
    .filter((entry) => entry !== undefined)
    .filter(({ lastDay }) => lastDay >= picture.facts.night)
    .toSorted((a, b) => (a.firstDay < b.firstDay ? -1 : Number(a.firstDay > b.firstDay)));

function takingOut(
  { id, name, visit }: Animal,
  { nightOf, nameOf, protocol }: RoomFacts,
): CalendarEntry | undefined {
  if (!visit) return undefined;
  const since = nightOf(visit.since);
  const goesHome = addDays(since, protocol.maleStayDays);
  return {
    kind: 'window',
    uid: `take-out.${id}.${since}`,
    title: `Take ${name || 'him'} out of ${nameOf(visit.with)}’s tub`,
    details: `In with ${nameOf(visit.with)} since ${since}. Your plan is a stay of ${days(protocol.maleStayDays)}.`,
    firstDay: goesHome,
    lastDay: goesHome,
    alarmAt: { day: goesHome, hour: protocol.eveningHour },
  };
}

function quarantineEnd(
  { id, name, quarantine }: Animal,
  { nightOf, protocol }: RoomFacts,
): CalendarEntry | undefined {
  if (quarantine?.until === undefined) return undefined;
  const since = nightOf(quarantine.since);
  return {
    kind: 'window',
    uid: `quarantine.${id}.${since}`,
    title: `${name || 'A snake'}: quarantine ends`,
    details: `In quarantine since ${since}. It ends when you write so down.`,
    firstDay: quarantine.until,
    lastDay: quarantine.until,
    alarmAt: { day: quarantine.until, hour: protocol.eveningHour },
  };
}
