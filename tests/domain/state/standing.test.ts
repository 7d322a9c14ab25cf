import fc from 'fast-check';
import { expect, test } from 'vitest';
import { momentOf, type Moment } from '../../../src/domain/core/calendar.ts';
import { inTime } from '../../../src/domain/state/standing.ts';
import { eventId } from '../../make-ids.ts';
import { runs } from '../../arbitrary.ts';

// Held against the language's own reading of RFC 3339 (`Date.parse`), for clocks of many zones, and
// for moments that other programs may write: with a fraction, or in UTC by the letter Z.

const place = fc
  .record({
    second: fc.integer({ min: -40, max: 40 }).map((steps) => 1_794_000_000 + steps * 450),
    offsetMin: fc.constantFrom(-300, -210, 0, 60, 120, 330, 345),
    form: fc.constantFrom('ours', 'ours', 'ours', 'in UTC', 'with a fraction'),
    id: fc.integer({ min: 1, max: 3 }),
  })
  .map(({ second, offsetMin, form, id }) => {
    const ours = momentOf({ ms: second * 1_000, offsetMin });
    const forms = {
      ours,
      'in UTC': new Date(second * 1_000).toISOString(),
      'with a fraction': `${ours.slice(0, 19)}.0${ours.slice(19)}`,
    };
    return { at: forms[form] as Moment, id: eventId(id) };
  });

test('events count in the order of their instants, then of their ids', () => {
  fc.assert(
    fc.property(place, place, (a, b) => {
      const byInstant = Math.sign(Date.parse(a.at) - Date.parse(b.at));
      const byId = Number(a.id > b.id) - Number(a.id < b.id);
      expect(Math.sign(inTime(a, b))).toBe(byInstant || byId);
    }),
    runs(3_000),
  );
});
