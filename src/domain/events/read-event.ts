import * as z from 'zod/mini';
import type { Result } from '../core/result.ts';
import { RackEvent } from './event.ts';
import { isOfToday, newestVersion } from './newest-versions.ts';
import { upcast, type RawEvent } from './upcast.ts';

const Raw = z.record(z.string(), z.unknown());

/** A stored record this version cannot understand, kept as it was found. */
export interface Unreadable {
  readonly raw: unknown;
  /** Which field, what is in it and what would be right. */
  readonly why: string;
}

function explain(raw: RawEvent): string | undefined {
  const known = newestVersion(String(raw['type']));
  if (known === undefined)
    return `type: "${String(raw['type'])}" is not a kind of record known here`;
  return Number(raw['v']) > known
    ? `v: version ${String(raw['v'])} of "${String(raw['type'])}" is newer than this program (${known})`
    : undefined;
}

/**
 * Reads one stored or imported record, of this or any earlier version.
 *
 * Errors: never throws. What cannot be read comes back whole, with the reason, so that the caller
 * can keep it: no record is ever discarded.
 */
export function readEvent(raw: unknown): Result<RackEvent, Unreadable> {
  const record = Raw.safeParse(raw);
  if (!record.success) return { ok: false, problem: { raw, why: 'not a record' } };
  const why = explain(record.data);
  if (why !== undefined) return { ok: false, problem: { raw, why } };
  const read = RackEvent.safeParse(upcast(record.data));
  return read.success
    ? { ok: true, value: read.data }
    : { ok: false, problem: { raw, why: z.prettifyError(read.error).replaceAll('\n', ' ') } };
}

/** Reads a record from the log: one of today's shape as it is, any other like an imported one. */
export const readStored = (raw: unknown): Result<RackEvent, Unreadable> =>
  isOfToday(raw) ? { ok: true, value: raw } : readEvent(raw);
