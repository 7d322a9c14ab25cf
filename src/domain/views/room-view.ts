import { addDays, type Day } from '../core/calendar.ts';
import type { LabelCode } from '../core/code.ts';
import type { IncubatorId, RackId, RoomId } from '../core/ids.ts';
import type { RackEvent } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import { bandsOf, usualHours } from '../room/band.ts';
import { inForce, partAt } from '../room/programme.ts';
import { seriesOf } from '../room/series.ts';
import { madeBy } from '../room/words.ts';
import type { Room } from '../state/place.ts';
import type { Programme } from '../state/room-air.ts';
import type { Measured, Reading, Series } from '../state/readings.ts';
import { recordLine, type RecordLine } from './record-line.ts';
import { alarmsOf, type RoomAlarm } from './room-alarms.ts';
import { spanView, type SpanView } from './room-span.ts';

/** A room over a span: how many days, and how many such spans back. */
export type RoomAsk = `${RoomId}/${number}/${number}`;

/** The newest reading at one place. */
export interface LastReading {
  /** "Air", "Hot spot, rack B" */
  readonly where: string;
  readonly tempC: number;
  readonly humidityPercent?: number | undefined;
  /** "By hand", or the sensor’s name. */
  readonly by: string;
  readonly ageMin: number;
  readonly night: Day;
  /** Held against the programme as it was then. */
  readonly stands?: 'in band' | 'below' | 'above' | undefined;
}

export interface RoomView {
  readonly id: RoomId;
  readonly name: string;
  /** False while old records are still being read: then only the last readings are there. */
  readonly isWhole: boolean;
  readonly code?: LabelCode | undefined;
  readonly racks: readonly { readonly id: RackId; readonly name: string }[];
  readonly tonight: Day;
  readonly last: readonly LastReading[];
  /** What the programme asks for now. Unit: °C. */
  readonly target: {
    readonly part: 'day' | 'night';
    readonly airC?: number | undefined;
    readonly hotSpotC?: number | undefined;
    /** Minute of the day at which this part ends. */
    readonly untilMin: number;
  };
  readonly programme?: Programme | undefined;
  /** One that begins on a later day. */
  readonly next?: Programme | undefined;
  readonly alarms: readonly RoomAlarm[];
  /** Names of sensors heard of before, the latest used first. */
  readonly sensors: readonly string[];
  /** What a thermometer may be off by. Unit: °C. */
  readonly errorC: number;
  readonly span: SpanView;
  /** Every record about it, newest first. */
  readonly history: readonly RecordLine[];
}

/** The standing records of a room or an incubator, oldest first; none while history is still on its way. */
export const standingHistory = (id: RoomId | IncubatorId, { ledger }: Picture): RackEvent[] =>
  ledger.history(id).filter((event) => ledger.stands(event.id));

/** Kept as long as the room stays as it is: a year of a sensor takes a while to put in order. */
const known = new WeakMap<Room, readonly Series[]>();

function allSeries(room: Room, picture: Picture): readonly Series[] {
  const series = known.get(room) ?? seriesOf(standingHistory(room.id, picture));
  known.set(room, series);
  return series;
}

export function roomView(ask: RoomAsk, picture: Picture): RoomView | undefined {
  const [id = '', days = '7', back = '0'] = ask.split('/');
  const room = picture.room(id as RoomId);
  if (!room) return undefined;
  const { facts, ledger } = picture;
  const series = ledger.hasHistory ? allSeries(room, picture) : room.air.recent;
  const rackName = (rack: RackId): string => picture.rack(rack)?.name ?? '?';
  const label = (measured: Measured): string =>
    `${placeWords(measured, rackName)} · ${madeBy(measured)}`;
  const nowMin = Math.floor(facts.nowMs / 60_000);
  const { night } = facts;
  return {
    id: room.id,
    name: room.name || 'Room',
    isWhole: ledger.hasHistory,
    code: codeOfRoom(room.id, picture),
    racks: racksIn(room.id, picture),
    tonight: night,
    last: lastReadings(room, picture, rackName),
    target: targetNow(room, nowMin + facts.offsetMin, picture),
    programme: inForce(room.air.programmes, night),
    next: room.air.programmes.findLast(({ from }) => from > night),
    alarms: alarmsOf(room, picture),
    sensors: sensorsOf(series),
    errorC: facts.protocol.thermometerErrorC,
    history: historyOf(room.id, picture),
    span: spanView(
      series,
      label,
      { days: Number(days), back: Number(back) },
      {
        bandAt: (spot) => bandsOf(room.air.programmes, spot, facts.protocol),
        gapHours: facts.protocol.roomGapHours,
      },
      facts,
    ),
  };
}

