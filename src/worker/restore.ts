import { ok, refuse, type Result } from '../domain/core/result.ts';
import type { FileLike } from '../domain/file-like.ts';
import type { RestorePreview } from '../domain/restore-preview.ts';
import type { RackEvent } from '../domain/events/event.ts';
import { isOfToday } from '../domain/events/newest-versions.ts';
import { readEvent, type Unreadable } from '../domain/events/read-event.ts';
import { sayWhatIsWrong } from '../domain/events/say-what-is-wrong.ts';
import type { Ledger } from '../domain/state/ledger.ts';
import { readBackup } from '../store/backup-file.ts';
import { isPhotoBackup, openPhotoBackup, type PackedPicture } from '../store/read-photo-backup.ts';
import type { World } from './collection.ts';
import { lookAtPictures } from './restore-pictures.ts';

/** A backup that was looked into, ready to be taken in. */
export interface LookedInto {
  readonly preview: RestorePreview;
  readonly collection: string;
  readonly fresh: readonly RackEvent[];
  /** Records of a newer version: kept as they are. */
  readonly unread: readonly unknown[];
  /** Pictures that are not here yet, each looked at once and found whole. */
  readonly pictures: readonly PackedPicture[];
}

const REASONS_SHOWN = 3;

/**
 * What a backup would add to what is here. Reads only; records that are here already stay as they
 * are, whatever the backup says of them.
 *
 * Errors: refuses a bad file, and the backup of another collection unless this one is empty.
 */
export async function lookIntoBackup(
  file: FileLike,
  ledger: Ledger,
  unreadable: readonly Unreadable[],
  collection: string | undefined,
  photos: World['photos'],
): Promise<Result<LookedInto>> {
  sayWhatIsWrong();
  const packed = (await isPhotoBackup(file).catch(() => false))
    ? await openPhotoBackup(file)
    : undefined;
  if (packed && !packed.ok) return packed;
  const backup = await readBackup(packed ? packed.value.log : file);
  if (!backup.ok) return backup;
  if (ledger.size > 0 && collection !== undefined && backup.value.collection !== collection) {
    return refuse(
      'another-collection',
      'This backup is of another collection. Taking it in here would mix the two, so nothing was changed. Open it on a device that has no records yet.',
    );
  }
  const fresh = new Map<string, RackEvent>();
  const unread: unknown[] = [];
  const reasons: string[] = [];
  let known = 0;
  const kept = new Set(unreadable.map(({ raw }) => JSON.stringify(raw)));
  for (const [i, raw] of backup.value.records.entries()) {
    const read = readEvent(raw);
    if (!read.ok && isOfToday(raw)) {
      // Kept like one of a newer version, it would be trusted as soon as it is read from the log.
      return refuse(
        'backup-damaged',
        `Line ${i + 2} is damaged: ${read.problem.why}. Nothing was taken in.`,
      );
    }
    if (!read.ok) {
      if (kept.has(JSON.stringify(raw))) {
        known += 1;
        continue;
      }
      unread.push(raw);
      if (reasons.length < REASONS_SHOWN) reasons.push(`Line ${i + 2}: ${read.problem.why}`);
    } else if (ledger.has(read.value.id) || fresh.has(read.value.id)) {
      known += 1;
    } else {
      fresh.set(read.value.id, read.value);
    }
  }
  const events = [...fresh.values()];
  const pictures = packed
    ? await lookAtPictures(packed.value.pictures, [...ledger.events(), ...events], photos)
    : undefined;
  if (pictures && !pictures.ok) return pictures;
  return ok({
    pictures: pictures?.value.fresh ?? [],
    collection: backup.value.collection,
    fresh: events,
    unread,
    preview: {
      pictures: pictures && {
        fresh: pictures.value.fresh.length,
        freshBytes: pictures.value.fresh.reduce((sum, { bytes }) => sum + bytes, 0),
        known: pictures.value.known,
      },
      made: backup.value.made,
      records: backup.value.records.length,
      fresh: fresh.size,
      known,
      unreadable: unread.length,
      reasons,
      animals: new Set(events.flatMap((event) => ('animal' in event ? [event.animal] : []))).size,
    },
  });
}
