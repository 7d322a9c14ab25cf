import { describe, expect, test } from 'vitest';
import { assess } from '../../../src/domain/assess/assess.ts';
import type { Draft, RackEvent } from '../../../src/domain/events/event.ts';
import { anEvent, aPicture, clockAt } from '../../make.ts';
import { tubId } from '../../make-ids.ts';
import {
  arrivals,
  ate,
  her,
  him,
  laid,
  on,
  ovulated,
  scan,
  shed,
  wholeSeason,
} from '../season/make-season.ts';

// Limits are common practice, no source.

function codes(day: string, draft: Draft, events: readonly RackEvent[] = []): string[] {
  const picture = aPicture([...arrivals, ...events], on(day));
  const { refusals, doubts } = assess(draft, picture, clockAt(on(day)), undefined);
  return [...refusals.map(({ code }) => `refused: ${code}`), ...doubts.map(({ code }) => code)];
}

const ovulation: Draft = { type: 'ovulated', animal: her, sure: 'seen at peak' };
const eggs: Draft = { type: 'laid', animal: her, good: 6 };

describe('an ovulation', () => {
  const building = wholeSeason.slice(0, 7);
  test('in its time is not asked about', () => {
    expect(codes('2027-02-05', ovulation, building)).toEqual([]);
  });
  test('a second time within 120 days is asked about', () => {
    expect(codes('2027-02-15', ovulation, [...building, ovulated('2027-02-05')])).toContain(
      'ovulated-again',
    );
  });
  test('that the pre-lay shed contradicts is asked about with the days', () => {
    const early = [...building, shed('2027-02-03', true)];
    expect(codes('2027-02-05', ovulation, early)).toEqual(['contradicts']);
  });
  test('of a male is refused', () => {
    expect(codes('2027-02-05', { ...ovulation, animal: him })).toEqual(['refused: male-eggs']);
  });
});

describe('eggs', () => {
  test('in their time are not asked about', () => {
    expect(codes('2027-03-26', eggs, wholeSeason.slice(0, 9))).toEqual([]);
  });
  test('of one with no ovulation and no pre-lay shed on record are asked about', () => {
    expect(codes('2027-03-26', eggs, wholeSeason.slice(0, 7))).toEqual(['not-gravid']);
  });
  test('five days after the pre-lay shed are asked about', () => {
    expect(codes('2027-03-01', eggs, wholeSeason.slice(0, 9))).toEqual(['contradicts']);
  });
  test('found again a day later are the same clutch; weeks later another one', () => {
    const before = [...wholeSeason.slice(0, 9), laid('2027-03-25')];
    expect(codes('2027-03-26', eggs, before)).toEqual(['same-clutch']);
    expect(codes('2027-04-16', eggs, before)).toContain('laid-again');
  });
});

describe('a visit', () => {
  const visit: Draft = { type: 'introduced', male: him, female: her, tub: tubId(1) };
  test('to one that is ready is not asked about', () => {
    expect(codes('2026-12-02', visit, [scan('2026-12-01', 14)])).toEqual([]);
  });
  test('within three days of a meal, of a light female, or after ovulation is asked about', () => {
    expect(codes('2026-12-02', visit, [ate('2026-11-30')])).toEqual(['fed-lately']);
    expect(codes('2026-12-03', visit, [ate('2026-11-30')])).toEqual([]);
    const light = anEvent('weighed', { animal: her, massG: 1_380, at: on('2026-11-20') });
    expect(codes('2026-12-02', visit, [light])).toEqual(['not-ready']);
    expect(codes('2027-02-08', visit, wholeSeason.slice(0, 8))).toContain('too-late');
    expect(codes('2027-02-01', visit, [scan('2027-01-30', 46)])).toEqual(['too-late']);
  });
});
