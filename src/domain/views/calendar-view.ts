import { addDays } from '../core/calendar.ts';
import type { CalendarEntry } from '../calendar-file/entry.ts';
import { seasonOutlook } from '../clutch/season-outlook.ts';
import type { Picture } from '../picture/picture.ts';
import { dateWords, daysWords } from '../core/day-words.ts';
import type { RoomFacts } from '../rules/rule.ts';
import type { NextEvent } from '../season/forecast.ts';
import type { Animal } from '../state/animal.ts';
import { restsWords } from './window-words.ts';

/**
 * What has a date and is still to come, for the keeper's own calendar.
 *
 * Meals and weighings are not among them: each one moves the next, and tonight's list knows better.
 */
export const calendarEntries = (picture: Picture): readonly CalendarEntry[] =>
  picture
    .living()
    .flatMap((animal) => [
      takingOut(animal, picture.facts),
      quarantineEnd(animal, picture.facts),
      ...comingWindows(animal, picture),
    ])
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
    details: `In with ${nameOf(visit.with)} since ${since}. Your plan is a stay of ${daysWords(protocol.maleStayDays)}.`,
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
    details: `In quarantine since ${dateWords(since)}. It ends when you write so down.`,
    firstDay: quarantine.until,
    lastDay: quarantine.until,
    alarmAt: { day: quarantine.until, hour: protocol.eveningHour },
  };
}

const names: Readonly<Record<NextEvent, string>> = {
  ovulation: 'ovulation',
  'pre-lay shed': 'pre-lay-shed',
  eggs: 'eggs',
  'first pip': 'first-pip',
};

/** The windows of her season. They ring on the evening before the first day, while that is to come. */
function comingWindows(animal: Animal, picture: Picture): readonly CalendarEntry[] {
  const { night, nightOf, protocol } = picture.facts;
  const { season, id, name } = animal;
  if (!season) return [];
  return seasonOutlook(picture, animal)
    .forecasts.filter(({ isPast }) => isPast !== true)
    .map((forecast) => {
      const { event, from, likely, to } = forecast;
      const evening = addDays(from, -1);
      return {
        kind: 'window',
        uid: `season.${id}.${nightOf(season.openedAt)}.${names[event]}`,
        title: `${name || 'A snake'}: ${event}`,
        details: `${restsWords(forecast)} In four of five cases it comes within these days.`,
        firstDay: from,
        lastDay: to,
        likelyDay: from === to ? undefined : likely,
        alarmAt: evening < night ? undefined : { day: evening, hour: protocol.eveningHour },
      };
    });
}
