import { describe, expect, test } from 'vitest';
import { assess } from '../../../src/domain/assess/assess.ts';
import type { Draft, RackEvent } from '../../../src/domain/events/event.ts';
import { anEvent, aPicture, clockAt, nightsAgo, TONIGHT } from '../../make.ts';
import { animalId, tubId } from '../../make-ids.ts';
import { smallRat } from '../../samples.ts';

const sorrel = animalId(1);
const cedar = animalId(2);
const room: RackEvent[] = [
  anEvent('rack-made', { at: nightsAgo(90) }),
  anEvent('tub-made', { at: nightsAgo(90) }),
  anEvent('arrived', { at: nightsAgo(90) }),
  anEvent('arrived', { animal: cedar, name: 'Cedar', sex: 'male', at: nightsAgo(90) }),
  anEvent('weighed', { massG: 1_500, at: nightsAgo(10) }),
];

function codes(draft: Draft, ...events: RackEvent[]): string[] {
  const picture = aPicture([...room, ...events]);
  const { refusals, doubts } = assess(draft, picture, clockAt(TONIGHT), undefined);
  return [...refusals.map(({ code }) => `refused: ${code}`), ...doubts.map(({ code }) => code)];
}

// Bounds of a meal, of sheds, scans and pairings are common practice, no source.
describe('a meal', () => {
  const meal = (prey: Partial<typeof smallRat>, outcome: 'ate' | 'refused' = 'ate'): Draft => ({
    type: 'meal-offered',
    animal: sorrel,
    prey: { ...smallRat, ...prey },
    outcome,
  });

  test.each([
    { prey: {}, asked: [], why: '4 % of 1,500 g' },
    { prey: { eachG: 310 }, asked: ['big-meal'], why: 'over 20 %' },
    { prey: { eachG: 200, count: 3 }, asked: ['refused: meal-too-big'], why: 'over 35 %' },
    { prey: { eachG: 22 }, asked: ['small-meal'], why: 'under 2 %' },
    { prey: { eachG: 20, count: 4 }, asked: ['many'], why: 'four at once' },
    { prey: { eachG: undefined }, asked: [], why: 'of unknown mass' },
  ])('of $prey: $asked, since it is $why', ({ prey, asked }) => {
    expect(codes(meal(prey as typeof smallRat))).toEqual(asked);
  });

  test('for one in blue that ate is asked about, and a refusal is not', () => {
    const blue = anEvent('opaque-seen', { at: nightsAgo(3) });
    expect(codes(meal({}), blue)).toEqual(['blocked']);
    expect(codes(meal({}, 'refused'), blue)).toEqual([]);
  });

  test('within three days of another is asked about', () => {
    expect(codes(meal({}), anEvent('meal-offered', { at: nightsAgo(3) }))).toEqual(['fed-lately']);
    expect(codes(meal({}), anEvent('meal-offered', { at: nightsAgo(4) }))).toEqual([]);
  });
});

describe('a shed', () => {
  const shed: Draft = { type: 'shed', animal: sorrel, quality: 'whole' };
  test.each([
    { nights: 4, asked: ['shed-twice'] },
    { nights: 13, asked: ['shed-soon'] },
    { nights: 14, asked: [] },
  ])('$nights days after the last: $asked', ({ nights, asked }) => {
    expect(codes(shed, anEvent('shed', { at: nightsAgo(nights) }))).toEqual(asked);
  });
});

