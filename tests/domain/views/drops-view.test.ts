import { describe, expect, test } from 'vitest';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { readProblem } from '../../../src/domain/rotation/read-problem.ts';
import { visitModel } from '../../../src/domain/rotation/visit-model.ts';
import { dropsView, type Drop } from '../../../src/domain/views/drops-view.ts';
import { anEvent, aPicture, day } from '../../make.ts';
import { animalId } from '../../make-ids.ts';
import { arrivals, her, him, on, scan } from '../season/make-season.ts';

// Where a planned visit can be put down, held against the pin that it would write.

const TONIGHT = on('2026-12-10');
const [second, third] = [animalId(3), animalId(4)];
const grown = (animal: typeof second, name: string): readonly RackEvent[] => [
  anEvent('arrived', {
    animal,
    name,
    sex: 'female',
    hatchedDay: day('2021-07-01'),
    at: on('2025-01-01'),
  }),
  anEvent('weighed', { animal, massG: 1_700, at: on('2026-10-01') }),
  ...[14, 20].map((mm, i) =>
    anEvent('follicles-scanned', {
      animal,
      found: { method: 'ultrasound', largestMm: [mm, mm] },
      at: on(i === 0 ? '2026-11-20' : '2026-12-09'),
    }),
  ),
];
const wanted = (female: typeof second) =>
  anEvent('pair-wanted', { female, male: him, choice: 'first', at: on('2026-12-01') });
const pinned = (female: typeof second, into: string, out: string) =>
  anEvent('visit-ruled', {
    female,
    male: him,
    rule: { kind: 'pinned', in: day(into), out: day(out) },
    at: on('2026-12-10'),
  });
const records: readonly RackEvent[] = [
  ...arrivals,
  scan('2026-11-20', 14),
  scan('2026-12-09', 20),
  ...grown(second, 'Bramble'),
  ...grown(third, 'Teasel'),
  ...[her, second, third].map(wanted),
  anEvent('meal-offered', { animal: third, outcome: 'ate', at: on('2026-12-09') }),
  anEvent('evenings-away', {
    from: day('2026-12-15'),
    last: day('2026-12-16'),
    is: 'away',
    at: on('2026-12-09'),
  }),
  pinned(second, '2026-12-19', '2026-12-22'),
];
const ask = { male: him, female: her, in: day('2026-12-11') };
const drops = (events: readonly RackEvent[] = records) => dropsView(ask, aPicture(events, TONIGHT));

/** Whether the pin that a drop writes can hold beside those that are there. */
const holds = (female: typeof second, { in: into, out }: Drop): boolean => {
  const pin = pinned(female, into, out);
  const { brokenPins } = visitModel(readProblem(aPicture([...records, pin], TONIGHT)));
  return brokenPins.length === 0;
};

describe('a planned visit can be put down', () => {
  test('on each evening whose pin holds, and on no other', () => {
    const { evenings } = drops();
    expect(evenings).toHaveLength(14);
    const open = (each: readonly Drop[]) => each.map(({ in: into }) => into);
    expect(open(evenings.filter((drop) => holds(her, drop)))).toEqual(
      open(evenings.filter(({ stop }) => stop === undefined)),
    );
    const free = evenings.filter(({ stop }) => stop === undefined);
    expect(free.length).toBeGreaterThan(2);
    expect(free.length).toBeLessThan(12);
  });

  test('not where a limit is in the way, which is said', () => {
    const stops = new Map(drops().evenings.map((each) => [each.in, each.stop]));
    expect(stops.get(day('2026-12-15'))).toMatch(/Nobody is there/);
    // He is with Bramble by a pin from 19 to 22 Dec, and rests after.
    expect(stops.get(day('2026-12-18'))).toMatch(/^With your other pins/);
    expect(stops.get(day('2026-12-23'))).toMatch(/rests at home/);
  });

  test('with another female he is wanted for: that evening, or the first that is free', () => {
    const { females } = drops();
    expect(females.map(({ name, in: into, stop }) => [name, into, stop])).toEqual([
      ['Bramble', '2026-12-11', undefined],
      // She ate on 9 Dec: three nights (the middle school).
      ['Teasel', '2026-12-12', undefined],
    ]);
    expect(females.every((drop) => holds(drop.female, drop))).toBe(true);
  });

  test('and not with one that no evening of the plan frees', () => {
    const ill = anEvent('quarantine-started', { animal: third, at: on('2026-12-10') });
    const teasel = drops([...records, ill]).females.find(({ female }) => female === third);
    expect(teasel?.stop).toMatch(/^Teasel: In quarantine/);
  });

  test('nowhere with one that is kept apart', () => {
    const apart = anEvent('visit-ruled', {
      female: her,
      male: him,
      rule: { kind: 'apart' },
      at: on('2026-12-10'),
    });
    const { evenings } = drops([...records, apart]);
    expect(evenings.every(({ stop }) => stop?.startsWith('You keep') === true)).toBe(true);
  });
});
