import type { Animal } from '../state/animal.ts';
import { escaped } from './rule-escaped.ts';
import { feedDue } from './rule-feed-due.ts';
import { graveSign } from './rule-grave-sign.ts';
import { maleOut } from './rule-male-out.ts';
import { mealLeft } from './rule-meal-left.ts';
import { weighDue } from './rule-weigh-due.ts';
import type { RoomFacts, Rule, RuleId, Task } from './rule.ts';

/** Every rule, in the order a tub's tasks are shown. A rule that is not listed here does not run. */
export const rules: readonly Rule[] = [escaped, graveSign, maleOut, mealLeft, feedDue, weighDue];

export const ruleById = (id: RuleId): Rule | undefined => rules.find((rule) => rule.id === id);

/** What all the rules ask about one animal tonight. */
export function tasksFor(animal: Animal, room: RoomFacts): Task[] {
  const asked = animal.gone ? [escaped] : rules;
  return asked.flatMap((rule) => {
    const task = rule.check(animal, room);
    return task ? [{ rule: rule.id, animal: animal.id, ...task }] : [];
  });
}
