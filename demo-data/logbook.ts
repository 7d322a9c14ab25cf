import { momentOf } from '../src/domain/core/calendar.ts';
import { createMinter, type DeviceId, type EventId, type Minter } from '../src/domain/core/ids.ts';
import type { Draft, RackEvent } from '../src/domain/events/event.ts';
import { newestVersion } from '../src/domain/events/newest-versions.ts';
import type { Chance } from './random.ts';

/** When something happened that is written down only later. Unit: milliseconds since 1970 UTC. */
export interface Earlier {
  readonly atMs: number;
  readonly precision: 'day' | 'between';
  readonly notBeforeMs?: number;
}

/** The keeper's phone: it stamps what it is told, and its clock only goes forward. */
export interface Logbook {
  readonly events: RackEvent[];
  readonly minter: Minter;
  /** Puts the clock forward to a time; a time already past is passed over. */
  wait(untilMs: number): void;
  nowMs(): number;
  /** How long a record takes the keeper from here on. Unit: seconds, on average. */
  pace(seconds: number): void;
  write(draft: Draft, earlier?: Earlier): EventId;
}

const PHONE = 'DEM01' as DeviceId;
const KEEPER = 'NK';

export function openLogbook(offsetMin: number, chance: Chance, device = PHONE): Logbook {
  const events: RackEvent[] = [];
  let nowMs = 0;
  let paceMs = 1000;
  const minter = createMinter(device, () => nowMs);

  function write(draft: Draft, earlier?: Earlier): EventId {
    nowMs += Math.round(chance.between(0.3, 1.7) * paceMs);
    const id = minter.event();
    const loggedAt = momentOf({ ms: nowMs, offsetMin });
    const at = earlier ? momentOf({ ms: earlier.atMs, offsetMin }) : loggedAt;
    const precision = earlier?.precision ?? 'minute';
    const v = newestVersion(draft.type) ?? 1;
    const event = { id, at, precision, loggedAt, device, by: KEEPER, v, ...draft };
    if (earlier?.notBeforeMs !== undefined) {
      event.notBefore = momentOf({ ms: earlier.notBeforeMs, offsetMin });
    }
    events.push(event as RackEvent);
    return id;
  }

  return {
    events,
    minter,
    write,
    wait(untilMs) {
      nowMs = Math.max(nowMs, untilMs);
    },
    nowMs: () => nowMs,
    pace(seconds) {
      paceMs = seconds * 1000;
    },
  };
}
