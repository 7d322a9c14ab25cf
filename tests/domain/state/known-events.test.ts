import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { EventId } from '../../../src/domain/core/ids.ts';
import { createKnownEvents } from '../../../src/domain/state/known-events.ts';
import { anyEvent, runs } from '../../arbitrary.ts';

// Held against a table of the language's own, in whatever order ids arrive and however often.

test('knows each event once and finds it by its id, as a table would', () => {
  const ids = Array.from({ length: 30 }, (_, n) => `1J${String(n).padStart(15, '0')}` as EventId);
  const arrivals = fc.array(fc.tuple(fc.constantFrom(...ids), anyEvent), { maxLength: 60 });
  fc.assert(
    fc.property(arrivals, (arrived) => {
      const known = createKnownEvents();
      const table = new Map<EventId, unknown>();
      for (const [id, like] of arrived) {
        const event = { ...like, id };
        expect(known.add(event)).toBe(!table.has(id));
        if (!table.has(id)) table.set(id, event);
      }
      expect(known.size).toBe(table.size);
      expect(new Set(known.all())).toEqual(new Set(table.values()));
      expect(known.newest).toBe([...table.keys()].toSorted().at(-1));
      for (const id of ids) expect(known.get(id)).toBe(table.get(id));
    }),
    runs(500),
  );
});
