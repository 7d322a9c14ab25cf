import type { AnimalId } from '../core/ids.ts';
import type { Act, RuleId, Task } from '../rules/rule.ts';
import type { SourceId } from '../sources.ts';

/** One thing to do, ready to show. */
export interface Chore {
  readonly rule: RuleId;
  readonly animal: AnimalId;
  readonly act: Act;
  readonly asks: string;
  readonly state: Task['state'];
  readonly blocked?: string | undefined;
  readonly because: readonly string[];
  /** What the rule says, and where that comes from. */
  readonly says: string;
  readonly source: SourceId;
  readonly vet?: true | undefined;
}

export function choreOf(task: Task): Chore {
  const { rule, animal, act, asks, state, blocked, because, says, source, vet } = task;
  return { rule, animal, act, asks, state, blocked, because, says, source, vet };
}
