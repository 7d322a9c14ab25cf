import type { EventId } from '../core/ids.ts';
import type { RackEvent } from '../events/event.ts';
import { subjectsOf, type SubjectId } from '../events/subjects.ts';
import { applyTo, type Subject } from './fold-subject.ts';
import { createKnownEvents } from './known-events.ts';
import { createCorrections, inOrder, inTime, type PlaceInTime } from './standing.ts';

/** A subject as saved for a fast start: its state, and where the last record in it stands. */
export interface SavedSubject {
  readonly id: SubjectId;
  readonly state: Subject;
  readonly last: PlaceInTime;
}

/** All subjects, kept up to date with a log that may arrive in any order and more than once. */
export interface Ledger {
  /** Takes new events in; returns the subjects that changed. Known events change nothing. */
  add(events: Iterable<RackEvent>): ReadonlySet<SubjectId>;
  /** Starts from saved subjects; `fill` must follow with the whole log. */
  restore(saved: Iterable<SavedSubject>): void;
  /** The whole log behind the saved subjects; returns the subjects that had to be folded again. */
  fill(events: Iterable<RackEvent>): ReadonlySet<SubjectId>;
  save(): SavedSubject[];
  /** False between `restore` and `fill`, while history is still on its way. */
  readonly hasHistory: boolean;
  has(id: EventId): boolean;
  event(id: EventId): RackEvent | undefined;
  stands(id: EventId): boolean;
  /** Why an event was struck out, where it was. */
  reasonStruck(id: EventId): string | undefined;
  readonly size: number;
  /** The highest id of all that were added. */
  readonly newest: EventId | undefined;
  events(): IterableIterator<RackEvent>;
  /** Every record of a subject, oldest first, struck ones too. */
  history(id: SubjectId): readonly RackEvent[];
  /** The records of a subject that count, in no order: what is only counted need not be sorted. */
  counted(id: SubjectId): readonly RackEvent[];
  readonly subjects: ReadonlyMap<SubjectId, Subject>;
}

const NONE: readonly never[] = [];

interface Stream {
  /** In no order. */
  events: RackEvent[];
  /** The latest record in time that was taken in order. */
  last: PlaceInTime | undefined;
  /** Taken in order and not folded in yet: a subject is folded once for a batch of records. */
  ahead: RackEvent[];
  /** Whether a correction names any of them: in most, each record is known to count. */
  isCorrected: boolean;
}

/**
 * An empty ledger.
 *
 * The same set of events gives the same subjects in whatever order, split or repetition they are
 * added. An event that comes last in time is folded in; any other has its subject folded anew from
 * that subject's own records, so the cost never follows the log.
 */
