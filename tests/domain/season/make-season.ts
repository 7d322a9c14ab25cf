import type { RackEvent } from '../../../src/domain/events/event.ts';
import type { Outlook } from '../../../src/domain/season/forecast.ts';
import { outlookOf } from '../../../src/domain/season/forecast.ts';
import type { Standing } from '../../../src/domain/season/standing.ts';
import type { Moment } from '../../../src/domain/core/calendar.ts';
import { anEvent, aPicture, day as dayOf, moment } from '../../make.ts';
import { animalId, tubId } from '../../make-ids.ts';

export const her = animalId(1);
export const him = animalId(2);

/** Ten in the evening of a day, as the records of these tests are made. */
export const on = (day: string): Moment => moment(`${day}T22:00:00+01:00`);

export const arrivals = [
  anEvent('arrived', {
    animal: her,
    name: 'Sorrel',
    sex: 'female',
    hatchedDay: dayOf('2021-07-01'),
    at: on('2025-01-01'),
  }),
  anEvent('arrived', {
    animal: him,
    name: 'Cedar',
    sex: 'male',
    hatchedDay: dayOf('2022-07-01'),
    at: on('2025-01-01'),
  }),
  anEvent('weighed', { animal: her, massG: 1_800, at: on('2026-10-01') }),
  anEvent('weighed', { animal: him, massG: 800, at: on('2026-10-01') }),
];

export const scan = (day: string, mm: number) =>
  anEvent('follicles-scanned', {
    animal: her,
    found: { method: 'ultrasound', largestMm: [mm, mm] },
    at: on(day),
  });

export const visit = (since: string, until?: string): RackEvent[] => [
  anEvent('introduced', { male: him, female: her, tub: tubId(1), at: on(since) }),
  ...(until === undefined ? [] : [anEvent('taken-out', { male: him, female: her, at: on(until) })]),
];

export const ovulated = (day: string) =>
  anEvent('ovulated', { animal: her, sure: 'seen at peak', at: on(day) });

export const shed = (day: string, preLay?: boolean) =>
  anEvent('shed', { animal: her, at: on(day), ...(preLay === undefined ? {} : { preLay }) });

export const laid = (day: string) => anEvent('laid', { animal: her, at: on(day) });

export const ate = (day: string) =>
  anEvent('meal-offered', { animal: her, outcome: 'ate', at: on(day) });

/** A whole season, invented, with the usual days between its events. */
export const wholeSeason = [
  scan('2026-11-01', 8),
  scan('2026-11-29', 14),
  ...visit('2026-12-01', '2026-12-03'),
  scan('2026-12-20', 22),
  scan('2027-01-10', 31),
  scan('2027-01-24', 37),
  ovulated('2027-02-05'),
  shed('2027-02-24', true),
  laid('2027-03-26'),
  ate('2027-04-02'),
];

/** Where she stands on an evening, by what had been written by then. */
export function standsOn(day: string, events: readonly RackEvent[]): Standing | undefined {
  const picture = aPicture([...arrivals, ...events], on(day));
  const animal = picture.animal(her);
  return animal && picture.standing(animal);
}

export const upTo = (day: string, events: readonly RackEvent[]): readonly RackEvent[] =>
  events.filter(({ at }) => at <= on(day));

export function outlookOn(day: string, events: readonly RackEvent[]): Outlook | undefined {
  const picture = aPicture([...arrivals, ...events], on(day));
  const animal = picture.animal(her);
  const { protocol, nightOf } = picture.facts;
  const known = { protocol, nightOf, experience: picture.experience() };
  return animal && outlookOf(animal, picture.standing(animal), known);
}
