import { expect, test } from 'vitest';
import { addDays } from '../../../src/domain/core/calendar.ts';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { calendarEntries } from '../../../src/domain/views/calendar-view.ts';
import { hatcheryView } from '../../../src/domain/views/hatchery-view.ts';
import { lanesView } from '../../../src/domain/views/lanes-view.ts';
import { seasonView } from '../../../src/domain/views/season-view.ts';
import { anEvent, aPicture, clockAt, day, moment } from '../../make.ts';
import { animalId, clutchId, incubatorId } from '../../make-ids.ts';

const animal = animalId(1);
const clutch = clutchId(1);
const incubator = incubatorId(1);
const at = (on: string, time = '21:00') => moment(`${on}T${time}:00+02:00`);

const dam = anEvent('arrived', { animal, name: 'Sorrel', sex: 'female', at: at('2024-01-02') });
const grown = anEvent('weighed', { animal, massG: 1_900, at: at('2027-01-02') });
const made = anEvent('incubator-made', { incubator, name: 'Left', at: at('2027-04-01') });
const laid = anEvent('laid', { animal, clutch, at: at('2027-04-10'), good: 5 });
const set = anEvent('eggs-set', { clutch, incubator, at: at('2027-04-10', '21:10') });

/** Read morning and evening for thirty days. */
const warmth = (tempC: number): readonly RackEvent[] =>
  Array.from({ length: 60 }, (_, n) => {
    const on = addDays(day('2027-04-10'), Math.floor((n + 1) / 2));
    const time = n % 2 === 0 ? '22:00' : '08:00';
    return anEvent('incubator-read', { incubator, spot: 'egg level', tempC, at: at(on, time) });
  });

const NOW = at('2027-05-11');
const picture = (...events: readonly RackEvent[]) =>
  aPicture([dam, grown, made, laid, set, ...events], NOW);

function everywhere(of: ReturnType<typeof picture>) {
  const span = (each: { readonly from: string; readonly to: string } | undefined) =>
    each && [each.from, each.to];
  const entry = calendarEntries(of).find(({ title }) => title === 'Sorrel: first pip');
  return {
    eggs: span(hatcheryView(of).open[0]?.window),
    lanes: span(lanesView(of).lanes[0]?.windows[0]),
    snake: span(seasonView(animal, of)?.windows[0]),
    calendar: entry && [entry.firstDay, entry.lastDay],
  };
}

test('the first pip is the same window among the eggs, the lanes, at the snake and in the calendar', () => {
  const cool = everywhere(picture(...warmth(30)));
  expect(new Set(Object.values(cool).map((each) => JSON.stringify(each))).size).toBe(1);
  const warm = everywhere(picture(...warmth(31.5)));
  expect(cool.calendar?.[0]?.localeCompare(warm.calendar?.[0] ?? '')).toBe(1);
  expect(lanesView(picture(...warmth(30))).lanes[0]?.windows[0]?.rests).toMatch(
    /Warmth of the eggs read 9\d % of the time/,
  );
});

test('a reading moves a window that was shown before', () => {
  const shown = picture();
  const before = everywhere(shown);
  const cool = warmth(29.5);
  const ids = shown.ledger.add(cool);
  shown.update(ids, clockAt(NOW));
  expect(everywhere(shown)).not.toEqual(before);
  expect(everywhere(shown)).toEqual(everywhere(picture(...cool)));
});

test('after the first pip no pip is forecast', () => {
  const pip = anEvent('hatching-seen', { clutch, seen: 'pip', eggs: 1, at: at('2027-05-10') });
  expect(everywhere(picture(pip))).toEqual({});
  const closed = anEvent('clutch-closed', { clutch, at: at('2027-05-10') });
  expect(everywhere(picture(closed))).toEqual({});
});

test('what own clutches took narrows the pip of eggs that are still to be laid', () => {
  const years = [2022, 2023, 2024, 2025, 2026].flatMap((year, n) => {
    const of = { animal, clutch: clutchId(10 + n) };
    return [
      anEvent('laid', { ...of, good: 5, at: at(`${year}-04-10`) }),
      anEvent('hatching-seen', {
        clutch: of.clutch,
        seen: 'pip',
        eggs: 1,
        at: at(`${year}-06-09`),
      }),
      anEvent('clutch-closed', { clutch: of.clutch, at: at(`${year}-07-09`) }),
    ];
  });
  const gravid = [
    anEvent('arrived', { animal, name: 'Sorrel', sex: 'female', at: at('2018-01-02') }),
    grown,
    anEvent('follicles-scanned', { animal, at: at('2027-01-20') }),
    anEvent('ovulated', { animal, at: at('2027-03-20') }),
  ];
  const width = (events: readonly RackEvent[]) => {
    const [pip] = lanesView(aPicture(events, at('2027-03-25'))).lanes[0]?.windows.slice(-1) ?? [];
    expect(pip?.event).toBe('first pip');
    return (pip?.toAt ?? NaN) - (pip?.fromAt ?? NaN);
  };
  expect(width([...years, ...gravid])).toBeLessThan(width(gravid));
});
