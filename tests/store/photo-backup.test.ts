import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { ok } from '../../src/domain/core/result.ts';
import { readBackup } from '../../src/store/backup-file.ts';
import { writePhotoBackup } from '../../src/store/photo-backup.ts';
import { createMemoryPhotos } from '../../src/store/photo-shelf.ts';
import { isPhotoBackup, openPhotoBackup } from '../../src/store/read-photo-backup.ts';
import { runs } from '../arbitrary.ts';
import { anEvent } from '../make.ts';
import { photoId } from '../make-ids.ts';
import { aJpeg, collected } from './photo-archive.ts';

const contents = (records: readonly unknown[]) => ({
  collection: '0M2B6WV3R000TAB01',
  made: '2026-11-24T22:00:00+01:00',
  records,
});

async function archive() {
  const photos = createMemoryPhotos();
  await photos.keep(photoId(1), aJpeg(1_000));
  await photos.keep(photoId(2), aJpeg(70_000));
  const log = [anEvent('weighed', { massG: 1_500 })];
  const { write, whole } = collected();
  await writePhotoBackup(contents(log), await photos.list(), photos, write);
  return { file: whole(), log };
}

describe('an archive', () => {
  // Source: APPNOTE.TXT 6.3, 4.4.1.4: what its counters hold.
  test.each([
    { what: 'of too many files', count: 65_535, bytes: 1 },
    { what: 'of too many bytes', count: 2, bytes: 2_147_483_648 },
  ])('$what is not begun', async ({ count, bytes }) => {
    const kept = Array.from({ length: count }, (_, n) => ({ id: photoId(n), bytes }));
    const { write, whole } = collected();
    const making = writePhotoBackup(contents([]), kept, createMemoryPhotos(), write);
    await expect(making).rejects.toMatchObject({ name: 'Fault', code: 'backup-too-large' });
    expect(whole().size).toBe(0);
  });

  test('gives back the log and each picture', async () => {
    const { file, log } = await archive();
    expect(await isPhotoBackup(file)).toBe(true);
    const opened = await openPhotoBackup(file);
    if (!opened.ok) throw new Error(opened.problem.message);
    expect(await readBackup(opened.value.log)).toEqual(ok(contents(log)));
    const pictures = opened.value.pictures;
    expect(pictures.map(({ id, bytes }) => [id, bytes])).toEqual([
      [photoId(1), 1_000],
      [photoId(2), 70_000],
    ]);
    expect(await pictures[1]?.load()).toEqual(aJpeg(70_000));
  });

  test('cut off anywhere is refused', async () => {
    const { file } = await archive();
    await fc.assert(
      fc.asyncProperty(fc.integer({ min: 4, max: file.size - 1 }), async (size) => {
        const opened = await openPhotoBackup(file.slice(0, size));
        expect(opened).toMatchObject({ ok: false, problem: { code: 'backup-cut' } });
      }),
      runs(40),
    );
  });

  test('with one byte of a picture changed gives back all but that', async () => {
    const { file } = await archive();
    const bytes = new Uint8Array(await file.arrayBuffer());
    const at = bytes.byteLength - 30_000; // Within the second picture, the last thing but the list.
    bytes[at] = (bytes[at] ?? 0) ^ 1;
    const opened = await openPhotoBackup(new Blob([bytes]));
    if (!opened.ok) throw new Error(opened.problem.message);
    expect(await opened.value.pictures[0]?.load()).toEqual(aJpeg(1_000));
    expect(await opened.value.pictures[1]?.load()).toBeUndefined();
  });

  test('that holds no log is not ours, and a text is no archive', async () => {
    const empty = new Uint8Array(22);
    empty.set([0x50, 0x4b, 5, 6]); // An archive of nothing: APPNOTE.TXT 6.3, 4.3.16.
    const opened = await openPhotoBackup(new Blob([empty]));
    expect(opened).toMatchObject({ ok: false, problem: { code: 'backup-foreign' } });
    expect(await isPhotoBackup(new Blob(['{"format":"nightdrop-log"}']))).toBe(false);
  });
});
