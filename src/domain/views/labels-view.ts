import type { LabelCode } from '../core/code.ts';
import type { AnimalId, ClutchId, IncubatorId, RackId, RoomId, TubId } from '../core/ids.ts';
import type { LabelSubject } from '../labels/subject.ts';
import type { Picture } from '../picture/picture.ts';
import type { Room } from '../state/place.ts';
import { eggLabels, unlabelledEggs } from './egg-labels.ts';
import { codeOfRoom } from './room-view.ts';

/** Whatever can have a label printed, in walking order. */
export interface Labelled {
  readonly code: LabelCode;
  readonly kind: LabelSubject['kind'];
  readonly tub?: TubId | undefined;
  readonly position?: string;
  readonly rack?: RackId | undefined;
  readonly title: string;
  readonly lines: readonly string[];
  readonly wasPrinted: boolean;
}

export interface LabelsView {
  readonly racks: readonly { readonly id: RackId; readonly name: string }[];
  readonly labelled: readonly Labelled[];
  /** Living animals without a card code. */
  readonly cardless: readonly AnimalId[];
  /** Rooms without a label. */
  readonly unlabelledRooms: readonly RoomId[];
  /** Incubators in use and clutches not closed that have no label. */
  readonly unlabelledEggs: readonly (ClutchId | IncubatorId)[];
}

export function labelsView(picture: Picture): LabelsView {
  const racks = new Map<RackId, string>();
  const tubs = picture.walk().flatMap((tub): Labelled[] => {
    const rack = tub.rack === undefined ? undefined : picture.rack(tub.rack);
    if (!rack || tub.code === undefined) return [];
    racks.set(rack.id, rack.name);
    const room = rack.room === undefined ? undefined : picture.room(rack.room);
    const position = picture.position(tub.id) ?? '';
    return [
      {
        code: tub.code,
        kind: 'tub',
        tub: tub.id,
        position,
        rack: rack.id,
        title: position,
        lines: room ? [room.name] : [],
        wasPrinted: picture.label(tub.code)?.printedAt !== undefined,
      },
    ];
  });
  const cards: Labelled[] = [];
  const carded = new Set<AnimalId>();
  for (const subject of picture.ledger.subjects.values()) {
    if (!('kind' in subject) || subject.kind !== 'label' || subject.to?.kind !== 'animal') continue;
    const animal = picture.animal(subject.to.animal);
    if (!animal || animal.gone) continue;
    carded.add(animal.id);
    const sex = animal.sex === 'unknown' ? [] : [animal.sex];
    const hatched = animal.hatchedDay ? [`hatched ${animal.hatchedDay}`] : [];
    cards.push({
      code: subject.code,
      kind: 'animal',
      title: animal.name || 'Unnamed',
      lines: [[...sex, ...hatched].join(' · '), animal.traits ?? ''].filter((line) => line !== ''),
      wasPrinted: subject.printedAt !== undefined,
    });
  }
  const rooms = roomsOf(picture);
  return {
    racks: [...racks].map(([id, name]) => ({ id, name })),
    labelled: [
      ...tubs,
      ...cards,
      ...rooms.flatMap((room) => roomLabel(room, picture)),
      ...eggLabels(picture),
    ],
    cardless: picture.living().flatMap(({ id }) => (carded.has(id) ? [] : [id])),
    unlabelledRooms: rooms.flatMap(({ id }) => (codeOfRoom(id, picture) ? [] : [id])),
    unlabelledEggs: unlabelledEggs(picture),
  };
}

const roomsOf = ({ ledger }: Picture): readonly Room[] =>
  [...ledger.subjects.values()]
    .flatMap((each) => ('kind' in each && each.kind === 'room' && each.name !== '' ? [each] : []))
    .toSorted((a, b) => (a.id < b.id ? -1 : 1));

/** Stuck on the wall: scanning it opens the form for a reading. */
function roomLabel({ id, name }: Room, picture: Picture): readonly Labelled[] {
  const code = codeOfRoom(id, picture);
  if (!code) return [];
  const wasPrinted = picture.label(code)?.printedAt !== undefined;
  return [
    { code, kind: 'room', title: name, lines: ['Temperature: scan to write down'], wasPrinted },
  ];
}
