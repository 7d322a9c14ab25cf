import { hotSpot } from './rule-hot-spot.ts';
import { roomCold } from './rule-room-cold.ts';
import { roomHot } from './rule-room-hot.ts';
import { roomUnread } from './rule-room-unread.ts';
import type { RoomRule } from './room-rule.ts';

/** Every rule about rooms, the gravest first. A rule that is not listed here does not run. */
export const roomRules: readonly RoomRule[] = [hotSpot, roomHot, roomCold, roomUnread];
