import * as z from 'zod/mini';
import type { Result } from '../core/result.ts';
import { RackEvent } from './event.ts';
import { upcast, type RawEvent } from './upcast.ts';

const Raw = z.record(z.string(), z.unknown());

/** A stored record this version cannot understand, kept as it was found. */
export interface Unreadable {
  readonly raw: unknown;
  /** Which field, what is in it and what would be right. */
  readonly why: string;
}

const newest: ReadonlyMap<string, number> = new Map(
  RackEvent.def.options.map(({ shape }): [string, number] => [
    shape.type.def.values[0] as string,
    shape.v.def.values[0] as number,
  ]),
);

/** The version of a kind of event that this program writes; undefined for a kind it does not know. */
export const newestVersion = (type: string): number | undefined => newest.get(type);

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

/**
 * Reads a record that this program itself checked before it was stored.
 *
 * Only its version is looked at, since checking 100,000 records again would delay every start.
 */
export function readStored(raw: unknown): Result<RackEvent, Unreadable> {
  // A restore may have kept anything here, also what is no record at all.
  const { type, v } = (raw ?? {}) as RawEvent;
  const wasChecked = v !== undefined && v === newestVersion(String(type));
  return wasChecked ? { ok: true, value: raw as RackEvent } : readEvent(raw);
}
