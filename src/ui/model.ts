import { signal } from '@preact/signals';
import { createContext } from 'preact';
import { useContext, useEffect, useMemo, useState } from 'preact/hooks';
import type { Doubt } from '../domain/assess/doubt.ts';
import { Fault } from '../domain/core/fault.ts';
import type { EventId, TubId } from '../domain/core/ids.ts';
import type { Refusal } from '../domain/core/result.ts';
import type { CollectionName, Desk, DeskStatus, Views } from '../domain/desk.ts';
import type { Draft } from '../domain/events/event.ts';
import { buzzDone, buzzTrouble } from './buzz.ts';
import { LAST_SEEN, type LastSeen } from './last-seen.ts';
import { inMassUnit, massUnit } from './mass-unit.ts';
import { remember, remembered } from './remember.ts';

/** Something to be written down, and how to say that it was. */
export interface Writing {
  readonly drafts: readonly Draft[];
  readonly tub?: TubId | undefined;
  /** "Marrow ate 1 small rat" */
  readonly words: string;
  /** Called once it is safe. */
  readonly after?: (() => void) | undefined;
  /** Takes the value a doubt offers instead, where there is one to take. */
  readonly instead?: ((value: number, across?: number) => readonly Draft[]) | undefined;
}

export interface Written {
  readonly words: string;
  readonly ids: readonly EventId[];
  readonly notes: readonly string[];
}

/** What looks wrong about a writing, and what may be done about it. */
export interface Asked {
  readonly writing: Writing;
  readonly doubts: readonly Doubt[];
  /** False where it cannot be right, and only another value will do. */
  readonly mayBeRight: boolean;
}

const UNDO_FOR_MS = 10_000;

/** The page's side of the desk: what was just written, what is asked, what went wrong. */
export function createModel(
  desk: Desk,
  opened: { readonly collection: CollectionName; readonly lastSeen?: LastSeen | undefined },
) {
  const written = signal<Written | undefined>(undefined);
  const asking = signal<Asked | undefined>(undefined);
  const trouble = signal<{ message: string; remedy: string } | undefined>(undefined);
  const collection = signal<CollectionName>(opened.collection);
  /** Until the desk's own list has come. */
  const lastSeen = signal(opened.lastSeen);
  /** Asked for before its screen stood, until that has asked itself. */
  const tonightAhead = signal<Views['tonight']['view'] | undefined>(undefined);
  const storageKept = signal<boolean | undefined>(undefined);
  let forgetTimer = 0;

  function fail(message: string, remedy: string): void {
    trouble.value = inMassUnit({ message, remedy });
    buzzTrouble();
  }

  const failWith = (error: unknown): void =>
    error instanceof Fault
      ? fail(error.message, error.remedy)
      : fail('Something went wrong.', 'Close the app and open it again. What was saved is safe.');

  const refuse = (refusals: readonly Refusal[]): void =>
    fail(refusals.map(({ message }) => message).join(' '), 'Nothing was written.');

  function show(next: Written): void {
    written.value = inMassUnit(next);
    clearTimeout(forgetTimer);
    forgetTimer = window.setTimeout(() => {
      written.value = undefined;
    }, UNDO_FOR_MS);
  }

  async function write(writing: Writing, accepted: readonly string[] = []): Promise<boolean> {
    const { drafts, tub, words, after } = writing;
    try {
      const recorded = await desk.tell('record', { drafts, accepted, tub });
      switch (recorded.kind) {
        case 'done':
          asking.value = undefined;
          trouble.value = undefined;
          show({ words, ids: recorded.ids, notes: recorded.notes });
          buzzDone();
          after?.();
          return true;
        case 'asked':
          asking.value = { writing, doubts: inMassUnit(recorded.doubts), mayBeRight: true };
          buzzTrouble();
          return false;
        case 'refused': {
          const { refusals, instead } = recorded;
          const [first] = refusals;
          if (first && instead && writing.instead) {
            asking.value = {
              writing,
              doubts: inMassUnit([{ ...first, instead }]),
              mayBeRight: false,
            };
            buzzTrouble();
          } else {
            refuse(refusals);
          }
          return false;
        }
      }
    } catch (error) {
      failWith(error);
      return false;
    }
  }

  return {
    desk,
    written,
    asking,
    trouble,
    collection,
    lastSeen,
    tonightAhead,
    storageKept,
    write,
    /** Says that something is done that cannot be undone with a tap. */
    say: (words: string) => show({ words, ids: [], notes: [] }),
    /** Says that something was written down, which undo strikes. */
    said: (words: string, ids: readonly EventId[]) => show({ words, ids, notes: [] }),
    fail,
    failWith,

    /** Strikes what was just written. It stays readable in the history. */
    async undo(): Promise<void> {
      const last = written.peek();
      if (!last) return;
      try {
        const struck = await desk.tell('strike', { ids: last.ids, reason: 'Undone at once' });
        if (struck.kind === 'refused') refuse(struck.refusals);
        else {
          show({ words: `Undone: ${last.words}`, ids: [], notes: [] });
          buzzDone();
        }
      } catch (error) {
        failWith(error);
      }
    },

    /** Strikes an older record, with the keeper's reason. */
    async strike(id: EventId, reason: string): Promise<void> {
      try {
        const struck = await desk.tell('strike', { ids: [id], reason });
        if (struck.kind === 'refused') refuse(struck.refusals);
        else show({ words: 'Struck out, kept in the history', ids: [], notes: [] });
      } catch (error) {
        failWith(error);
      }
    },

    async open(name: CollectionName): Promise<void> {
      remember('collection', name);
      lastSeen.value = undefined;
      tonightAhead.value = undefined;
      await desk.tell('open', name);
      collection.value = name;
    },

    async eraseDemo(): Promise<void> {
      await desk.tell('eraseDemo', null);
      remember('begun', undefined);
      remember('collection', 'own');
      remember(LAST_SEEN, undefined);
      // Every view belonged to the demo; a fresh page holds nothing of it.
      location.hash = '/tonight';
      location.reload();
    },
  };
}

export type Model = ReturnType<typeof createModel>;

export const ModelContext = createContext<Model | undefined>(undefined);

export function useModel(): Model {
  const model = useContext(ModelContext);
  if (!model) throw new Error('A screen was drawn outside the app.');
  return model;
}

/** A view of the desk, now and after each change; undefined until the first answer. */
export function useView<Kind extends keyof Views>(
  kind: Kind,
  ask: Views[Kind]['ask'],
): Views[Kind]['view'] | undefined {
  const { desk, collection } = useModel();
  const key = `${collection.value}/${kind}/${JSON.stringify(ask)}`;
  const [shown, setShown] = useState<{ key: string; view: Views[Kind]['view'] }>();
  useEffect(() => desk.watch(kind, ask, (view) => setShown({ key, view })), [key]);
  // A view of what was asked before must never stand under a new heading.
  const view = shown?.key === key ? shown.view : undefined;
  return useMemo(() => inMassUnit(view), [view, massUnit()]);
}

/** How things stand with the collection; until the desk has told, as it was last seen. */
export function useStatus(): DeskStatus | undefined {
  const { lastSeen } = useModel();
  return useView('status', null) ?? lastSeen.value?.status;
}

/** A half-filled form that survives a call, a lock, another scan and a crash. */
export function useDraft(key: string): [string, (value: string) => void] {
  const [value, setValue] = useState(() => remembered(`draft.${key}`) ?? '');
  useEffect(() => setValue(remembered(`draft.${key}`) ?? ''), [key]);
  return [
    value,
    (next) => {
      remember(`draft.${key}`, next);
      setValue(next);
    },
  ];
}
