import fc from 'fast-check';
import type * as z from 'zod/mini';
import { momentOf } from '../src/domain/core/calendar.ts';
import { RackEvent, type EventType } from '../src/domain/events/event.ts';
import * as fields from '../src/domain/events/fields.ts';
import { EggMark } from '../src/domain/events/clutch.ts';
import { GeneId } from '../src/domain/events/genes.ts';
import { Currency } from '../src/domain/events/sales.ts';
import { OwnValue, ValueKey } from '../src/domain/events/household.ts';
import { protocolValues } from '../src/domain/protocol/values.ts';
import {
  animalId,
  buyerId,
  clutchId,
  code,
  eventId,
  incubatorId,
  photoId,
  rackId,
  roomId,
  tubId,
} from './make-ids.ts';

// Every kind of record there is, made from the schema itself: a kind added to it is in these tests
// at once. Ids come from small pools, so that records are about each other.

const few = <Id>(id: (n: number) => Id, most: number) => fc.integer({ min: 1, max: most }).map(id);

export const anyEventId = fc
  .tuple(fc.integer({ min: 1, max: 40 }), fc.constantFrom('MAKE0', 'MAKE1', 'MAKE2'))
  .map(([n, device]) => eventId(n, device));

const november = Date.UTC(2026, 10, 1);

/** Moments of forty days, read from clocks set to different zones; often the same ones. */
export const anyMoment = fc
  .record({
    ms: fc.integer({ min: 0, max: 40 * 24 * 4 }).map((quarter) => november + quarter * 900_000),
    offsetMin: fc.constantFrom(-300, 0, 60, 120, 330, 345),
  })
  .map(momentOf);

const anyDay = fc.integer({ min: 0, max: 4_000 }).map((n) => {
  return new Date(Date.UTC(2020, 0, 1) + n * 86_400_000).toISOString().slice(0, 10);
});

const pools = new Map<unknown, fc.Arbitrary<unknown>>([
  [fields.AnimalId, few(animalId, 4)],
  [fields.TubId, few(tubId, 3)],
  [fields.RackId, few(rackId, 2)],
  [fields.RoomId, few(roomId, 2)],
  [fields.ClutchId, few(clutchId, 3)],
  [fields.IncubatorId, few(incubatorId, 2)],
  [fields.PhotoId, few(photoId, 3)],
  [fields.BuyerId, few(buyerId, 2)],
  [Currency, fc.constantFrom('EUR', 'USD', 'JPY', 'KWD')],
  [fields.LabelCode, few(code, 5)],
  [fields.EventId, anyEventId],
  [fields.Moment, anyMoment],
  [fields.Day, anyDay],
  [ValueKey, fc.constantFrom(...Object.keys(protocolValues), 'ofALaterVersion', 'constructor')],
  [
    OwnValue,
    fc.option(
      fc.oneof(
        fc.integer({ min: 0, max: 60 }),
        fc.double({ noNaN: true, noDefaultInfinity: true }),
      ),
    ),
  ],
  [EggMark, fc.constantFrom('A', 'B', 'C')],
  [GeneId, fc.constantFrom('clown', 'piebald', 'own-marsh', 'spider', 'constructor')],
  [fields.DeviceId, fc.constantFrom('MAKE0', 'MAKE1')],
]);

const hostile = fc.constantFrom(
  '<img src=x onerror=alert(1)>',
  '__proto__',
  'constructor',
  'Ünï — 🐍',
  'F1',
);

function text(longest: number): fc.Arbitrary<string> {
  const plain = fc.string({ unit: 'grapheme', minLength: 1, maxLength: Math.min(longest, 12) });
  return fc
    .oneof(hostile, plain)
    .map((each) => each.slice(0, longest).trim())
    .filter((each) => each !== '');
}

type Checked = { readonly checks?: readonly z.core.$ZodCheck[] | undefined };

