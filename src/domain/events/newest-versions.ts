import type { EventOf, EventType, RackEvent } from './event.ts';

/**
 * The version of each kind of record that this program writes.
 *
 * The compiler holds this list against the shapes; so a start knows the records of today's shapes
 * without loading the shapes.
 */
const newestVersions: { readonly [Type in EventType]: EventOf<Type>['v'] } = {
  'room-made': 1,
  'rack-made': 1,
  'rack-removed': 1,
  'tub-made': 1,
  'tub-moved': 1,
  'tub-removed': 1,
  'tub-cleaned': 1,
  'water-seen': 1,
  'label-printed': 1,
  'label-assigned': 3,
  'room-read': 1,
  'room-logged': 1,
  'room-programme-set': 1,
  arrived: 1,
  identified: 1,
  'parents-stated': 1,
  moved: 1,
  'quarantine-started': 1,
  'quarantine-ended': 1,
  'health-noted': 1,
  treated: 1,
  tested: 1,
  'held-back': 1,
  left: 1,
  'came-back': 1,
  noted: 1,
  'passed-over': 1,
  'meal-offered': 1,
  'meal-settled': 1,
  regurgitated: 1,
  'prey-stocked': 1,
  'prey-thawed': 1,
  'prey-thrown-out': 1,
  'prey-counted': 1,
  'prey-size-stated': 1,
  'feeding-excepted': 1,
  'started-smaller': 1,
  weighed: 1,
  'opaque-seen': 1,
  shed: 1,
  'faeces-seen': 1,
  'condition-judged': 1,
  measured: 1,
  introduced: 1,
  'pair-seen': 1,
  'taken-out': 1,
  'follicles-scanned': 1,
  'sign-seen': 1,
  ovulated: 1,
  'nothing-yet': 1,
  'nest-box-set': 1,
  laid: 1,
  'season-closed': 1,
  'paternity-stated': 1,
  'eggs-set': 1,
  'eggs-checked': 1,
  'box-aired': 1,
  'hatching-seen': 1,
  hatched: 1,
  'eggs-felt': 1,
  'clutch-closed': 1,
  'incubator-made': 1,
  'incubator-retired': 1,
  'incubator-read': 1,
  'incubator-logged': 1,
  'heat-failed': 1,
  'heat-back': 1,
  'pair-wanted': 1,
  'visit-ruled': 1,
  'evenings-away': 1,
  'visits-planned': 1,
  'young-counted': 1,
  'gene-tested': 1,
  'gene-made': 1,
  'pairing-reasoned': 1,
  'photo-kept': 1,
  'put-up-for-sale': 1,
  'taken-off-sale': 1,
  reserved: 1,
  sold: 1,
  'handed-over': 1,
  'sale-ended': 1,
  'source-stated': 1,
  'protocol-set': 1,
  'vet-stated': 1,
  struck: 1,
};

const newest: ReadonlyMap<string, number> = new Map(Object.entries(newestVersions));

/** Undefined for a kind this program does not know. */
export const newestVersion = (type: string): number | undefined => newest.get(type);

/**
 * Whether a stored record is of today's shape: this program checked it before it was stored, and
 * checking 100,000 records again would delay every start.
 */
export function isOfToday(raw: unknown): raw is RackEvent {
  // A restore may have kept anything here, also what is no record at all.
  const { type, v } = (raw ?? {}) as { readonly type?: unknown; readonly v?: unknown };
  return v !== undefined && v === newestVersion(String(type));
}
