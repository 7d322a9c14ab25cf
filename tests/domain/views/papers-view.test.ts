import { expect, test } from 'vitest';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { papersView } from '../../../src/domain/views/papers-view.ts';
import { anEvent, aPicture, day, instead, nightsAgo } from '../../make.ts';
import { animalId, clutchId } from '../../make-ids.ts';

const [young, dam, sire, other] = [animalId(1), animalId(2), animalId(3), animalId(4)];
const clutch = clutchId(1);
const family = [
  anEvent('arrived', {
    animal: dam,
    name: 'Marrow',
    sex: 'female',
    traits: 'Pastel',
    at: nightsAgo(900),
  }),
  anEvent('arrived', {
    animal: sire,
    name: 'Flint',
    sex: 'male',
    traits: 'het Clown',
    at: nightsAgo(900),
  }),
  anEvent('arrived', { animal: other, name: 'Cedar', sex: 'male', at: nightsAgo(900) }),
  anEvent('laid', { animal: dam, clutch, at: nightsAgo(160) }),
  anEvent('arrived', {
    animal: young,
    name: '26-001A',
    sex: 'female',
    origin: 'own',
    hatchedDay: day('2026-08-20'),
    traits: 'Pastel',
    at: nightsAgo(95),
  }),
  anEvent('parents-stated', { animal: young, dam, sires: [sire], at: nightsAgo(95) }),
];
const view = (...events: readonly RackEvent[]) =>
  papersView(young, aPicture([...family, ...events]))!;

test('parents stand with what they rest on: a statement, or a clutch and who was seen with her', () => {
  expect(view().parents).toEqual([
    ['Dam', 'Marrow, Pastel; as stated'],
    ['Sire', 'Flint, het Clown (as stated)'],
  ]);
  const fathers = anEvent('paternity-stated', {
    animal: dam,
    clutch,
    sires: [
      { male: sire, grounds: 'locked' },
      { male: other, grounds: 'DNA test' },
      { male: 'unknown', grounds: 'stored sperm' },
    ],
    at: nightsAgo(159),
  });
  const hatched = anEvent('hatched', { animal: young, clutch, at: nightsAgo(96) });
  // Of the clutch's fathers, only those that its own statement names.
  expect(view(fathers, hatched).parents[1]).toEqual(['Sire', 'Flint, het Clown (seen locked)']);
  const both = anEvent('parents-stated', {
    animal: young,
    dam,
    sires: [other, sire],
    at: nightsAgo(90),
  });
  expect(view(fathers, hatched, both).parents).toEqual([
    ['Dam', 'Marrow, Pastel; by records, eggs of 17 Jun 2026'],
    [
      'Sire',
      'Flint, het Clown (seen locked), or Cedar (DNA test), or an unknown male (stored sperm)',
    ],
  ]);
});

test('genes stand with how sure they are, from the book of genes', () => {
  const tested = anEvent('gene-tested', {
    animal: young,
    locus: 'clown',
    allele: 'clown',
    result: 'found',
    at: nightsAgo(9),
  });
  // Half of the young of one that carries a recessive gene carry it (Mendel).
  expect(view().genes).toContainEqual({
    name: 'Clown',
    has: '50 %',
    sure: 'possible, at hatching',
  });
  expect(view(tested).genes.find(({ name }) => name === 'Clown')?.sure).toBe('DNA test: found');
  expect(view().genes.find(({ name }) => name === 'Pastel')?.sure).toBe(
    'by its parents and its looks',
  );
});

test('the feed log holds the last ten offers with size, weight and outcome, newest first', () => {
  const meals = Array.from({ length: 12 }, (_, n) =>
    anEvent('meal-offered', { animal: young, at: nightsAgo(80 - 7 * n) }),
  );
  const [eaten, left] = [meals.at(-2)!, meals.at(-1)!];
  const settled = anEvent('meal-settled', {
    animal: young,
    offer: left.id,
    outcome: 'refused',
    at: nightsAgo(2),
  });
  const shown = view(...meals, settled);
  expect(shown.meals).toHaveLength(10);
  expect(shown.meals[0]?.says).toBe('refused 1 small rat, 65 g, thawed');
  expect(shown.meals[1]).toEqual({
    night: '2026-11-14',
    says: 'ate 1 small rat, 65 g, thawed',
  });
  expect(shown.lastFed).toBe(eaten.at.slice(0, 10));
  expect(shown.eats).toBe('thawed small rat');
});

test('treatments, tests and grave signs are told, and what was struck is not', () => {
  const course = anEvent('treated', { animal: young, until: day('2026-10-01'), at: nightsAgo(70) });
  const slip = anEvent('regurgitated', { animal: young, at: nightsAgo(60) });
  const struck = anEvent('struck', { target: slip.id, at: nightsAgo(59) });
  const says = view(course, slip, struck).health.map((each) => each.says);
  expect(says).toEqual(['treated as prescribed by a vet, until 1 Oct 2026']);
});

test('a corrected price is the one that stands', () => {
  const sold = anEvent('sold', { animal: young, at: nightsAgo(3) });
  const right = instead(
    sold,
    anEvent('sold', { animal: young, price: { minor: 40_000, currency: 'EUR' }, at: nightsAgo(3) }),
  );
  expect(view(sold).says).toBe('sold on 21 Nov 2026, not handed over, 450.00\u00a0EUR');
  expect(view(sold, right).says).toBe('sold on 21 Nov 2026, not handed over, 400.00\u00a0EUR');
});
