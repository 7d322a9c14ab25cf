import type * as z from 'zod/mini';

// Crockford's base 32: no I, L, O or U, so that nothing is read for something else.
export const SYMBOLS = '0123456789ABCDEFGHJKMNPQRSTVWXYZ';

const TIME_LENGTH = 9; // 45 bits of milliseconds: until the year 3084
const COUNT_LENGTH = 3; // 15 bits: 32,768 ids in one millisecond
export const WRITER_LENGTH = 5; // 25 random bits for each writer and session

export const ID_LENGTH = TIME_LENGTH + COUNT_LENGTH + WRITER_LENGTH;

/** Time-sortable as text, and unique across devices without asking any of them. */
export type EventId = string & z.core.$brand<'EventId'>;
export type AnimalId = string & z.core.$brand<'AnimalId'>;
export type TubId = string & z.core.$brand<'TubId'>;
export type RackId = string & z.core.$brand<'RackId'>;
export type RoomId = string & z.core.$brand<'RoomId'>;
export type ClutchId = string & z.core.$brand<'ClutchId'>;
export type IncubatorId = string & z.core.$brand<'IncubatorId'>;
/** A picture, kept apart from the log. */
export type PhotoId = string & z.core.$brand<'PhotoId'>;
/** A buyer, of whom the log holds nothing but this. */
export type BuyerId = string & z.core.$brand<'BuyerId'>;
/** The one household a collection belongs to. */
export type HouseId = 'h-house';
export const HOUSE: HouseId = 'h-house';
/** The one freezer its prey lies in. */
export type FreezerId = 'f-freezer';
export const FREEZER: FreezerId = 'f-freezer';

/** Five symbols naming one device. */
export type DeviceId = string & z.core.$brand<'DeviceId'>;

/** `value` in base 32, most significant symbol first, so that text order is number order. */
export function inBase32(value: number, length: number): string {
  let text = '';
  for (let rest = value, i = 0; i < length; i += 1, rest = Math.floor(rest / 32)) {
    text = `${SYMBOLS.charAt(rest % 32)}${text}`;
  }
  return text;
}

const timeOf = (id: string): number =>
  Array.from(id.slice(0, TIME_LENGTH)).reduce(
    (sum, symbol) => sum * 32 + SYMBOLS.indexOf(symbol),
    0,
  );

export interface Minter {
  event(): EventId;
  animal(): AnimalId;
  tub(): TubId;
  rack(): RackId;
  room(): RoomId;
  clutch(): ClutchId;
  incubator(): IncubatorId;
  photo(): PhotoId;
  buyer(): BuyerId;
  /** Later ids will sort after this one, even if this device's clock is behind. */
  seen(id: EventId): void;
}

/**
 * Makes ids that sort in the order they were made, also when the clock is set back.
 *
 * `writer` is five random symbols for this session; `nowMs` reads the clock of the outer world.
 */
export function createMinter(writer: DeviceId, nowMs: () => number): Minter {
  let lastMs = 0;
  let count = 0;

  function next(): string {
    const ms = nowMs();
    if (ms > lastMs) {
      lastMs = ms;
      count = 0;
    } else {
      count += 1;
      if (count === 32 ** COUNT_LENGTH) {
        lastMs += 1;
        count = 0;
      }
    }
    return inBase32(lastMs, TIME_LENGTH) + inBase32(count, COUNT_LENGTH) + writer;
  }

  return {
    event: () => next() as EventId,
    animal: () => `a-${next()}` as AnimalId,
    tub: () => `t-${next()}` as TubId,
    rack: () => `k-${next()}` as RackId,
    room: () => `r-${next()}` as RoomId,
    clutch: () => `c-${next()}` as ClutchId,
    incubator: () => `i-${next()}` as IncubatorId,
    photo: () => `p-${next()}` as PhotoId,
    buyer: () => `b-${next()}` as BuyerId,
    seen(id) {
      const ms = timeOf(id);
      if (ms >= lastMs) {
        lastMs = ms + 1;
        count = 0;
      }
    },
  };
}
