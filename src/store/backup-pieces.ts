import { sha256 } from '@noble/hashes/sha2.js';
import { checkOf, headerLine, inIdOrder, recordLine, type BackupContents } from './backup-file.ts';

/** About so many characters go into one piece. */
const PIECE = 256_000;

/**
 * The same file as `writeBackup` gives, piece by piece: the log of many years is never one text in
 * memory. The first line carries the check of all the others, so each record is written twice, and
 * the browser's own SHA-256 wants everything at once.
 */
export function* backupPieces(contents: BackupContents): Generator<Uint8Array> {
  const records = inIdOrder(contents.records);
  const hash = sha256.create();
  for (const piece of bodyPieces(records)) hash.update(piece);
  yield encoder.encode(headerLine(contents, checkOf(hash.digest())));
  yield* bodyPieces(records);
}

const encoder = new TextEncoder();

function* bodyPieces(records: readonly unknown[]): Generator<Uint8Array> {
  let text = '';
  for (const record of records) {
    text += recordLine(record);
    if (text.length < PIECE) continue;
    yield encoder.encode(text);
    text = '';
  }
  if (text !== '') yield encoder.encode(text);
}
