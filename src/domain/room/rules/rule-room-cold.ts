import { airOutside, tooCold } from './air-outside.ts';
import type { RoomRule } from './room-rule.ts';

export const roomCold: RoomRule = {
  id: 'R1',
  says: 'A room that stays too cold for hours is looked at, unless the programme wants it that cold.',
  source: 'roomAlarms',
  check: (room, facts) => airOutside(room, facts, tooCold(facts)),
};