export function createLedger(): Ledger {
  let known = createKnownEvents();
  const streams = new Map<SubjectId, Stream>();
  const subjects = new Map<SubjectId, Subject>();
  let corrections = createCorrections();
  /** Named by a correction that came before them. */
  const awaited = new Set<EventId>();
  let hasHistory = true;
  let arrivedSinceSave: RackEvent[] = [];

  function streamOf(id: SubjectId): Stream {
    let stream = streams.get(id);
    if (!stream) {
      stream = { events: [], last: undefined, ahead: [], isCorrected: false };
      streams.set(id, stream);
    }
    return stream;
  }

  const standing = (events: readonly RackEvent[]): readonly RackEvent[] =>
    events.filter((event) => corrections.stands(event.id));

  const countedIn = ({ events, isCorrected }: Stream): readonly RackEvent[] =>
    isCorrected ? standing(events) : events;

  function refold(id: SubjectId): void {
    const stream = streamOf(id);
    stream.events = inOrder(stream.events);
    stream.last = stream.events.at(-1);
    stream.ahead = [];
    const events = countedIn(stream);
    if (events.length > 0) subjects.set(id, applyTo(id, undefined, events));
    else subjects.delete(id);
  }

  function foldAhead(id: SubjectId): void {
    const stream = streamOf(id);
    // With all history at hand, a subject that is corrected is folded anew instead.
    const events = hasHistory ? stream.ahead : standing(stream.ahead);
    stream.ahead = [];
    if (events.length > 0) subjects.set(id, applyTo(id, subjects.get(id), events));
  }

  /** Takes one event in; subjects that cannot be moved forward by it alone go into `stale`. */
  function take(event: RackEvent, touched: Set<SubjectId>, stale: Set<SubjectId>): void {
    if (!known.add(event)) return;
    for (const id of correct(event)) stale.add(id);
    const isCorrected = awaited.size > 0 && awaited.has(event.id);
    for (const id of subjectsOf(event)) {
      const stream = streamOf(id);
      stream.events.push(event);
      if (isCorrected) {
        stream.isCorrected = true;
        stale.add(id);
      }
      if (stream.last && inTime(stream.last, event) > 0) {
        stale.add(id);
      } else {
        stream.last = event;
        if (stream.ahead.push(event) === 1) touched.add(id);
      }
    }
  }

  return {
    add(events) {
      const touched = new Set<SubjectId>();
      const stale = new Set<SubjectId>();
      for (const event of events) {
        if (!hasHistory) arrivedSinceSave.push(event);
        take(event, touched, stale);
      }
      for (const id of stale) touched.add(id);
      for (const id of touched) {
        // Without its history a subject cannot be folded anew; `fill` will do it.
        if (hasHistory && stale.has(id)) refold(id);
        else foldAhead(id);
      }
      return touched;
    },

    restore(saved) {
      for (const { id, state, last } of saved) {
        subjects.set(id, state);
        streams.set(id, { events: [], last, ahead: [], isCorrected: false });
      }
      hasHistory = false;
    },

    fill(events) {
      const late = arrivedSinceSave;
      arrivedSinceSave = [];
      known = createKnownEvents();
      awaited.clear();
      corrections = createCorrections();
      for (const stream of streams.values()) stream.events = [];
      const whole = [...events, ...late].filter((event) => known.add(event));
      for (const event of whole) {
        correct(event);
        for (const id of subjectsOf(event)) streamOf(id).events.push(event);
      }
      hasHistory = true;
      const again = new Set(late.flatMap((event) => [...subjectsOf(event), ...correctedBy(event)]));
      for (const [id] of streams) if (!subjects.has(id)) again.add(id);
      for (const id of again) refold(id);
      return again;
    },

    save: () =>
      [...subjects].flatMap(([id, state]) => {
        const last = streams.get(id)?.last;
        return last ? [{ id, state, last: { at: last.at, id: last.id } }] : [];
      }),

    get hasHistory() {
      return hasHistory;
    },
    has: (id) => known.get(id) !== undefined,
    event: (id) => known.get(id),
    stands: (id) => corrections.stands(id),
    reasonStruck: (id) => corrections.reasonStruck(id),
    get size() {
      return known.size;
    },
    get newest() {
      return known.newest;
    },
    events: () => known.all(),
    history: (id) => inOrder(streams.get(id)?.events ?? NONE),
    counted(id) {
      const stream = streams.get(id);
      return stream ? countedIn(stream) : NONE;
    },
    subjects,
  };

  /** Notes what an event corrects; returns the subjects of that. */
  function correct(event: RackEvent): readonly SubjectId[] {
    const target = targetOf(event);
    if (target === undefined) return NONE;
    corrections.note(event);
    if (!known.get(target)) awaited.add(target);
    const ids = correctedBy(event);
    for (const id of ids) streamOf(id).isCorrected = true;
    return ids;
  }

  /**
   * The subjects of what an event corrects, and of what that stood in for in turn. A broken file may
   * hold records that correct each other, so none is looked at twice.
   */
  function correctedBy(event: RackEvent): readonly SubjectId[] {
    const corrected = new Set<RackEvent>();
    let next = correctedOf(event);
    while (next && !corrected.has(next)) {
      corrected.add(next);
      next = correctedOf(next);
    }
    return [...corrected].flatMap(subjectsOf);
  }

  function correctedOf(event: RackEvent): RackEvent | undefined {
    const target = targetOf(event);
    return target === undefined ? undefined : known.get(target);
  }
}

/** Which record an event strikes out or stands in for. */
const targetOf = (event: RackEvent): EventId | undefined =>
  event.type === 'struck' ? event.target : event.replaces?.id;
