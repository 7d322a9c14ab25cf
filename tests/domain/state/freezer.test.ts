import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { FREEZER } from '../../../src/domain/core/ids.ts';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { piecesIn } from '../../../src/domain/prey/freezer-stock.ts';
import type { Freezer } from '../../../src/domain/state/freezer.ts';
import { createLedger } from '../../../src/domain/state/ledger.ts';
import { runs } from '../../arbitrary.ts';
import { anEvent, day, nightsAgo } from '../../make.ts';

function drawerOf(events: readonly RackEvent[]) {
  const ledger = createLedger();
  ledger.add(events);
  const drawer = (ledger.subjects.get(FREEZER) as Freezer | undefined)?.drawers['rat small'];
  if (!drawer) throw new Error('No drawer of small rats.');
  return drawer;
}

const cameIn = (pieces: number, ago: number, useBy?: string) =>
  anEvent('prey-stocked', {
    kind: 'rat',
    size: 'small',
    pieces,
    ...(useBy === undefined ? { useBy: undefined } : { useBy: day(useBy) }),
    at: nightsAgo(ago),
  });
const thawed = (pieces: number, ago: number) =>
  anEvent('prey-thawed', { pieces, at: nightsAgo(ago) });

describe('the freezer', () => {
  test('gives first what goes off first, whenever it came', () => {
    const drawer = drawerOf([
      cameIn(10, 9, '2027-06-01'),
      cameIn(5, 8, '2026-12-20'),
      cameIn(3, 7),
      thawed(7, 6),
    ]);
    expect(drawer.batches.map(({ pieces, useBy }) => [pieces, useBy])).toEqual([
      [8, '2027-06-01'],
      [3, undefined],
    ]);
  });

  test('keeps in mind what came out and was not there, until it is counted', () => {
    const short = [cameIn(4, 9), thawed(6, 8), cameIn(10, 7)];
    expect(drawerOf(short)).toMatchObject({ short: 2 });
    expect(piecesIn(drawerOf(short))).toBe(8);
    const counted = drawerOf([...short, anEvent('prey-counted', { pieces: 9, at: nightsAgo(1) })]);
    expect(counted.short).toBe(0);
    expect(piecesIn(counted)).toBe(9);
  });

  test('a count that finds more adds pieces without a date', () => {
    const counted = drawerOf([
      cameIn(4, 9, '2027-01-01'),
      anEvent('prey-counted', { pieces: 6, at: nightsAgo(1) }),
    ]);
    expect(counted.batches.map(({ pieces }) => pieces)).toEqual([4, 2]);
  });

  test('what is thrown out of the thawed ones was out of it already', () => {
    const binned = anEvent('prey-thrown-out', { pieces: 2, from: 'thawed', at: nightsAgo(1) });
    expect(piecesIn(drawerOf([cameIn(10, 9), thawed(6, 2), binned]))).toBe(4);
    const spoiled = anEvent('prey-thrown-out', { pieces: 2, from: 'freezer', at: nightsAgo(1) });
    expect(piecesIn(drawerOf([cameIn(10, 9), thawed(6, 2), spoiled]))).toBe(2);
  });
});

const anyStep = fc.record({
  what: fc.constantFrom('in', 'thaw', 'out', 'bin', 'count'),
  pieces: fc.integer({ min: 1, max: 30 }),
});

test('holds, piece by piece, what a tally on paper says', () => {
  fc.assert(
    fc.property(fc.array(anyStep, { minLength: 1, maxLength: 30 }), (steps) => {
      let tally = 0;
      const events = steps.map(({ what, pieces }, i): RackEvent => {
        const at = nightsAgo(60 - i);
        if (what === 'in') tally += pieces;
        else if (what === 'count') tally = pieces;
        else if (what !== 'bin') tally -= pieces;
        switch (what) {
          case 'in':
            return cameIn(pieces, 60 - i);
          case 'thaw':
            return anEvent('prey-thawed', { pieces, at });
          case 'count':
            return anEvent('prey-counted', { pieces, at });
          default:
            return anEvent('prey-thrown-out', {
              pieces,
              from: what === 'bin' ? 'thawed' : 'freezer',
              at,
            });
        }
      });
      expect(piecesIn(drawerOf(events))).toBe(tally);
    }),
    runs(200),
  );
});
