import { readdirSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { RackEvent } from '../../../src/domain/events/event.ts';
import { readEvent } from '../../../src/domain/events/read-event.ts';
import { createLedger } from '../../../src/domain/state/ledger.ts';
import { readBackup } from '../../../src/store/backup-file.ts';
import { textFile } from '../../store/text-file.ts';

// Backups as earlier versions wrote them: invented, together with every kind of record there is.
// They are never edited, since they stand for what people have. A later shape gets a golden log of
// its own beside them. What they are read to lies beside each as `….picture.json`.
const golden = new URL('../../golden/', import.meta.url);
const read = (file: string): string => readFileSync(new URL(file, golden), 'utf8');
const logs = readdirSync(golden).filter((file) => file.endsWith('.jsonl'));

async function readGolden(file: string): Promise<readonly RackEvent[]> {
  const backup = await readBackup(textFile(read(file)));
  const records = backup.ok ? backup.value.records : [];
  return records.map(readEvent).flatMap((each) => (each.ok ? [each.value] : []));
}

describe.each(logs)('the backup %s', (file) => {
  test('is whole, and every record in it can be read', async () => {
    expect(await readBackup(textFile(read(file)))).toMatchObject({ ok: true });
    expect((await readGolden(file)).length).toBe(read(file).trimEnd().split('\n').length - 1);
  });

  test('is read to the same picture as ever: more may be known of it, and nothing else', async () => {
    const ledger = createLedger();
    ledger.add(await readGolden(file));
    const ever = JSON.parse(read(file.replace('.jsonl', '.picture.json'))) as object;
    const picture = Object.fromEntries(ledger.subjects);
    // Clutches have become subjects of their own; whatever else there is, there was.
    const subjects = Object.keys(picture).filter((id) => id in ever || !id.startsWith('c-'));
    expect(subjects.toSorted()).toEqual(Object.keys(ever).toSorted());
    expect(picture).toMatchObject(ever);
  });
});

test('every shape that is written has a golden log that holds it', () => {
  const held = new Set(
    logs.flatMap((file) =>
      read(file)
        .trimEnd()
        .split('\n')
        .slice(1)
        .map((line) => JSON.parse(line) as { type: string; v: number })
        .map(({ type, v }) => `${type}@${v}`),
    ),
  );
  // A new version fails here until its golden log is added, and the old one above until it has a
  // step in `upcast.ts`.
  const written = RackEvent.def.options.map(
    ({ shape }) => `${shape.type.def.values[0]}@${shape.v.def.values[0]}`,
  );
  expect(written.filter((shape) => !held.has(shape))).toEqual([]);
});
