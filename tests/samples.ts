import type { Day } from '../src/domain/core/calendar.ts';
import type { EventOf, EventType } from '../src/domain/events/event.ts';
import type { Prey } from '../src/domain/events/feeding.ts';
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

type Envelope =
  | 'id'
  | 'at'
  | 'precision'
  | 'notBefore'
  | 'loggedAt'
  | 'device'
  | 'by'
  | 'place'
  | 'replaces'
  | 'type'
  | 'v';

type Samples = { readonly [Type in EventType]: Omit<EventOf<Type>, Envelope> };

const animal = animalId(1);
const male = animalId(2);
const tub = tubId(1);
const pair = { male, female: animal };

export const smallRat: Prey = { kind: 'rat', size: 'small', eachG: 65, count: 1, state: 'thawed' };

/** The own fields of one ordinary record of every kind. Invented. */
export const samples: Samples = {
  'room-made': { room: roomId(1), name: 'Snake room' },
  'room-read': { room: roomId(1), spot: 'air', tempC: 25.4 },
  'room-logged': {
    room: roomId(1),
    spot: 'air',
    sensor: 'shelf',
    readings: [
      [0, 25.4],
      [5, 25.5, 60],
    ],
  },
  'room-programme-set': {
    room: roomId(1),
    from: '2026-10-01' as Day,
    name: 'Even',
    dayFromMin: 480,
    nightFromMin: 1_200,
    steps: [{ month: 1, day: 1, dayC: 27, nightC: 26, hotSpotC: 32 }],
  },
  'rack-made': { rack: rackId(1), room: roomId(1), name: 'B', rows: 4, columns: 2, walk: 'rows' },
  'rack-removed': { rack: rackId(1) },
  'tub-made': { tub, code: code(1), rack: rackId(1), row: 1, column: 1 },
  'tub-moved': { tub, rack: rackId(1), row: 2, column: 1 },
  'tub-removed': { tub },
  'tub-cleaned': { tub, how: 'full' },
  'water-seen': { tub, state: 'changed' },
  'label-printed': { codes: [code(1)], format: 'tub label' },
  'label-assigned': { code: code(9), to: { kind: 'animal', animal } },
  arrived: { animal, name: 'Sorrel', sex: 'female' },
  identified: { animal, sexedBy: 'probed' },
  'parents-stated': { animal, sires: [male] },
  moved: { animal, tub },
  'quarantine-started': { animal },
  'quarantine-ended': { animal },
  'health-noted': { animal, system: 'skin', severity: 1 },
  treated: { animal, prescribedBy: 'Dr Ahorn', asOnLabel: 'as written on the box' },
  tested: { animal, sample: 'swab', what: 'a virus' },
  'held-back': { animal },
  left: { animal, how: 'sold' },
  'came-back': { animal },
  noted: { animal, text: 'calm' },
  'passed-over': { animal, rule: 'F1', reason: 'away tonight' },
  'meal-offered': { animal, prey: smallRat, outcome: 'ate' },
  'meal-settled': { animal, offer: eventId(1), outcome: 'ate' },
  regurgitated: { animal },
  'started-smaller': { animal, why: 'eats well, and has stopped growing' },
  'prey-stocked': { kind: 'rat', size: 'small', pieces: 50, useBy: '2027-05-01' as Day },
  'prey-thawed': { kind: 'rat', size: 'small', pieces: 12 },
  'prey-thrown-out': { kind: 'rat', size: 'small', pieces: 2, from: 'thawed', why: 'left over' },
  'prey-counted': { kind: 'rat', size: 'small', pieces: 36 },
  'prey-size-stated': { kind: 'rat', size: 'small', eachG: 72 },
  'feeding-excepted': {
    animal,
    exceptions: [{ months: [11, 3], kind: 'mouse', size: 'adult', why: 'takes mice in winter' }],
  },
  weighed: { animal, massG: 1_500 },
  'opaque-seen': { animal },
  shed: { animal, quality: 'whole' },
  'faeces-seen': { animal, what: 'both' },
  'condition-judged': { animal, score: 3 },
  measured: { animal, lengthCm: 110 },
  introduced: { ...pair, tub },
  'pair-seen': { ...pair, seen: 'locked' },
  'taken-out': { ...pair },
  'follicles-scanned': { animal, found: { method: 'palpation', felt: 'small bumps' } },
  'sign-seen': { animal, sign: 'glow' },
  ovulated: { animal, sure: 'seen late' },
  'nothing-yet': { animal, lookedFor: 'eggs' },
  'nest-box-set': { animal, is: 'in' },
  laid: { animal, clutch: clutchId(1), good: 6, slugs: 1 },
  'paternity-stated': { animal, clutch: clutchId(1), sires: [{ male, grounds: 'locked' }] },
  'eggs-set': { clutch: clutchId(1), incubator: incubatorId(1), shelf: '2' },
  'eggs-checked': { clutch: clutchId(1), how: 'candled', good: 6 },
  'box-aired': { clutch: clutchId(1) },
  'hatching-seen': { clutch: clutchId(1), seen: 'pip', eggs: 1 },
  hatched: { animal, clutch: clutchId(1), defects: [] },
  'eggs-felt': { animal, left: 'none' },
  'clutch-closed': { clutch: clutchId(1), why: 'all out' },
  'incubator-made': { incubator: incubatorId(1), name: 'Left', targetC: 31.5 },
  'incubator-retired': { incubator: incubatorId(1) },
  'incubator-read': { incubator: incubatorId(1), spot: 'egg level', tempC: 31.4 },
  'incubator-logged': {
    incubator: incubatorId(1),
    spot: 'air',
    sensor: 'probe',
    readings: [
      [0, 31.4],
      [15, 31.5],
    ],
  },
  'heat-failed': { incubators: [incubatorId(1)] },
  'heat-back': { incubators: [incubatorId(1)], lowestC: 24.5 },
  'season-closed': { animal, why: 'resorbed' },
  'young-counted': {
    animal,
    clutch: clutchId(1),
    sires: [{ male }],
    counts: [{ looks: 'Normal', count: 5 }],
  },
  'gene-tested': { animal, locus: 'clown', allele: 'clown', result: 'not found' },
  'gene-made': {
    locus: 'own-marsh',
    allele: 'own-marsh',
    name: 'Marsh',
    aliases: [],
    mode: 'recessive',
  },
  'pairing-reasoned': {
    ...pair,
    cautions: ['spider-with-champagne'],
    reason: 'to prove another gene',
  },
  'pair-wanted': { ...pair, choice: 'first' },
  'visit-ruled': {
    ...pair,
    rule: { kind: 'pinned', in: '2026-11-26' as Day, out: '2026-11-29' as Day },
  },
  'evenings-away': { from: '2026-12-01' as Day, last: '2026-12-03' as Day, is: 'away' },
  'visits-planned': {
    night: '2026-11-24' as Day,
    visits: [{ ...pair, in: '2026-11-24' as Day, out: '2026-11-27' as Day }],
  },
  'photo-kept': { animal, photo: photoId(1), about: eventId(1), bytes: 182_000 },
  'put-up-for-sale': { animal, price: { minor: 45_000, currency: 'EUR' } },
  'taken-off-sale': { animal },
  reserved: { animal, buyer: buyerId(1), until: '2026-12-08' as Day },
  sold: { animal, buyer: buyerId(1), price: { minor: 45_000, currency: 'EUR' } },
  'handed-over': { animal, how: 'collected' },
  'sale-ended': { animal, why: 'fell through' },
  'source-stated': { animal, code: 'C' },
  'protocol-set': { values: { maleStayDays: 2, weighDays: null } },
  'vet-stated': { name: 'Dr Ahorn', phone: '01632 960017' },
  struck: { target: eventId(1), reason: 'mistap' },
};
