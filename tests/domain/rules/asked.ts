import type { RackEvent } from '../../../src/domain/events/event.ts';
import type { RuleId, Task } from '../../../src/domain/rules/rule.ts';
import { aPicture, TONIGHT } from '../../make.ts';
import { animalId } from '../../make-ids.ts';

/** What one rule asks about an animal, the first one if none is named. */
export const asked = (
  rule: RuleId,
  events: readonly RackEvent[],
  { at = TONIGHT, animal = animalId(1) } = {},
): Task | undefined =>
  aPicture(events, at)
    .tasks(animal)
    .find((task) => task.rule === rule);
