import { describe, expect, test } from 'vitest';
import { assess } from '../../../src/domain/assess/assess.ts';
import type { Draft, RackEvent } from '../../../src/domain/events/event.ts';
import { anEvent, aPicture, clockAt, nightsAgo, TONIGHT } from '../../make.ts';
import { animalId } from '../../make-ids.ts';

const sorrel = animalId(1);
const arrived = anEvent('arrived', { at: nightsAgo(200) });

const verdict = (draft: Draft, ...events: RackEvent[]) =>
  assess(draft, aPicture([arrived, ...events]), clockAt(TONIGHT), undefined);
const codes = (draft: Draft, ...events: RackEvent[]) =>
  verdict(draft, ...events).doubts.map(({ code }) => code);

const scanned = (mm: number, nights: number) =>
  anEvent('follicles-scanned', {
    found: { method: 'ultrasound', largestMm: [mm, mm] },
    at: nightsAgo(nights),
  });
const ovulated = (nights: number) =>
  anEvent('ovulated', { sure: 'seen at peak', at: nightsAgo(nights) });

// The pre-lay shed comes 14–25 days after ovulation, 8–40 at the outside; without an ovulation, large
// follicles speak for it. Common practice, no source.
describe('a shed that is said to be the pre-lay shed', () => {
  const preLay: Draft = { type: 'shed', animal: sorrel, quality: 'whole', preLay: true };

  test.each([
    { what: '7 days after ovulation', events: [ovulated(7)], asked: ['not-pre-lay'] },
    { what: '8 days after ovulation', events: [ovulated(8)], asked: [] },
    { what: '40 days after ovulation', events: [ovulated(40)], asked: [] },
    { what: '41 days after ovulation', events: [ovulated(41)], asked: ['not-pre-lay'] },
    { what: 'after large follicles', events: [scanned(36, 12)], asked: [] },
    { what: 'after small follicles', events: [scanned(12, 12)], asked: ['not-pre-lay'] },
    { what: 'with nothing on record', events: [], asked: ['not-pre-lay'] },
  ])('$what: $asked', ({ events, asked }) => {
    expect(codes(preLay, ...events)).toEqual(asked);
  });

  test('is held against the whole time in which ovulation may have been', () => {
    const late = anEvent('ovulated', {
      sure: 'seen late',
      precision: 'between',
      notBefore: nightsAgo(9),
      at: nightsAgo(6),
    });
    expect(codes(preLay, late)).toEqual([]);
  });

  test('is not asked about where it is an ordinary one', () => {
    expect(codes({ ...preLay, preLay: false })).toEqual([]);
  });
});

test('a shed that stands in for another is not taken for a second one', () => {
  const first = anEvent('shed', { at: nightsAgo(1) });
  const again: Draft = {
    type: 'shed',
    animal: sorrel,
    quality: 'whole',
    preLay: false,
    at: first.at,
    replaces: { id: first.id, reason: 'It was not the pre-lay shed' },
  };
  expect(codes(again, first)).toEqual([]);
  expect(codes({ type: 'shed', animal: sorrel, quality: 'whole' }, first)).toEqual(['shed-twice']);
});

describe('a scan written down later', () => {
  test('is held against the last one before its night, and not one after it', () => {
    const draft: Draft = {
      type: 'follicles-scanned',
      animal: sorrel,
      found: { method: 'ultrasound', largestMm: [20, 19] },
      at: nightsAgo(10),
    };
    expect(codes(draft, scanned(18, 14), scanned(34, 1))).toEqual([]);
    expect(codes({ ...draft, at: nightsAgo(0) }, scanned(18, 14), scanned(34, 1))).toEqual([
      'fell',
    ]);
  });
});

// A meal lies further forward than follicles and is felt for about five days. Common practice.
test('lumps felt after a meal are written with a remark on it', () => {
  const felt: Draft = {
    type: 'follicles-scanned',
    animal: sorrel,
    found: { method: 'palpation', felt: 'round lumps' },
  };
  const meal = (nights: number) => anEvent('meal-offered', { at: nightsAgo(nights) });
  expect(verdict(felt, meal(2)).notes).toEqual(['She ate 2 days ago: a meal can feel like lumps.']);
  expect(verdict(felt, meal(6)).notes).toEqual([]);
});
