import { ok, refuse, type Result } from '../domain/core/result.ts';
import type { RackEvent } from '../domain/events/event.ts';
import type { PackedPicture } from '../store/read-photo-backup.ts';
import type { World } from './collection.ts';

interface LookedAt {
  readonly fresh: readonly PackedPicture[];
  readonly known: number;
}

/**
 * The pictures of an archive that a record names and that are not here. Each of them is read once
 * before anything is taken in, so that a damaged one turns all of them away.
 */
export async function lookAtPictures(
  packed: readonly PackedPicture[],
  events: readonly RackEvent[],
  photos: World['photos'],
): Promise<Result<LookedAt>> {
  const named = new Set(
    events.flatMap((event) => (event.type === 'photo-kept' ? [event.photo] : [])),
  );
  const here = new Set((await (await photos()).list()).map(({ id }) => id));
  const wanted = [...new Map(packed.map((each) => [each.id, each])).values()].filter(({ id }) =>
    named.has(id),
  );
  const fresh = wanted.filter(({ id }) => !here.has(id));
  for (const [n, picture] of fresh.entries()) {
    if (await picture.load()) continue;
    return refuse(
      'backup-damaged',
      `Picture ${n + 1} of ${fresh.length} is damaged. Nothing was taken in. Pick another copy.`,
    );
  }
  return ok({ fresh, known: wanted.length - fresh.length });
}

/**
 * Lays them by, one after the other, once the records that name them are written: else they would lie
 * here for ever. A picture that is here is never written over.
 */
export async function takePicturesIn(
  pictures: readonly PackedPicture[],
  photos: World['photos'],
): Promise<void> {
  const shelf = await photos();
  for (const picture of pictures) {
    const jpeg = (await shelf.load(picture.id)) ? undefined : await picture.load();
    if (jpeg) await shelf.keep(picture.id, jpeg);
  }
}
