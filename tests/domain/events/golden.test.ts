import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { RackEvent } from '../../../src/domain/events/event.ts';
import { readEvent } from '../../../src/domain/events/read-event.ts';
import { createLedger } from '../../../src/domain/state/ledger.ts';
import { readBackup } from '../../../src/store/backup-file.ts';
import { textFile } from '../../store/text-file.ts';

// A backup as version 1 wrote it: invented, with every kind of record. It is never edited, nor is
// what it was read to, since it stands for what people have. A later shape gets a golden log of its
// own beside it.
const golden = new URL('../../golden/', import.meta.url);
const read = (file: string): string => readFileSync(new URL(file, golden), 'utf8');
const log1 = read('log-1.jsonl');

async function readGolden(): Promise<readonly RackEvent[]> {
  const backup = await readBackup(textFile(log1));
  const records = backup.ok ? backup.value.records : [];
  return records.map(readEvent).flatMap((each) => (each.ok ? [each.value] : []));
}

test('the backup of version 1 is whole, and every record in it can be read', async () => {
  const backup = await readBackup(textFile(log1));
  expect(backup).toMatchObject({ ok: true, value: { collection: '0M2B6WV3R000G0DE1' } });
  expect((await readGolden()).length).toBe(log1.trimEnd().split('\n').length - 1);
});

test('it is read to the same picture as ever: more may be known of it, and nothing else', async () => {
  const ledger = createLedger();
  ledger.add(await readGolden());
  const ever = JSON.parse(read('log-1.picture.json')) as Record<string, unknown>;
  const picture = Object.fromEntries(ledger.subjects);
  expect(Object.keys(picture).toSorted()).toEqual(Object.keys(ever).toSorted());
  expect(picture).toMatchObject(ever);
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
