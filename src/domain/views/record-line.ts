import type { Day, Moment } from '../core/calendar.ts';
import type { EventId, PhotoId } from '../core/ids.ts';
import type { RackEvent } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import { amendShed, type Amendment } from './amend-shed.ts';
import { eventWords } from './words.ts';

/** A record as one line of a history. */
export interface RecordLine {
  readonly id: EventId;
  readonly night: Day;
  readonly at: Moment;
  readonly type: RackEvent['type'];
  readonly words: string;
  readonly by?: string | undefined;
  readonly remark?: string | undefined;
  /** Why it no longer counts. */
  readonly struck?: string | undefined;
  /** A picture that was kept. */
  readonly photo?: PhotoId | undefined;
  /** What may be said of it now that more is known, as a record that stands in for it. */
  readonly amend?: Amendment | undefined;
}

export function recordLine(event: RackEvent, picture: Picture, struck?: string): RecordLine {
  return {
    id: event.id,
    night: picture.facts.nightOf(event.at),
    at: event.at,
    type: event.type,
    words: eventWords(event, picture.facts.nameOf),
    by: event.by,
    remark: 'remark' in event ? event.remark : undefined,
    struck,
    photo: event.type === 'photo-kept' ? event.photo : undefined,
    amend: event.type === 'shed' && struck === undefined ? amendShed(event, picture) : undefined,
  };
}
