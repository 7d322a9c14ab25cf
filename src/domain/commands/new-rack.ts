import { labelCode, LABEL_CODES, type LabelCode } from '../core/code.ts';
import type { Minter, RackId, RoomId } from '../core/ids.ts';
import { ok, refuse, type Result } from '../core/result.ts';
import type { Draft } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import type { Rack } from '../state/place.ts';

/** A rack as the keeper draws it: it comes with a labelled tub at every position. */
export interface NewRack {
  /** An existing room, or the name of a new one. */
  readonly room: { readonly id: RoomId } | { readonly name: string; readonly quarantine: boolean };
  readonly name: string;
  readonly rows: number;
  readonly columns: number;
  readonly walk: Rack['walk'];
}

const MOST_TUBS = 400;

/**
 * The records that make a rack, its room where that is new, and its tubs.
 *
 * `chance` gives numbers from 0 up to 1, for label codes that no one can guess in advance.
 *
 * Errors: refuses a name that is taken in the collection, and a rack without positions.
 */
export function newRackDrafts(
  wanted: NewRack,
  picture: Picture,
  mint: Minter,
  chance: () => number,
): Result<{ readonly rack: RackId; readonly drafts: readonly Draft[] }> {
  const name = wanted.name.trim().toUpperCase();
  const { rows, columns, walk } = wanted;
  if (!/^[A-Z0-9]{1,4}$/.test(name)) {
    return refuse('rack-name', 'Name the rack with one to four letters or digits, like B.');
  }
  if (isTaken(name, picture)) {
    return refuse('rack-taken', `There is a rack ${name} already. Pick another letter.`);
  }
  if (!(rows >= 1 && columns >= 1 && rows <= 40 && columns <= 20 && rows * columns <= MOST_TUBS)) {
    return refuse(
      'rack-size',
      `A rack has 1 to 40 rows and 1 to 20 columns, ${MOST_TUBS} tubs at most.`,
    );
  }
  const isNewRoom = 'name' in wanted.room;
  const room = 'name' in wanted.room ? mint.room() : wanted.room.id;
  const rack = mint.rack();
  const codes = freshCodes(rows * columns, picture, chance);
  const drafts: Draft[] = [];
  if (isNewRoom && 'name' in wanted.room) {
    const { quarantine } = wanted.room;
    drafts.push({
      type: 'room-made',
      room,
      name: wanted.room.name.trim() || 'Snake room',
      quarantine,
    });
  }
  drafts.push({ type: 'rack-made', rack, room, name, rows, columns, walk });
  for (const [i, code] of codes.entries()) {
    drafts.push({
      type: 'tub-made',
      tub: mint.tub(),
      code,
      rack,
      row: Math.floor(i / columns) + 1,
      column: (i % columns) + 1,
    });
  }
  return ok({ rack, drafts });
}

function isTaken(name: string, picture: Picture): boolean {
  for (const subject of picture.ledger.subjects.values()) {
    if ('kind' in subject && subject.kind === 'rack' && !subject.removed && subject.name === name) {
      return true;
    }
  }
  return false;
}

/** Codes not used in this collection, nor twice among themselves. */
export function freshCodes(
  howMany: number,
  picture: Picture,
  chance: () => number,
): readonly LabelCode[] {
  const codes = new Set<LabelCode>();
  while (codes.size < howMany) {
    const code = labelCode(Math.floor(chance() * LABEL_CODES));
    if (!picture.label(code)) codes.add(code);
  }
  return [...codes];
}
