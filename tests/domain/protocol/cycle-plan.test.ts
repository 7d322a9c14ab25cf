import { describe, expect, test } from 'vitest';
import type { Day } from '../../../src/domain/core/calendar.ts';
import type { EventOf } from '../../../src/domain/events/event.ts';
import { cyclePlan } from '../../../src/domain/protocol/cycle-plan.ts';
import { feedingPlan } from '../../../src/domain/protocol/feeding-plan.ts';
import { plannedMeal, preyG } from '../../../src/domain/protocol/planned-meal.ts';
import { preySizesWith } from '../../../src/domain/protocol/prey-sizes.ts';
import { defaultProtocol } from '../../../src/domain/protocol/values.ts';
import { unknownAnimal, type Animal } from '../../../src/domain/state/animal.ts';
import { anEvent } from '../../make.ts';
import { animalId } from '../../make-ids.ts';

const JULY = '2026-07-10' as Day;
const JANUARY = '2027-01-10' as Day;

type Exceptions = EventOf<'feeding-excepted'>['exceptions'];

const snake = (sex: Animal['sex'], massG: number, exceptions?: Exceptions): Animal => ({
  ...unknownAnimal(animalId(1)),
  sex,
  weighings: [anEvent('weighed', { massG })],
  ...(exceptions && { feedingExcepted: anEvent('feeding-excepted', { exceptions }) }),
});

const days = (animal: Animal, night: Day, stage?: string, protocol = defaultProtocol): number =>
  feedingPlan(animal, { night, protocol }, stage).everyDays;

// Females are kept in summer and fed up into the season, males the other way round; hatchlings are never
// cut back. Common practice, no source.
describe('the plan of the year', () => {
  test('feeds a female more often in the season than in summer, and a male less', () => {
    expect(days(snake('female', 1_700), JANUARY)).toBeLessThan(days(snake('female', 1_700), JULY));
    expect(days(snake('male', 900), JANUARY)).toBeGreaterThan(days(snake('male', 900), JULY));
  });

  test('knows no season for a hatchling', () => {
    expect(days(snake('female', 90), JANUARY)).toBe(days(snake('female', 90), JULY));
  });

  test('gives smaller meals to one that builds, and to a male in the season', () => {
    const portion = (animal: Animal, night: Day, stage?: string) =>
      feedingPlan(animal, { night, protocol: defaultProtocol }, stage).portion;
    expect(portion(snake('female', 1_700), JANUARY, 'building')).toBeLessThan(1);
    expect(portion(snake('male', 900), JANUARY)).toBeLessThan(1);
    expect(portion(snake('male', 900), JULY)).toBe(1);
  });

  // A 7-day rhythm after laying: common practice, no source.
  test('feeds a female back every week after her eggs, also in summer', () => {
    expect(days(snake('female', 1_500), JULY, 'recovering')).toBe(7);
  });

  test('has for each class a row that always fits', () => {
    const always = cyclePlan.filter(({ sex, stages, months }) => !sex && !stages && !months);
    const classes = new Set(cyclePlan.map((row) => row.class));
    expect(new Set(always.map((row) => row.class))).toEqual(classes);
  });

  test('south of the equator is half a year later', () => {
    const south = { ...defaultProtocol, yearShiftMonths: 6 };
    for (const [sex, massG] of [
      ['female', 1_700],
      ['male', 900],
    ] as const) {
      const animal = snake(sex, massG);
      expect(days(animal, JANUARY, undefined, south)).toBe(days(animal, JULY));
      expect(days(animal, JULY, undefined, south)).toBe(days(animal, JANUARY));
    }
  });
});

describe('what the keeper lays down for one snake', () => {
  const winterMice: Exceptions = [{ months: [11, 3], kind: 'mouse', why: 'takes mice in winter' }];

  test('holds in its months, over the end of the year, and not outside', () => {
    const male = snake('male', 900, winterMice);
    const own = (night: string) =>
      feedingPlan(male, { night: night as Day, protocol: defaultProtocol }, undefined).own;
    expect(own('2026-11-01')?.kind).toBe('mouse');
    expect(own('2027-03-31')?.kind).toBe('mouse');
    expect(own('2026-10-31')).toBeUndefined();
    expect(own('2027-04-01')).toBeUndefined();
  });

  test('mice are as many as come near the usual meal, at most three', () => {
    const meal = plannedMeal(snake('male', 700), { own: { kind: 'mouse' } });
    expect(meal).toMatchObject({ kind: 'mouse', size: 'adult', count: 2 });
    expect(plannedMeal(snake('male', 2_000), { own: { kind: 'mouse' } }).count).toBe(3);
  });

  test('its own interval goes before the plan', () => {
    expect(days(snake('female', 1_700, [{ everyDays: 21 }]), JANUARY)).toBe(21);
  });
});

describe('the keeper’s own table of sizes', () => {
  const own = preySizesWith([
    { kind: 'rat', size: 'small', eachG: 90 },
    { kind: 'rat', size: 'medium', eachG: null },
    { kind: 'rat', size: 'jumbo', eachG: 250 },
  ]);

  test('stands in for the usual weights, adds sizes and takes sizes away', () => {
    const eachG = (size: string) =>
      own.find((each) => each.kind === 'rat' && each.size === size)?.eachG;
    expect(eachG('small')).toBe(90);
    expect(eachG('medium')).toBeUndefined();
    expect(eachG('jumbo')).toBe(250);
    expect(eachG('weaned')).toBe(40);
  });

  test('weighs the meal it ate last, and no meal is planned of what is no longer bought', () => {
    const ate = (size: string, eachG: number) =>
      anEvent('meal-offered', { prey: { kind: 'rat', size, eachG, count: 1, state: 'thawed' } });
    const fed = (size: string, eachG: number): Animal => ({
      ...snake('female', 1_700),
      offers: [ate(size, eachG)],
    });
    expect(preyG(plannedMeal(fed('small', 65), { sizes: own }))).toBe(90);
    expect(plannedMeal(fed('medium', 100), { sizes: own }).size).not.toBe('medium');
  });
});
