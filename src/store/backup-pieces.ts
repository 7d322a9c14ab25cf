import { sha256 } from '@noble/hashes/sha2.js';
import { checkOf, headerLine, inIdOrder, recordLine, type BackupContents } from './backup-file.ts';

/** About so many characters go into one piece. */
const PIECE = 32_000;

/**
 * The whole log as a text file, one record a line, that a person can open, read and keep; in pieces,
 * so that the log of many years is never in memory twice. Each piece lies where the one before lay,
 * and is good until the next is asked for.
 *
 * The first line names format, version and collection, counts the records and carries the SHA-256
 * of all that follows: each record is written twice, and the browser's own SHA-256 would want
 * everything at once. Sorted by id, so that two backups can be compared line by line.
 */
export function* backupPieces(contents: BackupContents): Generator<Uint8Array> {
  const records = inIdOrder(contents.records);
  const encode = encoderInPlace();
  const hash = sha256.create();
  for (const text of bodyTexts(records)) hash.update(encode(text));
  yield encode(headerLine(contents, checkOf(hash.digest())));
  for (const text of bodyTexts(records)) yield encode(text);
}

/** Encodes each text over the last one: what is new each time is cleared up too late by far. */
function encoderInPlace(): (text: string) => Uint8Array {
  const encoder = new TextEncoder();
  let room = new Uint8Array();
  return (text) => {
    const mostBytes = 3 * text.length;
    if (room.byteLength < mostBytes) room = new Uint8Array(2 * mostBytes);
    return room.subarray(0, encoder.encodeInto(text, room).written);
  };
}

function* bodyTexts(records: readonly unknown[]): Generator<string> {
  let text = '';
  for (const record of records) {
    text += recordLine(record);
    if (text.length < PIECE) continue;
    yield text;
    text = '';
  }
  if (text !== '') yield text;
}
