import { describe, expect, test } from 'vitest';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { genesBook } from '../../../src/domain/genes-book/genes-book.ts';
import { bredPairs, outcomesOf } from '../../../src/domain/review/outcomes.ts';
import { aPicture } from '../../make.ts';
import { animalId } from '../../make-ids.ts';
import { bredFrom, counted, snake } from '../genes-book/make-book.ts';

function outcomes(events: readonly RackEvent[]) {
  const picture = aPicture(events);
  return outcomesOf({ dam: animalId(1), sire: animalId(2) }, picture.animals(), genesBook(picture));
}

const pastel = [snake(1, 'female', 'Pastel'), snake(2, 'male', 'Normal')];

describe('one copy of a gene that shows, on a normal', () => {
  test('is expected in half of the young; eight of eight have 2 chances in 256', () => {
    const [gene, other] = outcomes([...pastel, counted(1, 1, [2], { Pastel: 8 })]);
    expect(other).toBeUndefined();
    expect(gene).toMatchObject({
      name: 'Pastel',
      of: 8,
      kinds: [
        { look: '', seen: 0, expected: 4 },
        { look: 'Pastel', seen: 8, expected: 4 },
      ],
    });
    // Of 2⁸ broods, those with eight or with none.
    expect(gene?.p).toBeCloseTo(2 / 256, 9);
  });

  test('says nothing of seven young', () => {
    const [gene] = outcomes([...pastel, counted(1, 1, [2], { Pastel: 7 })]);
    expect(gene?.of).toBe(7);
    expect(gene?.p).toBeUndefined();
  });

  test('counts all clutches of the two, and young with a name of their own', () => {
    const events = [
      ...pastel,
      counted(1, 1, [2], { Pastel: 3, Normal: 2 }),
      counted(2, 1, [2], { Pastel: 1, Normal: 1 }),
      snake(5, 'female', 'Pastel'),
      bredFrom(5, 1, 2),
      // Two males were in: the father is not known.
      counted(3, 1, [2, 4], { Pastel: 6 }),
    ];
    const [gene] = outcomes(events);
    expect(gene?.kinds.map(({ look, seen }) => [look, seen])).toEqual([
      ['', 3],
      ['Pastel', 5],
    ]);
    const picture = aPicture(events);
    expect(bredPairs(picture.animals(), genesBook(picture))).toEqual([
      { dam: animalId(1), sire: animalId(2), young: 8 },
    ]);
  });
});

test('a look the parents cannot give has no chance', () => {
  const [gene] = outcomes([
    snake(1, 'female', 'Normal'),
    snake(2, 'male', 'Normal'),
    counted(1, 1, [2], { Pastel: 1, Normal: 8 }),
  ]);
  // Parents called normal are normal but for one in a billion, and so is this outcome.
  expect(gene?.p).toBeLessThan(1e-6);
});

test('a parent that may not carry at all is one draw for the whole brood', () => {
  // Two thirds that she carries; then half of 8 young of a visual show it, else none. None of eight
  // shows: 1/3 + 2/3 · 2⁻⁸; no outcome but those with one or seven and eight shown is rarer.
  const [gene] = outcomes([
    snake(1, 'female', '66% het Clown'),
    snake(2, 'male', 'Clown'),
    counted(1, 1, [2], { '100% het Clown': 8 }),
  ]);
  const none = 1 / 3 + (2 / 3) * 0.5 ** 8;
  expect(none).toBeGreaterThan(0.3);
  expect(gene?.kinds.map(({ seen }) => seen)).toEqual([8, 0]);
  expect(gene?.p).toBeCloseTo(1, 6);
  const half = outcomes([
    snake(1, 'female', '66% het Clown'),
    snake(2, 'male', 'Clown'),
    counted(1, 1, [2], { '100% het Clown': 4, Clown: 4 }),
  ]);
  // 2/3 · C(8, 4) / 2⁸ and all rarer ones: everything but none.
  expect(half[0]?.p).toBeCloseTo(1 - none, 6);
});
