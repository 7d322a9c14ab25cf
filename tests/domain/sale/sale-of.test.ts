import { describe, expect, test } from 'vitest';
import { saleNumbers } from '../../../src/domain/sale/sale-numbers.ts';
import { saleStory } from '../../../src/domain/sale/sale-of.ts';
import { anEvent, aPicture, day, nightsAgo } from '../../make.ts';
import { animalId, buyerId } from '../../make-ids.ts';

const animal = animalId(1);
const up = (ago: number) => anEvent('put-up-for-sale', { animal, at: nightsAgo(ago) });
const reserved = (ago: number) => anEvent('reserved', { animal, at: nightsAgo(ago) });
const sold = (ago: number) =>
  anEvent('sold', { animal, at: nightsAgo(ago), price: { minor: 40_000, currency: 'EUR' } });
const left = (ago: number) => anEvent('left', { animal, how: 'sold', at: nightsAgo(ago) });
const back = (ago: number) => anEvent('came-back', { animal, at: nightsAgo(ago) });
const ended = (ago: number, why: 'fell through' | 'brought back') =>
  anEvent('sale-ended', { animal, why, at: nightsAgo(ago) });

describe('a sale', () => {
  test('goes from offered to handed over, a record at a time', () => {
    const steps = [up(30), reserved(20), sold(10), left(5)];
    expect(steps.map((_, n) => saleStory(steps.slice(0, n + 1)).stage)).toEqual([
      'for sale',
      'reserved',
      'sold',
      'handed over',
    ]);
  });

  test('without a price of its own has the one last named, and the buyer it was reserved for', () => {
    const plain = anEvent('sold', {
      animal,
      at: nightsAgo(10),
      price: undefined,
      buyer: undefined,
    });
    expect(saleStory([up(30), reserved(20), plain]).sale).toMatchObject({
      price: { minor: 45_000, currency: 'EUR' },
      buyer: buyerId(1),
      listedAt: nightsAgo(30),
    });
  });

  test('that fell through leaves it for sale; one brought back takes it off the list', () => {
    const fell = saleStory([up(30), sold(20), ended(10, 'fell through')]);
    expect(fell).toMatchObject({ stage: 'for sale', past: [{ ended: { why: 'fell through' } }] });
    const brought = saleStory([up(30), sold(20), left(15), ended(10, 'brought back'), back(10)]);
    expect(brought).toMatchObject({
      stage: 'not offered',
      past: [{ leftAt: nightsAgo(15), ended: { why: 'brought back' } }],
    });
  });

  test('whose animal is here again is only agreed until that is said', () => {
    expect(saleStory([sold(20), left(15), back(10)]).stage).toBe('sold');
    expect(saleStory([sold(20), left(15), back(10), left(5)]).stage).toBe('handed over');
    expect(saleStory([left(15), back(10)])).toMatchObject({ stage: 'not offered', past: [] });
  });

  test('kept back or taken off the list it is not offered', () => {
    const kept = anEvent('held-back', { animal, at: nightsAgo(5) });
    const off = anEvent('taken-off-sale', { animal, at: nightsAgo(5) });
    for (const each of [kept, off]) expect(saleStory([up(30), each]).stage).toBe('not offered');
  });
});

test('putting it up for sale ends keeping it back', () => {
  const arrived = anEvent('arrived', { animal, at: nightsAgo(60) });
  const kept = anEvent('held-back', { animal, at: nightsAgo(20) });
  expect(aPicture([arrived, kept]).animal(animal)?.heldBack).toBe(true);
  expect(aPicture([arrived, kept, up(5)]).animal(animal)?.heldBack).toBe(false);
});

describe('the numbers of a span', () => {
  const hatched = (n: number, on: string) =>
    anEvent('arrived', {
      animal: animalId(n),
      hatchedDay: day(on),
      at: '2026-01-02T12:00:00+01:00',
    });
  const sale = (n: number, on: string, minor: number, currency = 'EUR') =>
    anEvent('sold', {
      animal: animalId(n),
      price: { minor, currency },
      at: `${on}T12:00:00+01:00`,
    });
  const events = [
    hatched(1, '2026-01-01'),
    hatched(2, '2026-01-01'),
    hatched(3, '2026-01-01'),
    hatched(4, '2026-01-01'),
    sale(1, '2026-01-11', 10_000),
    sale(2, '2026-01-21', 20_000),
    sale(3, '2026-02-10', 5_000, 'USD'),
    sale(4, '2026-02-11', 99_000),
    anEvent('sale-ended', { animal: animalId(4), at: '2026-02-20T12:00:00+01:00' }),
  ];
  const numbers = saleNumbers(aPicture(events), day('2026-01-01'), day('2026-12-31'));

  test('count what was sold and held, apart from what came to nothing', () => {
    expect(numbers).toMatchObject({ sold: 3, ended: 1 });
  });

  test('add up each currency by itself', () => {
    expect(numbers.takings).toEqual([
      { currency: 'EUR', count: 2, totalMinor: 30_000 },
      { currency: 'USD', count: 1, totalMinor: 5_000 },
    ]);
  });

  // 10, 20 and 40 days; quartiles of type 7 lie halfway between neighbours: 15 and 30.
  test('say how long it took, in the middle and for the middle half', () => {
    expect(numbers.hatchToSale).toEqual({ n: 3, median: 20, from: 15, to: 30 });
    expect(numbers.onOffer).toBeUndefined();
  });

  test('leave out what was sold before or after, but for the days at either end', () => {
    const span = (from: string, to: string) =>
      saleNumbers(aPicture(events), day(from), day(to)).sold;
    expect(span('2026-01-11', '2026-01-21')).toBe(2);
    expect(span('2026-01-12', '2026-01-20')).toBe(0);
  });
});
