import { LABEL_CODES, labelCode, type LabelCode } from '../src/domain/core/code.ts';
import type { RoomId } from '../src/domain/core/ids.ts';
import { partSizes } from './cast.ts';
import type { Logbook } from './logbook.ts';
import type { Chance } from './random.ts';
import type { Rack, Snake, Tub } from './world.ts';

export type Kind = 'adults' | 'growers' | 'hatchlings' | 'quarantine';

/** Levels and tubs across, as such racks are built [common practice, no source]. */
const builds: Readonly<Record<Kind, Pick<Rack, 'rows' | 'columns' | 'walk'> & { letter: string }>> =
  {
    adults: { letter: 'A', rows: 6, columns: 2, walk: 'rows' },
    growers: { letter: 'C', rows: 5, columns: 3, walk: 'serpentine' },
    hatchlings: { letter: 'H', rows: 5, columns: 4, walk: 'rows' },
    quarantine: { letter: 'Q', rows: 2, columns: 2, walk: 'rows' },
  };

const LETTERS = 'ABEFGJKLMNPRSTUVWXYZ';

/** The two racks of adults are A and B; further ones, of a larger room, have two letters or three. */
function rackName(kind: Kind, n: number): string {
  const { letter } = builds[kind];
  if (n === 0) return letter;
  if (kind === 'adults' && n === 1) return 'B';
  return `${letter}${n < 20 ? '' : LETTERS.charAt(Math.floor(n / 20) % 20)}${LETTERS.charAt(n % 20)}`;
}

export interface Rooms {
  /** The one where most of them live. */
  readonly snakeRoom: RoomId;
  /** Every standing tub, by kind of rack, in the order of the walk. */
  readonly tubs: Record<Kind, Tub[]>;
  /** The two-tub rack that was there first and is given up later. */
  readonly oldRack: Rack;
  readonly oldTubs: readonly Tub[];
  freshCode(): LabelCode;
}

export const placeText = (rack: Rack, row: number, column: number): string =>
  `${rack.name}${row}-${column}`;

/** Where on the walk a position comes: rack by rack, and back and forth where the keeper does so. */
export function walkTurn(rack: Rack, row: number, column: number): number {
  const across = rack.walk === 'serpentine' && row % 2 === 0 ? rack.columns - column : column - 1;
  return rack.turn * 1000 + row * 20 + across;
}

export function standAt(tub: Omit<Tub, 'place' | 'turn'>): Tub {
  const { rack, row, column } = tub;
  return { ...tub, place: placeText(rack, row, column), turn: walkTurn(rack, row, column) };
}

/** Sets up rooms, racks, tubs and labels, and writes them down. */
export function furnish(animals: number, book: Logbook, chance: Chance): Rooms {
  const sizes = partSizes(animals);
  const snakeRoom = book.minter.room();
  book.write({ type: 'room-made', room: snakeRoom, name: 'Snake room' });
  const corner = book.minter.room();
  book.write({ type: 'room-made', room: corner, name: 'Quarantine corner', quarantine: true });

  let turn = 0;
  let serial = chance.whole(0, LABEL_CODES - 1);
  const codes: LabelCode[] = [];
  function freshCode(): LabelCode {
    // An odd stride visits every serial once before it repeats.
    serial = (serial + 377_331_177) % LABEL_CODES;
    return labelCode(serial);
  }

  function buildRack(
    name: string,
    room: RoomId,
    build: Pick<Rack, 'rows' | 'columns' | 'walk'>,
  ): Rack {
    const { rows, columns, walk } = build;
    turn += 1;
    const rack: Rack = { id: book.minter.rack(), name, rows, columns, walk, turn };
    book.write({ type: 'rack-made', rack: rack.id, room, name, rows, columns, walk });
    return rack;
  }

  function fillRack(rack: Rack): Tub[] {
    const tubs: Tub[] = [];
    for (let row = 1; row <= rack.rows; row += 1) {
      for (let column = 1; column <= rack.columns; column += 1) {
        const tub = standAt({ id: book.minter.tub(), code: freshCode(), rack, row, column });
        const { id, code, place } = tub;
        book.write({ type: 'tub-made', tub: id, code, rack: rack.id, row, column, place });
        codes.push(code);
        tubs.push(tub);
      }
    }
    return tubs.toSorted((a, b) => a.turn - b.turn);
  }

  function racksOf(kind: Kind, needed: number, room: RoomId): Tub[] {
    const build = builds[kind];
    const count = Math.ceil(needed / (build.rows * build.columns));
    return Array.from({ length: count }, (_, n) =>
      fillRack(buildRack(rackName(kind, n), room, build)),
    ).flat();
  }

  const young = Math.max(sizes.grower, sizes.hatchling) + 1;
  const adults = racksOf('adults', sizes.female + sizes.male + 2, snakeRoom);
  const growers = racksOf('growers', sizes.grower + 2, snakeRoom);
  const oldRack = buildRack('D', snakeRoom, { rows: 2, columns: 1, walk: 'rows' });
  const oldTubs = fillRack(oldRack);
  const hatchlings = racksOf('hatchlings', young, snakeRoom);
  const quarantine = racksOf('quarantine', 4, corner);
  for (let at = 0; at < codes.length; at += 2000) {
    book.write({
      type: 'label-printed',
      codes: codes.slice(at, at + 2000),
      format: 'tub 50 x 25 mm',
    });
  }
  return {
    snakeRoom,
    tubs: { adults, growers, hatchlings, quarantine },
    oldRack,
    oldTubs,
    freshCode,
  };
}

/** The first free tub of a kind of rack. */
export function freeTub(rooms: Rooms, kind: Kind, snakes: readonly Snake[]): Tub | undefined {
  const taken = new Set(snakes.map(({ tub }) => tub.id));
  return rooms.tubs[kind].find(({ id }) => !taken.has(id));
}
