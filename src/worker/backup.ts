import { momentOf } from '../domain/core/calendar.ts';
import type { Commands } from '../domain/desk.ts';
import { writeBackup } from '../store/backup-file.ts';
import type { Collection, World } from './collection.ts';

/** Everything that is to leave in a backup: also what a newer version wrote, as it is. */
export const allRecords = ({ picture, unreadable }: Collection): readonly unknown[] => [
  ...picture.ledger.events(),
  ...unreadable.map(({ raw }) => raw),
];

/** The whole log as one text, without the pictures. */
export async function backUp(
  { clock }: World,
  whole: Collection,
  collection: string,
): Promise<Commands['backUp']['answer']> {
  const made = momentOf(clock());
  const text = await writeBackup({ collection, made, records: allRecords(whole) });
  return { fileName: `${made.slice(0, 10)}.nightdrop.jsonl`, text };
}
