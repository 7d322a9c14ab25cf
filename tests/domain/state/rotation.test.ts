import { describe, expect, test } from 'vitest';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { rotationOf } from '../../../src/domain/rotation/kept-plan.ts';
import { anEvent, aPicture, day, nightsAgo } from '../../make.ts';
import { animalId } from '../../make-ids.ts';

const [female, male, other] = [animalId(1), animalId(2), animalId(3)];
const pair = { female, male };
const rotation = (events: readonly RackEvent[]) => rotationOf(aPicture(events));

/** What stood before, and what undo takes back. */
const undone: readonly (readonly [string, readonly RackEvent[], RackEvent])[] = [
  [
    'a choice of a male',
    [anEvent('pair-wanted', { ...pair, choice: 'first', at: nightsAgo(3) })],
    anEvent('pair-wanted', { ...pair, choice: 'none', at: nightsAgo(1) }),
  ],
  [
    'a pin that replaced another',
    [
      anEvent('visit-ruled', {
        ...pair,
        rule: { kind: 'pinned', in: day('2026-11-26'), out: day('2026-11-29') },
        at: nightsAgo(3),
      }),
    ],
    anEvent('visit-ruled', {
      ...pair,
      rule: { kind: 'pinned', in: day('2026-11-28'), out: day('2026-12-01') },
      at: nightsAgo(1),
    }),
  ],
  [
    'a ban that lifted a pin',
    [
      anEvent('visit-ruled', {
        ...pair,
        rule: { kind: 'pinned', in: day('2026-11-26'), out: day('2026-11-29') },
        at: nightsAgo(3),
      }),
    ],
    anEvent('visit-ruled', { ...pair, rule: { kind: 'apart' }, at: nightsAgo(1) }),
  ],
  [
    'evenings at home that were away',
    [
      anEvent('evenings-away', {
        from: day('2026-11-25'),
        last: day('2026-11-28'),
        is: 'away',
        at: nightsAgo(3),
      }),
    ],
    anEvent('evenings-away', {
      from: day('2026-11-26'),
      last: day('2026-11-26'),
      is: 'there',
      at: nightsAgo(1),
    }),
  ],
  [
    'a plan that was kept after another',
    [
      anEvent('visits-planned', {
        night: day('2026-11-21'),
        visits: [{ ...pair, in: day('2026-11-25'), out: day('2026-11-28') }],
        at: nightsAgo(3),
      }),
    ],
    anEvent('visits-planned', { night: day('2026-11-23'), visits: [], at: nightsAgo(1) }),
  ],
];

describe('undo brings back what stood before', () => {
  const around = anEvent('pair-wanted', {
    female,
    male: other,
    choice: 'reserve',
    at: nightsAgo(4),
  });

  test.each(undone)('%s', (_, before, last) => {
    const events = [around, ...before];
    const changed = rotation([...events, last]);
    expect(changed).not.toEqual(rotation(events));
    const struck = anEvent('struck', { target: last.id, at: nightsAgo(0) });
    expect(rotation([...events, last, struck])).toEqual(rotation(events));
  });
});
