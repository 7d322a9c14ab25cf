import type { AnimalId, TubId } from '../core/ids.ts';
import type { Animal } from '../state/animal.ts';

/** Where an animal is now: a male on a visit is not at home. */
export const whereIs = (animal: Animal): TubId | undefined => animal.visit?.tub ?? animal.tub;

/** Who belongs and who is where; all lists are in order of id. */
export interface Whereabouts {
  /** Notes anew where an animal is. */
  place(id: AnimalId): void;
  ownersOf(tub: TubId): readonly AnimalId[];
  inTub(tub: TubId): readonly AnimalId[];
  /** Males on a visit to a female. */
  guestsOf(female: AnimalId): readonly AnimalId[];
  /** The female whom a male is with. */
  hostOf(male: AnimalId): AnimalId | undefined;
}

interface Place {
  readonly home: TubId | undefined;
  readonly now: TubId | undefined;
  readonly host: AnimalId | undefined;
}

export function createWhereabouts(animalOf: (id: AnimalId) => Animal | undefined): Whereabouts {
  const owners = new Map<TubId, Set<AnimalId>>();
  const present = new Map<TubId, Set<AnimalId>>();
  const guests = new Map<AnimalId, Set<AnimalId>>();
  const placed = new Map<AnimalId, Place>();

  return {
    place(id) {
      const animal = animalOf(id);
      const before = placed.get(id);
      const place: Place = {
        home: animal?.tub,
        now: animal && whereIs(animal),
        host: animal?.visit?.with,
      };
      put(owners, before?.home, place.home, id);
      put(present, before?.now, place.now, id);
      put(guests, before?.host, place.host, id);
      placed.set(id, place);
    },
    ownersOf: (tub) => listed(owners, tub),
    inTub: (tub) => listed(present, tub),
    guestsOf: (female) => listed(guests, female),
    hostOf: (male) => placed.get(male)?.host,
  };
}

function put<Key>(
  index: Map<Key, Set<AnimalId>>,
  from: Key | undefined,
  to: Key | undefined,
  id: AnimalId,
): void {
  if (from === to) return;
  if (from !== undefined) index.get(from)?.delete(id);
  if (to !== undefined) index.set(to, (index.get(to) ?? new Set()).add(id));
}

const listed = <Key>(index: ReadonlyMap<Key, ReadonlySet<AnimalId>>, key: Key) =>
  [...(index.get(key) ?? [])].toSorted();
