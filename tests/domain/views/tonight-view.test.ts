import { describe, expect, test } from 'vitest';
import { nextStop } from '../../../src/domain/views/capture-view.ts';
import { tonightView } from '../../../src/domain/views/tonight-view.ts';
import { anEvent, aPicture, nightsAgo } from '../../make.ts';
import { animalId, tubId } from '../../make-ids.ts';
import { dweller, room } from './little-room.ts';

const everywhere = Array.from({ length: 12 }, (_, i) =>
  dweller(i + 1, `Snake ${i + 1}`, i + 1),
).flat();
const picture = aPicture([...room, ...everywhere]);

describe('the list of tonight', () => {
  test('follows the walk: A before B, every second row backwards in B, quarantine last', () => {
    const walked = tonightView(picture).stops.map(({ position }) => position);
    expect(walked.join(' ')).toBe('A1-1 A1-2 A2-1 A2-2 B1-1 B1-2 B2-2 B2-1 Q1-1 Q1-2 Q2-1 Q2-2');
  });

  test('counts what is to be done, and whom there is', () => {
    expect(tonightView(picture)).toMatchObject({ animals: 12, counts: { feed: 12, weigh: 0 } });
  });

  test('names at most five alarms, and keeps them out of the walk', () => {
    const lost = [1, 2, 3, 4, 5, 6].map((n) =>
      anEvent('left', { animal: animalId(n), how: 'escaped', at: nightsAgo(1) }),
    );
    const { alarms, stops } = tonightView(aPicture([...room, ...everywhere, ...lost]));
    expect(alarms).toHaveLength(5);
    expect(stops).toHaveLength(6);
  });

  test('sets aside those with nothing but blocked chores, and says why', () => {
    const blue = anEvent('opaque-seen', { animal: animalId(1), at: nightsAgo(2) });
    const { waiting, stops } = tonightView(aPicture([...room, ...everywhere, blue]));
    expect(waiting.map(({ position }) => position)).toEqual(['B1-1']);
    expect(waiting[0]?.chores[0]?.blocked).toContain('in blue');
    expect(stops).toHaveLength(11);
  });

  test('ends with those that stand nowhere', () => {
    const { stops } = tonightView(
      aPicture([...room, ...everywhere, anEvent('arrived', { animal: animalId(99), name: 'New' })]),
    );
    expect(stops.at(-1)).toMatchObject({ name: 'New', position: '–' });
  });

  test('gives every chore its reason and the source of its rule', () => {
    for (const { chores } of tonightView(picture).stops) {
      for (const { because, says, source } of chores) {
        expect(because.join('')).not.toBe('');
        expect(says).not.toBe('');
        expect(source).not.toBe('');
      }
    }
  });
});

describe('the next stop', () => {
  test('is the next tub along the walk, and after the last the first again', () => {
    expect(nextStop(tubId(2), picture)?.position).toBe('B2-2');
    expect(nextStop(tubId(12), picture)?.position).toBe('A1-1');
  });

  test('passes over empty tubs and those with nothing to do', () => {
    const few = aPicture([
      ...room,
      ...dweller(1, 'One', 1),
      ...dweller(4, 'Four', 4),
      anEvent('opaque-seen', { animal: animalId(4) }),
    ]);
    expect(nextStop(tubId(5), few)?.position).toBe('B1-1');
    expect(nextStop(tubId(1), few)).toBeUndefined();
  });
});
