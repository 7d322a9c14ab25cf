import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { newAnimalDrafts } from '../../../src/domain/commands/new-animals.ts';
import { newRackDrafts, type NewRack } from '../../../src/domain/commands/new-rack.ts';
import { readAnimalLines } from '../../../src/domain/commands/read-animal-lines.ts';
import { readTypedCode } from '../../../src/domain/core/code.ts';
import { createMinter, type DeviceId } from '../../../src/domain/core/ids.ts';
import { runs } from '../../arbitrary.ts';
import { aPicture, clockAt, TONIGHT } from '../../make.ts';
import { roomId } from '../../make-ids.ts';
import { dweller, room } from '../views/little-room.ts';

const mint = createMinter('MAKE9' as DeviceId, () => clockAt(TONIGHT).ms);

/** Chance that repeats itself: every number comes three times. */
function stutter(): () => number {
  let n = 0;
  return () => {
    n += 1;
    return (Math.floor(n / 3) * 0.618_033) % 1;
  };
}

const wanted: NewRack = {
  room: { id: roomId(1) },
  name: ' c ',
  rows: 10,
  columns: 4,
  walk: 'rows',
};
const rackDrafts = (more: Partial<NewRack> = {}) =>
  newRackDrafts({ ...wanted, ...more }, aPicture(room), mint, stutter());

describe('a new rack', () => {
  test('of 10 × 4 comes with 40 tubs, each with a position and a code of its own', () => {
    const made = rackDrafts();
    const drafts = made.ok ? made.value.drafts : [];
    const tubs = drafts.flatMap((draft) => (draft.type === 'tub-made' ? [draft] : []));
    expect(drafts[0]).toMatchObject({ type: 'rack-made', name: 'C' });
    expect(tubs).toHaveLength(40);
    expect(new Set(tubs.map(({ code }) => code)).size).toBe(40);
    expect(new Set(tubs.map(({ row, column }) => `${row}-${column}`)).size).toBe(40);
    expect(tubs.every(({ code }) => readTypedCode(code).ok)).toBe(true);
    expect(tubs.at(-1)).toMatchObject({ row: 10, column: 4 });
  });

  test('in a new room makes the room too', () => {
    const made = rackDrafts({ room: { name: ' ', quarantine: true } });
    expect(made.ok && made.value.drafts[0]).toMatchObject({ type: 'room-made', quarantine: true });
  });

  test.each([
    { more: { name: 'b' }, code: 'rack-taken' },
    { more: { name: 'B 4' }, code: 'rack-name' },
    { more: { name: '' }, code: 'rack-name' },
    { more: { rows: 0 }, code: 'rack-size' },
    { more: { rows: 40, columns: 11 }, code: 'rack-size' },
    { more: { rows: Number.NaN }, code: 'rack-size' },
  ])('$more is refused: $code', ({ more, code }) => {
    expect(rackDrafts(more)).toMatchObject({ ok: false, problem: { code } });
  });
});

describe('new animals', () => {
  const picture = aPicture([...room, ...dweller(1, 'Sorrel', 1)]);
  const add = (...positions: (string | undefined)[]) =>
    newAnimalDrafts(
      positions.map((position, i) => ({ name: `New ${i}`, sex: 'male', position, massG: 80 })),
      picture,
      mint,
    );

  test('arrive, move in and are weighed', () => {
    const made = add('B1-2', undefined);
    const types = made.ok ? made.value.drafts.map(({ type }) => type) : [];
    expect(types).toEqual(['arrived', 'moved', 'weighed', 'arrived', 'weighed']);
  });

  test.each([
    { positions: ['B9-9'], code: 'no-such-position', says: 'A1-1 to Q2-2' },
    { positions: ['B1-1'], code: 'position-taken', says: 'Sorrel' },
    { positions: ['B1-2', 'B1-2'], code: 'position-taken', says: 'New 1' },
  ])('to $positions are refused, whole: $code', ({ positions, code, says }) => {
    const message = expect.stringContaining(says);
    expect(add(...positions)).toEqual({ ok: false, problem: { code, message } });
  });
});

describe('a pasted line', () => {
  const read = (line: string) => readAnimalLines(line)[0];

  test.each([
    {
      line: 'Sorrel, f, B4-2, 1640 g, 2022-07-14, Pastel het Clown, 100 % het Pied',
      animal: {
        name: 'Sorrel',
        sex: 'female',
        position: 'B4-2',
        massG: 1640,
        hatchedDay: '2022-07-14',
        traits: 'Pastel het Clown, 100 % het Pied',
      },
    },
    { line: 'Cedar\t1.0\tb12', animal: { name: 'Cedar', sex: 'male', position: 'B12' } },
    { line: 'Tansy; 0.0.1; 62.5 g', animal: { name: 'Tansy', sex: 'unknown', massG: 62.5 } },
    { line: '  Oak  ', animal: { name: 'Oak', sex: 'unknown' } },
    {
      line: 'Bryony, constructor',
      animal: { name: 'Bryony', sex: 'unknown', traits: 'constructor' },
    },
  ])('$line is understood', ({ line, animal }) => {
    expect(read(line)).toEqual({ ok: true, line: line.trim(), animal });
  });

  test.each([
    { line: ', f, B4-2', why: 'name' },
    { line: 'Oak, 14.07.2022', why: '2024-07-31' },
    { line: `${'x'.repeat(61)}, f`, why: '60' },
    { line: 'Oak, f, 1,640 g', why: '1640 g' },
    { line: 'Oak, f, 62,5 g', why: '62.5 g' },
  ])('$line is not, and says what would be right', ({ line, why }) => {
    expect(read(line)).toMatchObject({ ok: false, why: expect.stringContaining(why) });
  });

  test('whatever is pasted, each line is read or given back with a reason', () => {
    fc.assert(
      fc.property(fc.string({ unit: 'binary', maxLength: 200 }), (text) => {
        const lines = text.split('\n').filter((line) => line.trim() !== '');
        expect(readAnimalLines(text)).toHaveLength(lines.length);
      }),
      runs(200),
    );
  });
});
