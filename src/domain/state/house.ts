import type { Moment } from '../core/calendar.ts';
import type { HouseId } from '../core/ids.ts';
import type { EventOf, RackEvent } from '../events/event.ts';
import type { Copy } from './copy.ts';
import { applyToRotation, isRotation, noRotation, type Rotation } from './rotation.ts';

/** A number that stands in for a default. */
export interface OwnNumber {
  readonly value: number;
  readonly since: Moment;
  /** The school it was set with; without one it is a single change of the keeper's. */
  readonly school?: string | undefined;
}

export interface Vet {
  readonly name: string;
  /** As the keeper wrote it. */
  readonly phone: string;
}

/** What holds for the whole collection. */
export interface House {
  readonly kind: 'house';
  readonly id: HouseId;
  /** By the name of the value, also names that this version does not know. */
  readonly own: Readonly<Record<string, OwnNumber>>;
  /** The school that was chosen last. */
  readonly school?: string | undefined;
  readonly vet?: Vet | undefined;
  /** The keeper's own genes, each as it was written last. */
  readonly genes?: readonly EventOf<'gene-made'>[] | undefined;
  /** What the keeper said of sizes of prey, each as it was said last. */
  readonly preySizes?: readonly EventOf<'prey-size-stated'>[] | undefined;
  readonly rotation?: Rotation | undefined;
}

/** The household after the events: of two that set the same number, the later one counts. */
export function applyToHouse(
  before: House | undefined,
  events: readonly RackEvent[],
  id: HouseId,
): House {
  const house: Copy<House> = { kind: 'house', id, own: {}, ...before };
  for (const event of events) {
    if (event.type === 'vet-stated') house.vet = { name: event.name, phone: event.phone };
    if (event.type === 'gene-made') {
      const isOther = ({ locus, allele }: EventOf<'gene-made'>) =>
        locus !== event.locus || allele !== event.allele;
      house.genes = [...(house.genes ?? []).filter(isOther), event];
    }
    if (isRotation(event)) house.rotation = applyToRotation(house.rotation ?? noRotation, event);
    if (event.type === 'prey-size-stated') {
      const isOther = ({ kind, size }: EventOf<'prey-size-stated'>) =>
        kind !== event.kind || size !== event.size;
      house.preySizes = [...(house.preySizes ?? []).filter(isOther), event];
    }
    if (event.type !== 'protocol-set') continue;
    const { values, school, at } = event;
    const own = new Map(Object.entries(house.own));
    for (const [key, value] of Object.entries(values)) {
      if (value === null) own.delete(key);
      else own.set(key, { value, since: at, school });
    }
    house.own = Object.fromEntries(own);
    house.school = school ?? house.school;
  }
  return house;
}

/** The numbers alone. */
export const ownNumbers = (house: House | undefined): Readonly<Record<string, number>> =>
  Object.fromEntries(Object.entries(house?.own ?? {}).map(([key, { value }]) => [key, value]));