const historyOf = (id: RoomId, picture: Picture): RecordLine[] =>
  picture.ledger
    .history(id)
    .toReversed()
    .map((event) => {
      const { ledger } = picture;
      const struck = ledger.stands(event.id)
        ? undefined
        : (ledger.reasonStruck(event.id) ?? 'replaced');
      return recordLine(event, picture, struck);
    });

/** Where something is measured: "Air", "Hot spot, rack B". */
export const placeWords = ({ spot, rack }: Measured, rackName: (rack: RackId) => string): string =>
  spot === 'air' ? 'Air' : rack === undefined ? 'Hot spot' : `Hot spot, rack ${rackName(rack)}`;

/** The label's code that leads to a room. */
export function codeOfRoom(id: RoomId, { ledger }: Picture): LabelCode | undefined {
  for (const subject of ledger.subjects.values()) {
    if ('kind' in subject && subject.kind === 'label' && subject.to?.kind === 'room') {
      if (subject.to.room === id) return subject.code;
    }
  }
  return undefined;
}

const racksIn = (id: RoomId, { ledger }: Picture): RoomView['racks'] =>
  [...ledger.subjects.values()]
    .flatMap((each) =>
      'kind' in each && each.kind === 'rack' && !each.removed && each.room === id
        ? [{ id: each.id, name: each.name }]
        : [],
    )
    .toSorted((a, b) => (a.name < b.name ? -1 : 1));

function lastReadings(
  room: Room,
  { facts }: Picture,
  rackName: (rack: RackId) => string,
): LastReading[] {
  const newest = new Map<string, { readonly of: Series; readonly reading: Reading }>();
  for (const of of room.air.recent) {
    const where = placeWords(of, rackName);
    const reading = of.readings.at(-1);
    if (!reading) continue;
    if (reading.minute >= (newest.get(where)?.reading.minute ?? -Infinity)) {
      newest.set(where, { of, reading });
    }
  }
  return [...newest]
    .toSorted(([a], [b]) => (a < b ? -1 : 1))
    .map(([where, { of, reading }]) => {
      const localMin = reading.minute + reading.offsetMin;
      const { targetC, lowC, highC } = bandsOf(
        room.air.programmes,
        of.spot,
        facts.protocol,
      )(localMin);
      const { tempC } = reading;
      const stands = tempC < lowC ? 'below' : tempC > highC ? 'above' : 'in band';
      return {
        where,
        tempC,
        humidityPercent: reading.humidityPercent,
        by: madeBy(of),
        ageMin: Math.max(0, facts.nowMs / 60_000 - reading.minute),
        night: dayOfLocal(localMin),
        stands: targetC === undefined ? undefined : stands,
      };
    });
}

const dayOfLocal = (localMin: number): Day =>
  addDays('1970-01-01' as Day, Math.floor(localMin / 1440));

function targetNow(room: Room, localMin: number, { facts }: Picture): RoomView['target'] {
  const { programmes } = room.air;
  const [air, hotSpot] = (['air', 'hot spot'] as const).map((spot) =>
    bandsOf(programmes, spot, facts.protocol)(localMin),
  );
  const hours = inForce(programmes, dayOfLocal(localMin)) ?? usualHours;
  const { part } = partAt(hours, localMin);
  return {
    part,
    airC: air?.targetC,
    hotSpotC: hotSpot?.targetC,
    untilMin: part === 'day' ? hours.nightFromMin : hours.dayFromMin,
  };
}

function sensorsOf(series: readonly Series[]): readonly string[] {
  const newestFirst = series.toSorted(
    (a, b) => (b.readings.at(-1)?.minute ?? 0) - (a.readings.at(-1)?.minute ?? 0),
  );
  return [...new Set(newestFirst.flatMap(({ sensor }) => sensor ?? []))];
}
