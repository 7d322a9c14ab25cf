import { describe, expect, test } from 'vitest';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { feedingView } from '../../../src/domain/views/feeding-view.ts';
import { preyView } from '../../../src/domain/views/prey-view.ts';
import { anEvent, aPicture, nightsAgo } from '../../make.ts';
import { animalId } from '../../make-ids.ts';

/** A female that takes small rats and ate some nights ago. */
const female = (n: number, ate: number): readonly RackEvent[] => [
  anEvent('arrived', { animal: animalId(n), name: `F${n}`, sex: 'female', at: nightsAgo(90) }),
  anEvent('weighed', { animal: animalId(n), massG: 1_500, at: nightsAgo(10) }),
  anEvent('meal-offered', { animal: animalId(n), at: nightsAgo(ate) }),
];

const view = (events: readonly RackEvent[]) => feedingView(aPicture(events));

describe('tonight’s feeding', () => {
  test('one that is blocked is told with its reason, and nothing is thawed for it', () => {
    const blue = anEvent('opaque-seen', { animal: animalId(1), at: nightsAgo(2) });
    const tonight = view([...female(1, 8), blue]);
    expect(tonight.due).toEqual([]);
    expect(tonight.blocked[0]?.blocked).toContain('in blue');
    expect(tonight.thaw).toEqual([]);
  });

  test('pieces are followed from the freezer into the snake, and out of a refused meal back', () => {
    const events = [
      ...female(1, 8),
      ...female(2, 8),
      anEvent('prey-stocked', { pieces: 10, at: nightsAgo(5) }),
      anEvent('prey-thawed', { pieces: 2 }),
      anEvent('meal-offered', { animal: animalId(1) }),
    ];
    expect(view(events).thaw).toMatchObject([
      { size: 'small', inFreezer: 8, thawed: 2, given: 1, inHand: 1, offered: 1 },
    ]);
    const refused = anEvent('meal-offered', { animal: animalId(2), outcome: 'refused' });
    expect(view([...events, refused]).thaw).toMatchObject([{ given: 1, inHand: 1, offered: 0 }]);
  });

  test('what one refuses is offered to the next that is nearly due, and never out of quarantine', () => {
    const rest = [
      ...female(1, 8),
      ...female(3, 6),
      anEvent('prey-thawed', { pieces: 1 }),
      anEvent('meal-offered', { animal: animalId(1), outcome: 'refused' }),
    ];
    expect(view(rest).thaw[0]?.next).toMatchObject([{ name: 'F3', inDays: 2 }]);
    const apart = anEvent('quarantine-started', { animal: animalId(1), at: nightsAgo(9) });
    expect(view([...rest, apart]).thaw[0]).toMatchObject({ spoilt: 1, next: [] });
  });

  test('what is thawed and not accounted for is asked about the night after', () => {
    const thawed = anEvent('prey-thawed', { pieces: 3, at: nightsAgo(1) });
    const ate = anEvent('meal-offered', { animal: animalId(1), at: nightsAgo(1) });
    expect(view([...female(1, 9), thawed, ate]).lastNight).toMatchObject([{ pieces: 2 }]);
  });
});

test('an order counts each offer of the weeks to come, by interval and exception', () => {
  const four = (events: readonly RackEvent[]) => preyView(4, aPicture(events)).order;
  // Every eight days from tonight on: days 0, 8, 16 and 24 of 28.
  expect(four(female(1, 8))).toMatchObject([{ size: 'small', offers: 4, offered: 4 }]);
  const own = anEvent('feeding-excepted', {
    animal: animalId(1),
    exceptions: [{ everyDays: 14, kind: 'mouse', size: 'adult', count: 2 }],
  });
  // Days 6 and 20, two mice each.
  expect(four([...female(1, 8), own])).toMatchObject([
    { kind: 'mouse', size: 'adult', offers: 2, offered: 4 },
  ]);
});
