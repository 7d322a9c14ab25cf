import type { Day } from '../core/calendar.ts';
import type { AnimalId, EventId } from '../core/ids.ts';
import type { Prey } from '../events/feeding.ts';
import type { KnownSize } from '../protocol/prey-sizes.ts';
import type { StageFacts, Standing } from '../season/standing.ts';
import type { SourceId } from '../sources.ts';
import type { Animal } from '../state/animal.ts';

export type RuleId =
  | 'F1'
  | 'F2'
  | 'F3'
  | 'F4'
  | 'F5'
  | 'P1'
  | 'P2'
  | 'W1'
  | 'W2'
  | 'W3'
  | 'H1'
  | 'H2'
  | 'S1'
  | 'S2'
  | 'S3'
  | 'S4'
  | 'S5'
  | 'S6'
  | 'S7'
  | 'S8'
  | 'S9'
  | 'L1'
  | 'L2';

export const acts = [
  'settle',
  'take-out',
  'look-eggs',
  'look-ovulation',
  'feed',
  'pair',
  'scan',
  'nest-box',
  'weigh',
  'call',
  'check',
  'look',
] as const;

/** What the keeper can do about it at the tub: the capture screen offers this first. */
export type Act = (typeof acts)[number];

/** What a rule may look at besides the animal itself; `night` is tonight's room night. */
export interface RoomFacts extends StageFacts {
  readonly nowMs: number;
  /** Minutes that local time is ahead of UTC now. */
  readonly offsetMin: number;
  /** The female a male is in with. */
  readonly hostOf: (male: Animal) => Animal | undefined;
  /** Where an animal stands in its season. */
  readonly standing: (animal: Animal) => Standing | undefined;
  /** A name to use in a sentence. */
  readonly nameOf: (id: AnimalId) => string;
  /** Sizes of prey in use, with what one weighs. */
  readonly preySizes: readonly KnownSize[];
  /** The male in with her, by his own records: he may have been moved home, sold or lost. */
  readonly visitorOf: (animal: Animal) => AnimalId | undefined;
  /** The next visit of a male or female, tonight or later, by the plan that was kept. */
  readonly planned: (animal: Animal) => PlannedStay | undefined;
}

/** A visit of the kept plan, from one of the two. */
export interface PlannedStay {
  readonly mate: Animal;
  readonly in: Day;
  readonly out: Day;
  /** The plan it is of. */
  readonly id: EventId;
}

/** Something to do. Derived, never typed: it clears when the right record is made. */
export interface Task extends Pick<Rule, 'says' | 'source' | 'vet'> {
  readonly rule: RuleId;
  readonly animal: AnimalId;
  readonly act: Act;
  /** What is asked for, in a few words: "Feed 1 small rat, 65 g". */
  readonly asks: string;
  readonly meal?: Prey | undefined;
  /** The offer to settle. */
  readonly offer?: EventId | undefined;
  readonly due: Day;
  readonly state: 'due' | 'overdue';
  /** An alarm stands at the top of the list, out of rack order. */
  readonly alarm: boolean;
  /** Why it must not be done tonight. */
  readonly blocked?: string | undefined;
  /** The facts it rests on, one sentence each. */
  readonly because: readonly string[];
  readonly records: readonly EventId[];
}

/** A rule is a value: what it says, where that comes from, and when it asks for something. */
export interface Rule {
  /** Stable for ever: shown on screen, written in tests and in records, never reused. */
  readonly id: RuleId;
  readonly says: string;
  readonly source: SourceId;
  /** It leaves the matter to a vet: the keeper's own is named with its alarm. */
  readonly vet?: true;
  /** It asks about animals that left too. */
  readonly evenGone?: true;
  /** What it asks for, or undefined where it asks for nothing. */
  readonly check: (animal: Animal, room: RoomFacts) => Asked | undefined;
}

/** A task without what its rule says of itself. */
export type Asked = Omit<Task, 'rule' | 'animal' | 'says' | 'source' | 'vet'>;

/** What rules ask about one animal tonight, in their order. */
export function tasksFor(animal: Animal, room: RoomFacts, rules: readonly Rule[]): Task[] {
  const asked = animal.gone ? rules.filter(({ evenGone }) => evenGone) : rules;
  return asked.flatMap(({ id, says, source, vet, check }) => {
    const task = check(animal, room);
    return task
      ? [{ rule: id, animal: animal.id, says, source, ...(vet && { vet }), ...task }]
      : [];
  });
}
