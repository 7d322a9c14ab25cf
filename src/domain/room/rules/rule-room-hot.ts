import { airOutside, tooWarm } from './air-outside.ts';
import type { RoomRule } from './room-rule.ts';

export const roomHot: RoomRule = {
  id: 'R2',
  says: 'A room that stays too warm for hours is looked at, unless the programme wants it that warm.',
  source: 'roomAlarms',
  check: (room, facts) => airOutside(room, facts, tooWarm(facts)),
};
