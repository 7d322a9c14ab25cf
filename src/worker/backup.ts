import { momentOf } from '../domain/core/calendar.ts';
import type { Commands } from '../domain/desk.ts';
import { backupPieces } from '../store/backup-pieces.ts';
import { makeFile } from '../store/made-files.ts';
import type { Collection, World } from './collection.ts';

/** Everything that is to leave in a backup: also what a newer version wrote, as it is. */
export const allRecords = ({ picture, unreadable }: Collection): readonly unknown[] => [
  ...picture.ledger.events(),
  ...unreadable.map(({ raw }) => raw),
];

/** The whole log, without the pictures. */
export async function backUp(
  { clock }: World,
  whole: Collection,
  collection: string,
): Promise<Commands['backUp']['answer']> {
  const made = momentOf(clock());
  const contents = { collection, made, records: allRecords(whole) };
  const { file } = await makeFile(clock().ms, async (write) => {
    for (const piece of backupPieces(contents)) await write(piece);
  });
  return { fileName: `${made.slice(0, 10)}.nightdrop.jsonl`, file };
}
