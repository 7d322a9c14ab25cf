import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Prey } from '../../../src/domain/events/feeding.ts';
import { plannedMeal, preyG, showMeal } from '../../../src/domain/protocol/planned-meal.ts';
import { unknownAnimal, type Animal } from '../../../src/domain/state/animal.ts';
import { runs } from '../../arbitrary.ts';
import { anEvent } from '../../make.ts';
import { animalId } from '../../make-ids.ts';
import { smallRat } from '../../samples.ts';

function animalOf(massG: number | undefined, last?: Prey): Animal {
  const weighed = anEvent('weighed', { massG: massG ?? 100 });
  const offered = anEvent('meal-offered', last ? { prey: last } : {});
  return {
    ...unknownAnimal(animalId(1)),
    weighings: massG === undefined ? [] : [weighed],
    offers: last ? [offered] : [],
  };
}

// Prey as a share of body mass: 10–15 % to 200 g, 8–12 % to 350 g, 7–10 % to 500 g, 5–8 % to a
// kilogram, 5–7 % to 1.5 kg, 3–6 % above. Common practice, no source. Prey comes in sizes, so what
// is planned may miss that range by half a size.
describe('the meal planned for one that has eaten nothing yet', () => {
  test.each([
    { massG: 60, low: 0.1, high: 0.15 },
    { massG: 150, low: 0.1, high: 0.15 },
    { massG: 300, low: 0.08, high: 0.12 },
    { massG: 450, low: 0.07, high: 0.1 },
    { massG: 800, low: 0.05, high: 0.08 },
    { massG: 1_400, low: 0.05, high: 0.07 },
    { massG: 2_500, low: 0.03, high: 0.06 },
  ])('at $massG g is about $low to $high of it', ({ massG, low, high }) => {
    const share = (preyG(plannedMeal(animalOf(massG))) ?? 0) / massG;
    expect(share).toBeGreaterThan(low / 1.5);
    expect(share).toBeLessThan(high * 1.5);
  });
});

test('it is what it ate last, while that still fits', () => {
  const mice: Prey = { kind: 'mouse', size: 'adult', eachG: 22, count: 2, state: 'fresh' };
  expect(plannedMeal(animalOf(500, mice))).toEqual(mice);
  expect(plannedMeal(animalOf(1_600, smallRat))).toEqual(smallRat);
  expect(plannedMeal(animalOf(3_000, smallRat)).size).not.toBe('small');
});

test('without a weight it is what was offered last', () => {
  const chick: Prey = { kind: 'chick', size: 'day-old', count: 1, state: 'thawed' };
  expect(plannedMeal(animalOf(undefined, chick))).toEqual(chick);
});

const anyPrey = fc.record({
  kind: fc.constantFrom('rat', 'mouse', 'chick', 'other'),
  size: fc.constant('some'),
  eachG: fc.integer({ min: 1, max: 400 }),
  count: fc.integer({ min: 1, max: 6 }),
  state: fc.constant('thawed'),
}) as fc.Arbitrary<Prey>;

// 35 g is a small hatchling; over 35 % of body mass a meal is refused. Common practice, no source.
test('no plan is a meal that could not be written down, also after a regurgitation', () => {
  fc.assert(
    fc.property(
      fc.integer({ min: 35, max: 6_000 }),
      fc.option(anyPrey, { nil: undefined }),
      fc.constantFrom(undefined, 0.03, 0.05),
      (massG, last, share) => {
        const mealG = preyG(plannedMeal(animalOf(massG, last), { share })) ?? 0;
        expect(mealG).toBeGreaterThan(0);
        expect(mealG / massG).toBeLessThan(share === undefined ? 0.35 : 0.2);
      },
    ),
    runs(500),
  );
});

test.each([
  { meal: smallRat, words: '1 small rat, 65\u00A0g' },
  { meal: { ...smallRat, count: 2 }, words: '2 small rats, 130\u00A0g' },
  {
    meal: { ...smallRat, kind: 'mouse', size: 'adult', eachG: 22 },
    words: '1 adult mouse, 22\u00A0g',
  },
  {
    meal: { ...smallRat, kind: 'mouse', size: 'adult', count: 3 },
    words: '3 adult mice, 195\u00A0g',
  },
  { meal: { ...smallRat, kind: 'other', size: 'quail', eachG: undefined }, words: '1 quail' },
] as { meal: Prey; words: string }[])('is shown as $words', ({ meal, words }) => {
  expect(showMeal(meal)).toBe(words);
});
