import * as z from 'zod/mini';
import { refuse, ok, type Result } from '../domain/core/result.ts';
import type { FileLike } from '../domain/file-like.ts';

const FORMAT = 'nightdrop-log';
const VERSION = 1;

const Header = z.looseObject({
  format: z.literal(FORMAT),
  version: z.int().check(z.gte(1)),
  collection: z.string().check(z.minLength(1)),
  made: z.string(),
  records: z.int().check(z.gte(0)),
  check: z.string().check(z.regex(/^sha-256:[0-9a-f]{64}$/)),
});
type Header = z.infer<typeof Header>;

export interface BackupContents {
  readonly collection: string;
  readonly made: string;
  readonly records: readonly unknown[];
}

/** The longest first line that is looked at before the rest of a file is read. */
const HEADER_BYTES = 4_096;

export const inIdOrder = (records: readonly unknown[]): readonly unknown[] =>
  records.toSorted(byId);

export const recordLine = (record: unknown): string => `${JSON.stringify(record)}\n`;

/** The first line; `check` is that of all that follows. */
export function headerLine({ collection, made, records }: BackupContents, check: string): string {
  const header: Header = {
    format: FORMAT,
    version: VERSION,
    collection,
    made,
    records: records.length,
    check,
  };
  return `${JSON.stringify(header)}\n`;
}

const idOf = (record: unknown): string => String((record as { id?: unknown }).id);
const byId = (a: unknown, b: unknown): number => (idOf(a) < idOf(b) ? -1 : 1);

async function checkValue(text: string): Promise<string> {
  const hash = await crypto.subtle.digest('SHA-256', new TextEncoder().encode(text));
  return checkOf(new Uint8Array(hash));
}

/** A SHA-256 as the first line writes it. */
export const checkOf = (hash: Uint8Array): string =>
  `sha-256:${Array.from(hash, (byte) => byte.toString(16).padStart(2, '0')).join('')}`;

/**
 * Reads a backup of this or any earlier version. The first line is judged before the rest is read,
 * so that a wrong file of any size is turned away at once.
 *
 * Errors: refuses with what is wrong, and at which line, and what to do; reads nothing in part.
 */
export async function readBackup(file: FileLike): Promise<Result<BackupContents>> {
  try {
    return await readWhole(file);
  } catch {
    return refuse(
      'file-unreadable',
      'This file could not be read from where it lies. Copy it to this device, then try again.',
    );
  }
}

async function readWhole(file: FileLike): Promise<Result<BackupContents>> {
  if (file.size === 0) return refuse('backup-empty', 'This file is empty. Pick another one.');
  const head = await file.slice(0, HEADER_BYTES).text();
  const end = head.indexOf('\n');
  const header = readHeader(end < 0 ? head : head.slice(0, end));
  if (!header.ok) return header;
  if (end < 0) return truncated(0, header.value.records);

  const text = await file.text();
  const body = text.slice(text.indexOf('\n') + 1);
  const lines = body.split('\n');
  const last = lines.pop();
  if (last !== '' || lines.length < header.value.records) {
    return truncated(last === '' ? lines.length : lines.length + 1, header.value.records);
  }
  if ((await checkValue(body)) !== header.value.check) {
    return refuse(
      'backup-changed',
      'The check value does not fit: this file was changed or damaged after it was made. Nothing was read. Pick another copy.',
    );
  }
  const records: unknown[] = [];
  for (const [i, line] of lines.entries()) {
    const record = parse(line);
    if (!isRecord(record)) {
      return refuse('backup-damaged', `Line ${i + 2} is not a record. Nothing was read.`);
    }
    records.push(record);
  }
  const { collection, made } = header.value;
  return ok({ collection, made, records });
}

function readHeader(line: string): Result<Header> {
  const raw = parse(line);
  const format = z.looseObject({ format: z.literal(FORMAT), version: z.number() }).safeParse(raw);
  if (!format.success) {
    return refuse(
      'backup-foreign',
      'This is not a Nightdrop backup: line 1 does not say so. Pick a file that ends in .nightdrop.jsonl.',
    );
  }
  if (format.data.version > VERSION) {
    return refuse(
      'backup-too-new',
      `This backup has version ${format.data.version}; this app reads up to ${VERSION}. Update the app, then try again. Nothing was changed.`,
    );
  }
  const header = Header.safeParse(raw);
  return header.success
    ? ok(header.data)
    : refuse(
        'backup-damaged',
        `Line 1 is damaged (${header.error.issues[0]?.path.join('.') ?? 'header'}). Nothing was read.`,
      );
}

const truncated = (line: number, expected: number): Result<never> =>
  refuse(
    'backup-cut',
    `This file ends early, at line ${line + 1} of ${expected + 1}: it was cut off. Nothing was read. Pick another copy.`,
  );

const isRecord = (value: unknown): boolean =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

function parse(line: string): unknown {
  try {
    return JSON.parse(line);
  } catch {
    return undefined;
  }
}
