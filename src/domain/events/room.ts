import * as z from 'zod/mini';
import { Day, RackId, RoomId } from './fields.ts';
import { event, line, remark } from './envelope.ts';

export const tempC = z.number().check(z.gte(-30), z.lte(70));
const tempF = z.number().check(z.gte(-22), z.lte(158));
const humidityPercent = z.number().check(z.gte(0), z.lte(100));
const minuteOfDay = z.int().check(z.gte(0), z.lte(1_439));

/** Where it was measured: the air of the room, or under the heat of a rack. */
export const Spot = z.enum(['air', 'hot spot']);

const place = { room: RoomId, spot: Spot, rack: z.optional(RackId) };

/** What a thermometer or a thermostat shows, read by hand. */
export const readByHand = {
  tempC,
  humidityPercent: z.optional(humidityPercent),
  /** The lowest and highest that the thermometer noted since it was last set back. */
  lowC: z.optional(tempC),
  highC: z.optional(tempC),
  /** What was typed, where that was degrees Fahrenheit. */
  entered: z.optional(
    z.strictObject({
      unit: z.literal('°F'),
      temp: tempF,
      low: z.optional(tempF),
      high: z.optional(tempF),
    }),
  ),
};

/** As many readings as one record holds: a week of one every five minutes. */
export const MOST_READINGS = 2_000;

/** Whole minutes since the record’s `at`. */
const sinceMin = z.int().check(z.gte(0), z.lte(527_040));

/** A stretch of a sensor’s file, as `room-logged` says. */
export const stretch = {
  /** What the keeper calls the sensor. */
  sensor: line(40),
  readings: z
    .array(z.union([z.tuple([sinceMin, tempC]), z.tuple([sinceMin, tempC, humidityPercent])]))
    .check(z.minLength(1), z.maxLength(MOST_READINGS)),
  /** The file’s unit, where that was degrees Fahrenheit: then `tempC` is to 0.01 °C. */
  fileUnit: z.optional(z.literal('°F')),
};

/** What the air of a room shall be, is and was. */
export const roomEvents = [
  /** Read by hand, from a thermometer or a thermostat. */
  event('room-read', 1, {
    ...place,
    ...readByHand,
    remark,
  }),
  /**
   * A stretch of a sensor’s file. `at` is a whole minute with the offset that local time had
   * throughout, so a stretch ends where clocks change. A sensor’s reading of a minute is one
   * reading, in however many records it comes; the record later in time holds.
   */
  event('room-logged', 1, {
    ...place,
    ...stretch,
  }),
  /**
   * What the room shall be from a day on, year after year until another programme. Between two
   * steps the values change evenly from day to day.
   */
  event('room-programme-set', 1, {
    room: RoomId,
    from: Day,
    name: line(40),
    /** Minutes after midnight at which day and night begin. */
    dayFromMin: minuteOfDay,
    nightFromMin: minuteOfDay,
    steps: z
      .array(
        z.strictObject({
          month: z.int().check(z.gte(1), z.lte(12)),
          /** Where the month has fewer days, its last one is meant. */
          day: z.int().check(z.gte(1), z.lte(31)),
          dayC: tempC,
          nightC: tempC,
          hotSpotC: z.optional(tempC),
          /** By night; left out, the hot spot is never lowered. */
          hotSpotNightC: z.optional(tempC),
        }),
      )
      .check(z.minLength(1), z.maxLength(24)),
    remark,
  }),
] as const;
