import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { RackEvent } from '../../../src/domain/events/event.ts';
import { readEvent } from '../../../src/domain/events/read-event.ts';
import { createLedger } from '../../../src/domain/state/ledger.ts';
import { readBackup } from '../../../src/store/backup-file.ts';
import { textFile } from '../../store/text-file.ts';

// A backup as version 1 wrote it: invented, with every kind of record. It is never edited, since it
// stands for what people have. A later shape gets a golden log of its own beside it.
const golden = new URL('../../golden/', import.meta.url);
const log1 = readFileSync(new URL('log-1.jsonl', golden), 'utf8');

async function readGolden(): Promise<readonly RackEvent[]> {
  const backup = await readBackup(textFile(log1));
  const records = backup.ok ? backup.value.records : [];
  return records.map(readEvent).flatMap((read) => (read.ok ? [read.value] : []));
}

test('the backup of version 1 is whole, and every record in it can be read', async () => {
  const backup = await readBackup(textFile(log1));
  expect(backup).toMatchObject({ ok: true, value: { collection: '0M2B6WV3R000G0DE1' } });
  expect((await readGolden()).length).toBe(log1.trimEnd().split('\n').length - 1);
});

test('it is read to the same picture as ever', async () => {
  const ledger = createLedger();
  ledger.add(await readGolden());
  const picture = [...ledger.subjects]
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
    .map(([, subject]) => ({ ...subject, recent: undefined })); // Whole records, tested above.
  const text = `${JSON.stringify(picture, undefined, 2)}\n`;
  await expect(text).toMatchFileSnapshot('../../golden/log-1.picture.json');
});

test('every shape that is written has a golden log that holds it', () => {
  const held = new Set(
    log1
      .trimEnd()
      .split('\n')
      .slice(1)
      .map((line) => JSON.parse(line) as { type: string; v: number })
      .map(({ type, v }) => `${type}@${v}`),
  );
  // A new version fails here until its golden log is added, and the old one above until it has a
  // step in `upcast.ts`.
  const written = RackEvent.def.options.map(
    ({ shape }) => `${shape.type.def.values[0]}@${shape.v.def.values[0]}`,
  );
  expect(written.filter((shape) => !held.has(shape))).toEqual([]);
});