/** The limits that the checks of one kind set. */
const limits = ({ checks = [] }: Checked, check: string, field: string): number[] =>
  checks
    .map(({ _zod }) => _zod.def)
    .filter((each) => each.check === check)
    .map((each) => Number((each as unknown as Record<string, unknown>)[field]));

const atLeast = (def: Checked, check: string, field: string): number =>
  Math.max(0, ...limits(def, check, field));

const atMost = (def: Checked, check: string, field: string): number =>
  Math.min(100_000, ...limits(def, check, field));

/** Values of a schema of this program's. */
export function valuesOf(schema: z.core.$ZodType): fc.Arbitrary<unknown> {
  const pool = pools.get(schema);
  if (pool) return pool;
  const { def } = (schema as z.core.$ZodTypes)._zod;
  switch (def.type) {
    case 'literal':
      return fc.constantFrom(...def.values);
    case 'enum':
      return fc.constantFrom(...Object.values(def.entries));
    case 'boolean':
      return fc.boolean();
    case 'string':
      return text(atMost(def, 'max_length', 'maximum'));
    case 'number': {
      const min = atLeast(def, 'greater_than', 'value');
      const max = atMost(def, 'less_than', 'value');
      const isWhole = 'check' in def;
      return isWhole
        ? fc.integer({ min, max })
        : fc.integer({ min: min * 10 + 1, max: max * 10 }).map((tenths) => tenths / 10);
    }
    case 'array':
      return fc.array(valuesOf(def.element), {
        minLength: atLeast(def, 'min_length', 'minimum'),
        maxLength: 3,
      });
    case 'tuple':
      return fc.tuple(...def.items.map(valuesOf));
    case 'nullable':
      return fc.option(valuesOf(def.innerType), { nil: null });
    case 'union':
      return fc.oneof(...def.options.map(valuesOf));
    case 'record':
      return fc.dictionary(valuesOf(def.keyType) as fc.Arbitrary<string>, valuesOf(def.valueType), {
        maxKeys: 3,
      });
    case 'object': {
      const shape = Object.entries(def.shape);
      const isOptional = ([, each]: (typeof shape)[number]) => each._zod.def.type === 'optional';
      const required = shape.filter((each) => !isOptional(each)).map(([key]) => key);
      const values = shape.map(([key, each]): [string, fc.Arbitrary<unknown>] => [
        key,
        valuesOf(isOptional([key, each]) ? (each as z.core.$ZodOptional)._zod.def.innerType : each),
      ]);
      return fc.record(Object.fromEntries(values), { requiredKeys: required });
    }
    default:
      throw new Error(`No values are made for ${def.type} yet.`);
  }
}

export const eventTypes = RackEvent.def.options.map(
  ({ shape }) => shape.type.def.values[0],
) as readonly EventType[];

const byType = new Map(
  RackEvent.def.options.map((option, i) => [eventTypes[i], valuesOf(option)] as const),
);

export const anyEventOf = (type: EventType): fc.Arbitrary<RackEvent> =>
  byType.get(type) as fc.Arbitrary<RackEvent>;

/** Mostly records of a snake's days; corrections often enough to meet what they correct. */
export const anyEvent: fc.Arbitrary<RackEvent> = fc.oneof(
  { weight: 3, arbitrary: fc.oneof(...eventTypes.map(anyEventOf)) },
  {
    weight: 2,
    arbitrary: fc.oneof(
      ...(
        [
          'struck',
          'protocol-set',
          'meal-offered',
          'meal-settled',
          'introduced',
          'taken-out',
          'moved',
          'weighed',
          'follicles-scanned',
          'ovulated',
          'shed',
          'laid',
        ] as const
      ).map(anyEventOf),
    ),
  },
);

/** A log: any records, in any order, no two with one id. */
export const anyLog = fc.uniqueArray(anyEvent, {
  selector: ({ id }) => id,
  maxLength: 40,
  size: 'max',
});

/** Property runs are the same on every machine; a failing one becomes an example of its own. */
export const runs = (numRuns: number) => ({ numRuns, seed: 20_261_124 });
