import type { LabelCode } from '../core/code.ts';
import type { AnimalId, ClutchId, IncubatorId, RoomId } from '../core/ids.ts';
import type { Draft, EventOf } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import { freshCodes } from './new-rack.ts';

/** Whoever or whatever can be given a label of its own. */
export type Labellable = AnimalId | RoomId | ClutchId | IncubatorId;

type To = EventOf<'label-assigned'>['to'];

const kinds: Readonly<Record<string, (id: Labellable) => To>> = {
  a: (id) => ({ kind: 'animal', animal: id as AnimalId }),
  r: (id) => ({ kind: 'room', room: id as RoomId }),
  c: (id) => ({ kind: 'clutch', clutch: id as ClutchId }),
  i: (id) => ({ kind: 'incubator', incubator: id as IncubatorId }),
};

/** Whom a label leads to, by the id alone. */
const idOf = (to: To): string =>
  'tub' in to
    ? to.tub
    : 'animal' in to
      ? to.animal
      : 'room' in to
        ? to.room
        : 'clutch' in to
          ? to.clutch
          : to.incubator;

/** The code of the label that leads to something, where there is one. */
export function codeOf(id: Labellable, { ledger }: Picture): LabelCode | undefined {
  for (const subject of ledger.subjects.values()) {
    if (!('kind' in subject) || subject.kind !== 'label' || !subject.to) continue;
    if (idOf(subject.to) === id) return subject.code;
  }
  return undefined;
}

/**
 * The records that give each a label; what has one keeps it.
 *
 * `chance` gives numbers from 0 up to 1.
 */
export function newLabelDrafts(
  wanted: readonly Labellable[],
  picture: Picture,
  chance: () => number,
): readonly Draft[] {
  const without = wanted.filter((id) => codeOf(id, picture) === undefined);
  const codes = freshCodes(without.length, picture, chance);
  return without.flatMap((id, i): Draft[] => {
    const code = codes[i];
    const to = kinds[id.charAt(0)]?.(id);
    return code && to ? [{ type: 'label-assigned', code, to }] : [];
  });
}
