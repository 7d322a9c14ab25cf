import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createMinter, inBase32, SYMBOLS, type DeviceId } from '../../../src/domain/core/ids.ts';
import * as fields from '../../../src/domain/events/fields.ts';
import { runs } from '../../arbitrary.ts';

const writer = (text: string) => text as DeviceId;
const START = Date.UTC(2026, 10, 24);

// Crockford, D.: Base 32. The alphabet, quoted from memory: digits, then letters without I, L, O, U.
test('ids are written in Crockford’s alphabet, whose text order is its number order', () => {
  expect(SYMBOLS).toBe('0123456789ABCDEFGHJKMNPQRSTVWXYZ');
  expect(Array.from(SYMBOLS)).toEqual(Array.from(SYMBOLS).toSorted());
  expect(inBase32(32 ** 3 + 31, 5)).toBe('0100Z');
});

/** How far the clock moves from one id to the next: often not at all, sometimes back. */
const steps = fc.array(
  fc.oneof(
    fc.constant(0),
    fc.integer({ min: -7_200_000, max: 100_000 }),
    fc.integer({ max: 9, min: 1 }),
  ),
  { minLength: 1, maxLength: 80, size: 'max' },
);

test('ids sort in the order they were made, also when the clock is set back', () => {
  fc.assert(
    fc.property(steps, (moves) => {
      let now = START;
      const mint = createMinter(writer('AAAAA'), () => now);
      const ids = moves.map((move) => {
        now += move;
        return mint.event();
      });
      expect(new Set(ids).size).toBe(ids.length);
      expect(ids).toEqual(ids.toSorted());
    }),
    runs(200),
  );
});

test('more ids than one millisecond has room for still sort and differ', () => {
  const mint = createMinter(writer('AAAAA'), () => START);
  const ids = Array.from({ length: 40_000 }, () => mint.event());
  expect(new Set(ids).size).toBe(ids.length);
  expect(ids.every((id, i) => i === 0 || id > (ids[i - 1] ?? ''))).toBe(true);
});

test('two writers in the same millisecond never make the same id', () => {
  const one = createMinter(writer('AAAAA'), () => START);
  const other = createMinter(writer('AAAAB'), () => START);
  const ids = [one, other].flatMap((mint) => Array.from({ length: 100 }, () => mint.event()));
  expect(new Set(ids).size).toBe(200);
});

test('an id made after seeing another’s sorts after it, though this clock is behind', () => {
  const ahead = createMinter(writer('ZZZZZ'), () => START + 3_600_000);
  const behind = createMinter(writer('AAAAA'), () => START);
  const theirs = ahead.event();
  behind.seen(theirs);
  expect(behind.event() > theirs).toBe(true);
});

test('every kind of id is what a record may hold', () => {
  const mint = createMinter(writer('AAAAA'), () => START);
  expect(fields.EventId.safeParse(mint.event()).success).toBe(true);
  expect(fields.AnimalId.safeParse(mint.animal()).success).toBe(true);
  expect(fields.TubId.safeParse(mint.tub()).success).toBe(true);
  expect(fields.RackId.safeParse(mint.rack()).success).toBe(true);
  expect(fields.RoomId.safeParse(mint.room()).success).toBe(true);
  expect(fields.AnimalId.safeParse(mint.tub()).success).toBe(false);
});
