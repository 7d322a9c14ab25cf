import { expect, test } from 'vitest';
import { assess } from '../../../src/domain/assess/assess.ts';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { againstSale } from '../../../src/domain/sale/against-sale.ts';
import { salesView } from '../../../src/domain/views/sales-view.ts';
import { anEvent, aPicture, clockAt, day, nightsAgo, TONIGHT } from '../../make.ts';
import { animalId } from '../../make-ids.ts';

const animal = animalId(1);
const arrived = anEvent('arrived', {
  animal,
  origin: 'own',
  hatchedDay: day('2026-08-01'),
  at: nightsAgo(100),
});
const ate = (ago: number) => anEvent('meal-offered', { animal, at: nightsAgo(ago) });
const eats = [arrived, ate(30), ate(23), ate(16)];

const rulesAgainst = (...events: readonly RackEvent[]) => {
  const picture = aPicture(events);
  return againstSale(picture.animal(animal)!, picture.facts).map(({ rule }) => rule);
};
const groupOf = (...events: readonly RackEvent[]) =>
  salesView(aPicture(events)).groups.find(({ lines }) => lines.length > 0)?.group;

// Three unaided meals in a row: common practice, no source; the keeper's own number.
test('[D1] a young one stays until it is established, a grown one is not asked', () => {
  expect(rulesAgainst(arrived, ate(30), ate(23))).toEqual(['D1']);
  expect(rulesAgainst(...eats)).toEqual([]);
  const grown = anEvent('arrived', { animal, origin: 'own', hatchedDay: day('2023-08-01') });
  expect(rulesAgainst(grown)).toEqual([]);
});

test('[D2] in quarantine it stays', () => {
  const quarantine = anEvent('quarantine-started', { animal, at: nightsAgo(9) });
  const over = anEvent('quarantine-ended', { animal, at: nightsAgo(1) });
  expect(rulesAgainst(...eats, quarantine)).toEqual(['D2']);
  expect(rulesAgainst(...eats, quarantine, over)).toEqual([]);
});

test('[D3] under treatment it stays, until the last day of the course', () => {
  const course = (until: string) =>
    anEvent('treated', { animal, until: day(until), at: nightsAgo(9) });
  expect(rulesAgainst(...eats, course('2026-11-24'))).toEqual(['D3']);
  expect(rulesAgainst(...eats, course('2026-11-23'))).toEqual([]);
});

test('[D4] with a grave sign it stays, until the same is a lesser one', () => {
  const sign = (severity: 1 | 3, ago: number) =>
    anEvent('health-noted', { animal, system: 'breathing', severity, at: nightsAgo(ago) });
  expect(rulesAgainst(...eats, sign(3, 40))).toEqual(['D4']);
  expect(rulesAgainst(...eats, sign(3, 40), sign(1, 2))).toEqual([]);
});

test('[D5] kept back it is not on offer', () => {
  const kept = anEvent('held-back', { animal, at: nightsAgo(9) });
  expect(rulesAgainst(...eats, kept)).toEqual(['D5']);
});

test('the list tells what may go from what may not, and why', () => {
  const up = anEvent('put-up-for-sale', { animal, at: nightsAgo(5) });
  const quarantine = anEvent('quarantine-started', { animal, at: nightsAgo(3) });
  const kept = anEvent('held-back', { animal, at: nightsAgo(2) });
  const reserved = anEvent('reserved', { animal, at: nightsAgo(2) });
  expect(groupOf(...eats)).toBe('ready');
  expect(groupOf(...eats, up)).toBe('for sale');
  expect(groupOf(...eats, up, quarantine)).toBe('not yet');
  expect(groupOf(arrived)).toBe('not yet');
  expect(groupOf(...eats, up, kept)).toBe('kept back');
  expect(groupOf(...eats, up, reserved)).toBe('reserved');
  expect(groupOf(anEvent('arrived', { animal, origin: 'bought' }))).toBeUndefined();
});

test('a reservation is good until the end of its last day, and then says that it ran out', () => {
  const says = (until: string) => {
    const reserved = anEvent('reserved', { animal, until: day(until), at: nightsAgo(9) });
    return salesView(aPicture([...eats, reserved])).groups[0]?.lines[0]?.says;
  };
  expect(says('2026-11-24')).toBe('reserved until 24 Nov 2026');
  expect(says('2026-11-23')).toBe('reserved, the time ran out on 23 Nov 2026');
});

const doubts = (draft: Parameters<typeof assess>[0], ...events: readonly RackEvent[]) =>
  assess(draft, aPicture(events), clockAt(TONIGHT), undefined).doubts.map(({ code }) => code);

test('promised in spite of it, the keeper is asked first', () => {
  expect(doubts({ type: 'reserved', animal }, arrived)).toEqual(['not-established']);
  expect(doubts({ type: 'sold', animal }, arrived)).toEqual(['not-established']);
  expect(doubts({ type: 'sold', animal }, ...eats)).toEqual([]);
});

// Three days after a meal, not in blue, not unwell: common practice, no source.
test('an unwell animal is not sent, nor one just fed or in blue', () => {
  const sent = { type: 'handed-over', animal, how: 'sent' } as const;
  const collected = { ...sent, how: 'collected' } as const;
  const unwell = anEvent('treated', { animal, until: day('2026-12-24'), at: nightsAgo(9) });
  const blue = anEvent('opaque-seen', { animal, at: nightsAgo(2) });
  expect(doubts(sent, ...eats)).toEqual([]);
  expect(doubts(sent, ...eats, unwell)).toEqual(['unwell-sent']);
  expect(doubts(sent, ...eats, ate(2))).toEqual(['sent-full']);
  expect(doubts(sent, ...eats, ate(3))).toEqual([]);
  expect(doubts(sent, ...eats, blue)).toEqual(['sent-in-blue']);
  expect(doubts(collected, ...eats, unwell, blue, ate(1))).toEqual([]);
});
