import type { Clock } from '../../domain/core/calendar.ts';
import { readStored } from '../../domain/events/read-event.ts';
import { createPicture, type Picture } from '../../domain/picture/picture.ts';
import type { EventLog } from '../../domain/ports.ts';
import { rules } from '../../domain/rules/all.ts';
import { createLedger } from '../../domain/state/ledger.ts';
import type { PictureShelf } from '../../store/picture-shelf.ts';

/**
 * The collection as it stands, for one look: nothing is written, nothing is followed.
 *
 * From the saved picture where nothing came after it, else from the whole log. A picture with a few
 * later records put on would be quicker, but those may correct what is in it, and nobody waits here.
 */
export async function readPicture(
  log: Pick<EventLog, 'readAfter'>,
  shelf: Pick<PictureShelf, 'load'>,
  clock: Clock,
): Promise<Picture> {
  const ledger = createLedger();
  const saved = await shelf.load();
  const later = await log.readAfter(saved?.position ?? 0);
  if (saved && later.records.length === 0) {
    ledger.restore(saved.subjects);
  } else {
    const { records } = saved ? await log.readAfter(0) : later;
    ledger.add(
      records.flatMap((raw) => {
        const read = readStored(raw);
        return read.ok ? [read.value] : []; // Of a newer version: kept, and not understood here.
      }),
    );
  }
  return createPicture(ledger, clock, rules);
}
