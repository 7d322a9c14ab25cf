import { expect, test } from 'vitest';
import { assess } from '../../../src/domain/assess/assess.ts';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { aPicture, anEvent, clockAt, nightsAgo, TONIGHT } from '../../make.ts';
import { animalId, clutchId } from '../../make-ids.ts';

const animal = animalId(1);
const arrived = anEvent('arrived', { animal, name: '26-001A', at: nightsAgo(60) });
const hatched = anEvent('hatched', { animal, clutch: clutchId(1), at: nightsAgo(60) });
const ate = (nights: number, how?: 'assisted') =>
  anEvent('meal-offered', {
    animal,
    outcome: 'ate',
    at: nightsAgo(nights),
    ...(how ? { how } : {}),
  });

const doubts = (how: 'sold' | 'died', ...events: readonly RackEvent[]) =>
  assess(
    { type: 'left', animal, how },
    aPicture([arrived, ...events]),
    clockAt(TONIGHT),
    undefined,
  ).doubts.map(({ code }) => code);

// Three unaided meals in a row: common practice, no source; the keeper's own number.
test('a young one is not sold before it is established', () => {
  expect(doubts('sold', hatched, ate(20), ate(14))).toEqual(['not-established']);
  expect(doubts('sold', hatched, ate(20), ate(14), ate(7))).toEqual([]);
});

test('a helped meal, a refusal and a meal brought up begin the count anew', () => {
  const refused = anEvent('meal-offered', { animal, outcome: 'refused', at: nightsAgo(10) });
  const brought = anEvent('regurgitated', { animal, at: nightsAgo(10) });
  for (const broken of [refused, brought, ate(10, 'assisted')]) {
    expect(doubts('sold', hatched, ate(20), ate(14), broken, ate(7))).toEqual(['not-established']);
  }
});

test('nor in quarantine, nor under treatment', () => {
  const meals = [ate(20), ate(14), ate(7)];
  const quarantine = anEvent('quarantine-started', { animal, at: nightsAgo(9) });
  const treated = anEvent('treated', { animal, at: nightsAgo(9) });
  const over = anEvent('treated', { animal, at: nightsAgo(45) });
  expect(doubts('sold', hatched, ...meals, quarantine)).toEqual(['in-quarantine']);
  expect(doubts('sold', hatched, ...meals, treated)).toEqual(['under-treatment']);
  expect(doubts('sold', hatched, ...meals, over)).toEqual([]);
});

test('one that dies is not held back', () => {
  expect(doubts('died', hatched)).toEqual([]);
});
