import fc from 'fast-check';
import { expect, test } from 'vitest';
import { demoScenario } from '../../../demo-data/scenario.ts';
import { simulate } from '../../../demo-data/simulate.ts';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { rules } from '../../../src/domain/rules/all.ts';
import { tubRules } from '../../../src/domain/rules/tub-rules.ts';
import { anyLog, runs } from '../../arbitrary.ts';
import { aPicture, TONIGHT } from '../../make.ts';

const ofTub = new Set(tubRules.map(({ id }) => id));

/** Asks by the rules of a tub first and by all of them then, as a start does. */
function twice(events: readonly RackEvent[]) {
  const picture = aPicture(events);
  const tasks = () => picture.animals().map(({ id }) => picture.tasks(id));
  const whole = tasks();
  picture.askBy(tubRules);
  const first = tasks();
  picture.askBy(rules);
  return { first, whole, again: tasks() };
}

test('the rules of a tub are among all rules, in their order', () => {
  expect(rules.filter(({ id }) => ofTub.has(id))).toEqual(tubRules);
});

function holds(events: readonly RackEvent[]): void {
  const { first, whole, again } = twice(events);
  expect(again).toEqual(whole);
  expect(first).toEqual(whole.map((tasks) => tasks.filter(({ rule }) => ofTub.has(rule))));
  const later = whole.flat().filter(({ rule }) => !ofTub.has(rule));
  expect(later.filter(({ act }) => act !== 'call' && act !== 'check')).toEqual([]);
}

test('what comes after the first view adds lines to it and moves no button', () => {
  fc.assert(fc.property(anyLog, holds), runs(40));
  holds(simulate(demoScenario(TONIGHT.slice(0, 10) as never, 60)));
});
