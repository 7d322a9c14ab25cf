import type { AnimalId } from '../domain/core/ids.ts';
import type { Commands } from '../domain/desk.ts';
import type { PhotoRoom } from '../domain/photo-room.ts';
import type { Collection, World } from './collection.ts';

type Kind = 'keepPhoto' | 'photo' | 'dropPhoto' | 'photoRoom';

type PhotoHandlers = {
  readonly [Each in Kind]: (ask: Commands[Each]['ask']) => Promise<Commands[Each]['answer']>;
};

/** Pictures go to their shelf as they are; what they show is said by a record. */
export const photoHandlers = (world: World, collection: Collection): PhotoHandlers => ({
  async keepPhoto(jpeg) {
    const id = world.minter.photo();
    await (await world.photos()).keep(id, jpeg);
    return id;
  },
  photo: async (id) => (await world.photos()).load(id),
  async dropPhoto(id) {
    await (await world.photos()).drop(id);
    return null;
  },
  async photoRoom() {
    // What was made for saving takes room too.
    await (await import('../store/made-files.ts')).dropStaleFiles(world.clock().ms);
    return photoRoom(world, collection);
  },
});

async function photoRoom(
  { photos, notes }: World,
  { picture }: Pick<Collection, 'picture'>,
): Promise<PhotoRoom> {
  const kept = await (await photos()).list();
  const { newestSafePhoto = '' } = await notes.load();
  // Ids rise with time on every device.
  const here = new Set(kept.flatMap(({ id }) => (id > newestSafePhoto ? [id] : [])));
  const shows = new Map<AnimalId, number>();
  if (here.size > 0) {
    for (const event of picture.ledger.events()) {
      if (event.type !== 'photo-kept' || !here.has(event.photo)) continue;
      shows.set(event.animal, (shows.get(event.animal) ?? 0) + 1);
    }
  }
  return {
    count: kept.length,
    bytes: kept.reduce((sum, { bytes }) => sum + bytes, 0),
    onlyHere: here.size,
    shows: [...shows]
      .map(([animal, count]) => ({ animal, name: picture.facts.nameOf(animal), count }))
      .toSorted((a, b) => b.count - a.count || (a.name < b.name ? -1 : 1)),
  };
}
