import type { Moment } from '../../core/calendar.ts';
import type { Protocol } from '../../protocol/values.ts';
import type { RackId } from '../../core/ids.ts';
import type { SourceId } from '../../sources.ts';
import type { Room } from '../../state/place.ts';
import type { Day } from '../../core/calendar.ts';

export type RoomRuleId = 'R1' | 'R2' | 'R3' | 'R4';

/** What a rule may look at besides the room itself. */
export interface AirFacts {
  readonly protocol: Protocol;
  readonly nowMs: number;
  readonly nightOf: (moment: Moment) => Day;
  readonly rackName: (id: RackId) => string;
}

/** What a rule says about a room. */
export interface AirAlarm {
  /** In a few words: "21.2 °C for 3 h". */
  readonly asks: string;
  /** The readings it rests on, one sentence each. */
  readonly because: readonly string[];
}

/** A rule about a room's air: what it says, where that comes from, and when it speaks. */
export interface RoomRule {
  /** Stable for ever, never reused. */
  readonly id: RoomRuleId;
  readonly says: string;
  readonly source: SourceId;
  readonly check: (room: Room, facts: AirFacts) => AirAlarm | undefined;
}
