import { instantMs, type Clock, type Day, type Moment } from '../src/domain/core/calendar.ts';
import type { DeviceId } from '../src/domain/core/ids.ts';
import { RackEvent, type EventOf, type EventType } from '../src/domain/events/event.ts';
import { newestVersion } from '../src/domain/events/newest-versions.ts';
import { createPicture, type Picture } from '../src/domain/picture/picture.ts';
import { rules } from '../src/domain/rules/all.ts';
import { createLedger } from '../src/domain/state/ledger.ts';
import { eventId } from './make-ids.ts';
import { samples } from './samples.ts';

export const day = (text: string): Day => text as Day;
export const moment = (text: string): Moment => text as Moment;

/** The night most examples are set in. */
export const TONIGHT = '2026-11-24T22:00:00+01:00';

let made = 0;

/** A valid event with the parts a test is about spelled out, and the rest filled in. */
export function anEvent<Type extends EventType>(
  type: Type,
  parts: Partial<EventOf<Type>> | { readonly at: string } = {},
): EventOf<Type> {
  made += 1;
  const at = 'at' in parts ? parts.at : TONIGHT;
  return RackEvent.parse({
    id: eventId(made),
    at,
    precision: 'minute',
    loggedAt: at,
    device: 'MAKE0' as DeviceId,
    type,
    v: newestVersion(type),
    ...samples[type],
    ...parts,
  }) as EventOf<Type>;
}

/** The same event, saying that it stands in for an earlier one. */
export const instead = <Each extends RackEvent>(earlier: RackEvent, later: Each): Each => ({
  ...later,
  replaces: { id: earlier.id, reason: 'mistyped' },
});

export const clockAt = (at: string): Clock => {
  const [, sign = '+', hours = '00', minutes = '00'] = /([+-])(\d\d):(\d\d)$/.exec(at) ?? [];
  const offsetMin = Number(`${sign}1`) * (Number(hours) * 60 + Number(minutes));
  return { ms: instantMs(moment(at)), offsetMin };
};

/** What the records come to at a moment. */
export function aPicture(events: readonly RackEvent[], at: string = TONIGHT): Picture {
  const ledger = createLedger();
  ledger.add(events);
  return createPicture(ledger, clockAt(at), rules);
}

/** Days before tonight, late in the evening. */
export function nightsAgo(nights: number): Moment {
  const ms = instantMs(moment(TONIGHT)) - nights * 86_400_000;
  return `${new Date(ms + 3_600_000).toISOString().slice(0, 19)}+01:00` as Moment;
}