describe('a scan', () => {
  const scan = (mm: number, animal = sorrel): Draft => ({
    type: 'follicles-scanned',
    animal,
    found: { method: 'ultrasound', largestMm: [mm, mm - 0.4] },
  });
  const before = (mm: number) =>
    anEvent('follicles-scanned', {
      found: { method: 'ultrasound', largestMm: [mm, mm] },
      at: nightsAgo(20),
    });

  test('of 1.8 mm was meant in centimetres, and 18 mm is offered', () => {
    const picture = aPicture(room);
    const { doubts } = assess(scan(1.8), picture, clockAt(TONIGHT), undefined);
    expect(doubts).toMatchObject([{ code: 'centimetres', instead: { value: 18 } }]);
  });

  test.each([
    { mm: 20, last: 18, asked: [], why: 'grown' },
    { mm: 13, last: 20, asked: ['fell'], why: 'over 30 % smaller' },
    { mm: 15, last: 20, asked: [], why: 'a quarter smaller' },
    { mm: 60, last: 40, asked: ['very-large'], why: 'larger than a ripe one' },
  ])('of $mm mm after $last mm: $asked, since it is $why', ({ mm, last, asked }) => {
    expect(codes(scan(mm), before(last))).toEqual(asked);
  });

  test('of a male is refused', () => {
    expect(codes(scan(20, cedar))).toEqual(['refused: male-scanned']);
  });
});

describe('an introduction', () => {
  const pair = (male = cedar, female = sorrel): Draft => ({
    type: 'introduced',
    male,
    female,
    tub: tubId(1),
  });
  const oak = animalId(3);
  const another = anEvent('arrived', { animal: oak, name: 'Oak', sex: 'male', at: nightsAgo(90) });

  test('of a male to a female is not asked about', () => {
    expect(codes(pair())).toEqual([]);
  });

  test.each([
    { who: 'it and itself', draft: pair(cedar, cedar), code: 'same-animal' },
    { who: 'a female to a male', draft: pair(sorrel, cedar), code: 'not-male' },
    { who: 'two males', draft: pair(cedar, oak), code: 'same-sex' },
  ])('of $who is refused', ({ draft, code }) => {
    expect(codes(draft, another)).toEqual([`refused: ${code}`]);
  });

  test('of a male that is still elsewhere is refused', () => {
    const visit = anEvent('introduced', { at: nightsAgo(1) });
    expect(codes(pair(), visit)).toEqual(['refused: already-visiting']);
  });

  test.each([
    {
      what: 'after a meal',
      event: anEvent('meal-offered', { at: nightsAgo(1) }),
      code: 'fed-lately',
    },
    { what: 'in quarantine', event: anEvent('quarantine-started'), code: 'quarantine' },
    { what: 'in blue', event: anEvent('opaque-seen', { at: nightsAgo(2) }), code: 'hold' },
    { what: 'on a hold', event: anEvent('regurgitated', { at: nightsAgo(9) }), code: 'hold' },
  ])('$what is asked about', ({ event, code }) => {
    expect(codes(pair(), event)).toEqual([code]);
  });

  test('of a second male is asked about', () => {
    const visit = anEvent('introduced', { male: oak, at: nightsAgo(1) });
    expect(codes(pair(), another, visit)).toEqual(['second-male']);
  });
});

test('a move into the tub of another is asked about', () => {
  const lives = anEvent('moved', { at: nightsAgo(80) });
  expect(codes({ type: 'moved', animal: cedar, tub: tubId(1) }, lives)).toEqual(['occupied']);
  expect(codes({ type: 'moved', animal: sorrel, tub: tubId(1) }, lives)).toEqual([]);
});

test('a record of one that is gone is asked about, unless it says that it is back', () => {
  const sold = anEvent('left', { how: 'sold', at: nightsAgo(2) });
  expect(codes({ type: 'opaque-seen', animal: sorrel }, sold)).toEqual(['gone']);
  expect(codes({ type: 'came-back', animal: sorrel }, sold)).toEqual([]);
});

test('what has not happened yet is refused, with five minutes for a clock that is slow', () => {
  const at = (text: string): Draft => ({ type: 'opaque-seen', animal: sorrel, at: text as never });
  expect(codes(at('2026-11-24T22:05:00+01:00'))).toEqual([]);
  expect(codes(at('2026-11-24T22:06:00+01:00'))).toEqual(['refused: future']);
  expect(codes(at('2026-11-24T21:30:00+00:00'))).toEqual(['refused: future']);
});
