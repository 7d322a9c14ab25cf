import type { RackEvent } from '../../../src/domain/events/event.ts';
import { anEvent, nightsAgo } from '../../make.ts';
import { animalId, code, rackId, roomId, tubId } from '../../make-ids.ts';

const at = nightsAgo(60);

const rack = (n: number, name: string, room: number, walk: 'rows' | 'serpentine' = 'rows') =>
  anEvent('rack-made', {
    rack: rackId(n),
    room: roomId(room),
    name,
    rows: 2,
    columns: 2,
    walk,
    at,
  });

const tub = (n: number, rackN: number, row: number, column: number) =>
  anEvent('tub-made', { tub: tubId(n), code: code(n), rack: rackId(rackN), row, column, at });

/** An animal that is due a meal, in a tub of its own. */
export const dweller = (
  n: number,
  name: string,
  tubN: number,
  sex: 'male' | 'female' = 'female',
) => [
  anEvent('arrived', { animal: animalId(n), name, sex, at }),
  anEvent('weighed', { animal: animalId(n), massG: 1_500, at: nightsAgo(5) }),
  anEvent('moved', { animal: animalId(n), tub: tubId(tubN), at }),
];

/**
 * Two rooms: racks B (walked back and forth) and A in the first, Q in quarantine, each 2 × 2.
 * Invented. Tubs: B 1–4, A 5–8, Q 9–12, counted row by row.
 */
export const room: readonly RackEvent[] = [
  anEvent('room-made', { room: roomId(1), name: 'Zone of snakes', at }),
  anEvent('room-made', { room: roomId(2), name: 'Aside', quarantine: true, at }),
  rack(1, 'B', 1, 'serpentine'),
  rack(2, 'A', 1),
  rack(3, 'Q', 2),
  ...[1, 2, 3].flatMap((rackN) =>
    [1, 2, 3, 4].map((i) => tub((rackN - 1) * 4 + i, rackN, Math.ceil(i / 2), 2 - (i % 2))),
  ),
];
