import { spanWords } from '../calendar-file/span-words.ts';
import type { Day } from '../core/calendar.ts';
import type { AnimalId } from '../core/ids.ts';
import { seasonOutlook } from '../clutch/season-outlook.ts';
import { createPicture, type Picture } from '../picture/picture.ts';
import { aboutValue, known, type ProtocolChanges } from '../protocol/own-protocol.ts';
import { refusalsOf } from '../protocol/refuse-changes.ts';
import { valueReasons } from '../protocol/value-reasons.ts';
import { showValue } from '../protocol/value-words.ts';
import type { ProtocolKey } from '../protocol/values.ts';
import { rules } from '../rules/all.ts';
import type { Task } from '../rules/rule.ts';
import { ownNumbers } from '../state/house.ts';
import { inWalkingOrder } from './tonight-view.ts';

/** One thing to do, as it is now and as it would be; one of the two is missing where it comes or goes. */
export interface TaskChange {
  readonly animal: AnimalId;
  readonly name: string;
  readonly position: string;
  readonly before?: string | undefined;
  readonly after?: string | undefined;
}

/** A window of a season, as days in words. */
export interface WindowChange {
  readonly animal: AnimalId;
  readonly name: string;
  readonly event: string;
  readonly before?: string | undefined;
  readonly after?: string | undefined;
}

/** What changes of the protocol would change tonight. Nothing is written. */
export interface ProtocolPreview {
  /** Why they cannot be written down; nothing else is told then. */
  readonly refusals: readonly string[];
  readonly values: readonly {
    readonly key: ProtocolKey;
    readonly name: string;
    readonly before: string;
    readonly after: string;
  }[];
  /** Each in the order of the walk. */
  readonly comes: readonly TaskChange[];
  readonly goes: readonly TaskChange[];
  readonly changes: readonly TaskChange[];
  /** Forecast windows that move, come or go, in the order of the walk. */
  readonly windows: readonly WindowChange[];
  /** What it does besides, in sentences. */
  readonly notes: readonly string[];
}

export function protocolPreview(changes: ProtocolChanges, picture: Picture): ProtocolPreview {
  const refusals = refusalsOf(ownNumbers(picture.house()), changes);
  if (refusals.length > 0) {
    return {
      refusals: refusals.map(({ message }) => message),
      values: [],
      comes: [],
      goes: [],
      changes: [],
      windows: [],
      notes: [],
    };
  }
  const tried = createPicture(picture.ledger, picture.clock, rules, changes);
  const told = taskChanges(picture, tried);
  return {
    refusals: [],
    values: valueChanges(changes, picture, tried),
    comes: told.filter(({ before }) => before === undefined),
    goes: told.filter(({ after }) => after === undefined),
    changes: told.filter(({ before, after }) => before !== undefined && after !== undefined),
    windows: windowChanges(picture, tried),
    notes: nightNotes(picture, tried),
  };
}

function windowChanges(picture: Picture, tried: Picture): readonly WindowChange[] {
  return inWalkingOrder(picture.living(), picture).flatMap((animal) => {
    const [before, after] = [picture, tried].map(
      (each) =>
        new Map(
          seasonOutlook(each, animal).forecasts.map(({ event, from, to }) => [
            event,
            spanWords(from, to),
          ]),
        ),
    );
    return [...new Set([...(before?.keys() ?? []), ...(after?.keys() ?? [])])].flatMap((event) => {
      const change = { before: before?.get(event), after: after?.get(event) };
      const name = animal.name || 'Unnamed';
      return change.before === change.after ? [] : [{ animal: animal.id, name, event, ...change }];
    });
  });
}

function valueChanges(
  changes: ProtocolChanges,
  picture: Picture,
  tried: Picture,
): ProtocolPreview['values'] {
  return known(changes).flatMap(([key]) => {
    const { name } = valueReasons[key];
    const { unit } = aboutValue(key);
    const [before, after] = [picture, tried].map(({ facts }) => facts.protocol[key]);
    return before === undefined || after === undefined || before === after
      ? []
      : [{ key, name, before: showValue(before, unit), after: showValue(after, unit) }];
  });
}

function taskChanges(picture: Picture, tried: Picture): readonly TaskChange[] {
  return inWalkingOrder(picture.animals(), picture).flatMap((animal) => {
    const [now, tonight] = [picture, tried].map((each) => byName(each.tasks(animal.id)));
    const names = new Set([...(now?.keys() ?? []), ...(tonight?.keys() ?? [])]);
    const position = picture.position(picture.whereIs(animal)) ?? '–';
    return [...names].flatMap((name) => {
      const [before, after] = [now?.get(name), tonight?.get(name)];
      return before === after
        ? []
        : [{ animal: animal.id, name: animal.name || 'Unnamed', position, before, after }];
    });
  });
}

/** Tasks in words, by what stays the same of them when they change: the rule, and which of its tasks. */
function byName(tasks: readonly Task[]): ReadonlyMap<string, string> {
  const named = new Map<string, string>();
  for (const task of tasks) {
    let count = 0;
    while (named.has(`${task.rule} ${count}`)) count += 1;
    named.set(`${task.rule} ${count}`, taskWords(task));
  }
  return named;
}

/** All that the list shows of a task in one line. */
function taskWords({ asks, state, blocked }: Task): string {
  if (blocked !== undefined) return `${asks}: not tonight, ${blocked}`;
  return state === 'overdue' ? `${asks}, overdue` : asks;
}

/** The end of the night decides which night a record belongs to, so it moves records, not tasks alone. */
function nightNotes(picture: Picture, tried: Picture): readonly string[] {
  const [before, after] = [picture, tried].map(({ facts }) => facts.protocol.rolloverHour);
  if (before === undefined || after === undefined || before === after) return [];
  const [from, to] = [Math.min(before, after), Math.max(before, after)];
  const [evening, day] = ['the evening before', 'their own day'];
  const [old, fresh] = after < before ? [evening, day] : [day, evening];
  const moved = `Records made between ${from} and ${to} o’clock, also the old ones, move from ${old} to ${fresh}. Days since a meal, a weighing or a visit are counted anew.`;
  return [moved, ...tonightNote(picture.facts.night, tried.facts.night)];
}

const tonightNote = (before: Day, after: Day): readonly string[] =>
  before === after ? [] : [`Tonight is then the night of ${after}, not of ${before}.`];
