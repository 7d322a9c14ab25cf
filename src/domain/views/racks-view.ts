import type { LabelCode } from '../core/code.ts';
import type { AnimalId, RackId, RoomId, TubId } from '../core/ids.ts';
import { preyG, showPrey } from '../protocol/planned-meal.ts';
import type { Prey } from '../events/feeding.ts';
import type { Picture } from '../picture/picture.ts';
import { inNameOrder, inRackOrder } from '../picture/walk.ts';
import type { Animal } from '../state/animal.ts';
import type { Rack } from '../state/place.ts';

/** What is drawn on a tub of the rack: told apart by shape and word, never by colour alone. */
export type Mark =
  | 'feed'
  | 'left overnight'
  | 'in blue'
  | 'on hold'
  | 'pair'
  | 'away'
  | 'weigh'
  | 'take out'
  | 'quarantine';

export interface TubCell {
  readonly tub: TubId;
  readonly code?: LabelCode | undefined;
  readonly position: string;
  readonly row: number;
  readonly column: number;
  readonly names: readonly string[];
  readonly sex?: Animal['sex'] | undefined;
  readonly marks: readonly Mark[];
}

export interface RackView {
  readonly id: RackId;
  readonly name: string;
  readonly room: string;
  readonly quarantine: boolean;
  readonly rows: number;
  readonly columns: number;
  readonly walk: Rack['walk'];
  readonly cells: readonly TubCell[];
}

export interface RacksView {
  readonly rooms: readonly { readonly id: RoomId; readonly name: string }[];
  readonly racks: readonly {
    readonly id: RackId;
    readonly name: string;
    readonly room: string;
    readonly quarantine: boolean;
    readonly tubs: number;
    readonly snakes: number;
    readonly open: number;
  }[];
  /** Living animals that stand in no tub. */
  readonly homeless: readonly { readonly id: AnimalId; readonly name: string }[];
}

export function racksView(picture: Picture): RacksView {
  const subjects = [...picture.ledger.subjects.values()];
  const rooms = subjects.flatMap((each) => ('kind' in each && each.kind === 'room' ? [each] : []));
  const racks = subjects.flatMap((each) =>
    'kind' in each && each.kind === 'rack' && !each.removed ? [each] : [],
  );
  const withRooms = racks.map((rack) => ({
    rack,
    room: rack.room === undefined ? undefined : picture.room(rack.room),
  }));
  return {
    rooms: rooms
      .toSorted((a, b) => inNameOrder(a.name, b.name) || (a.id < b.id ? -1 : 1))
      .map(({ id, name }) => ({ id, name })),
    racks: withRooms.toSorted(inRackOrder).map(({ rack, room }) => {
      const tubs = picture.walk().filter((tub) => tub.rack === rack.id);
      const snakes = tubs.flatMap(({ id }) => picture.inTub(id));
      return {
        id: rack.id,
        name: rack.name,
        room: room?.name ?? '',
        quarantine: room?.quarantine ?? false,
        tubs: tubs.length,
        snakes: snakes.length,
        open: snakes.filter(({ id }) =>
          picture.tasks(id).some(({ blocked }) => blocked === undefined),
        ).length,
      };
    }),
    homeless: picture
      .living()
      .filter((animal) => picture.position(animal.tub) === undefined)
      .map(({ id, name }) => ({ id, name })),
  };
}

export function rackView(id: RackId, picture: Picture): RackView | undefined {
  const rack = picture.rack(id);
  if (!rack) return undefined;
  const room = rack.room === undefined ? undefined : picture.room(rack.room);
  return {
    id,
    name: rack.name,
    room: room?.name ?? '',
    quarantine: room?.quarantine ?? false,
    rows: rack.rows,
    columns: rack.columns,
    walk: rack.walk,
    cells: picture
      .walk()
      .filter((tub) => tub.rack === id)
      .map((tub) => {
        const present = picture.inTub(tub.id);
        return {
          tub: tub.id,
          code: tub.code,
          position: picture.position(tub.id) ?? '',
          row: tub.row,
          column: tub.column,
          names: present.map(({ name }) => name),
          sex: present[0]?.sex,
          marks: marksOf(tub.id, present, picture),
        };
      }),
  };
}

function marksOf(tub: TubId, present: readonly Animal[], picture: Picture): readonly Mark[] {
  const marks = new Set<Mark>();
  if (present.length > 1) marks.add('pair');
  if (picture.ownersOf(tub).some(({ visit }) => visit && visit.tub !== tub)) marks.add('away');
  for (const animal of present) {
    if (animal.opaqueAt) marks.add('in blue');
    if (animal.quarantine) marks.add('quarantine');
    for (const { act, blocked } of picture.tasks(animal.id)) {
      if (act === 'feed' && blocked?.startsWith('brought up')) marks.add('on hold');
      if (blocked !== undefined) continue;
      if (act === 'feed') marks.add('feed');
      if (act === 'settle') marks.add('left overnight');
      if (act === 'weigh') marks.add('weigh');
      if (act === 'take-out') marks.add('take out');
    }
  }
  return [...marks];
}

/** The meals of one rack, or one row of it, that are due tonight: "all ate as planned, except…". */
export interface RowMeal {
  readonly animal: AnimalId;
  readonly name: string;
  readonly position: string;
  readonly row: number;
  readonly prey: Prey;
  readonly words: string;
  readonly massG?: number | undefined;
}

export function rowMeals(id: RackId, picture: Picture): readonly RowMeal[] {
  return picture
    .walk()
    .filter((tub) => tub.rack === id)
    .flatMap((tub) =>
      picture.inTub(tub.id).flatMap((animal) =>
        picture
          .tasks(animal.id)
          .filter(({ act, blocked }) => act === 'feed' && blocked === undefined)
          .flatMap(({ meal }) =>
            meal
              ? [
                  {
                    animal: animal.id,
                    name: animal.name,
                    position: picture.position(tub.id) ?? '',
                    row: tub.row,
                    prey: meal,
                    words: showPrey(meal),
                    massG: preyG(meal),
                  },
                ]
              : [],
          ),
      ),
    );
}
