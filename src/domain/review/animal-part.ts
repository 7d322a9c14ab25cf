import type { AnimalId, ClutchId } from '../core/ids.ts';
import { massesAround, type LayingMasses } from '../clutch/masses.ts';
import type { RackEvent } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import type { Protocol } from '../protocol/values.ts';
import type { NightOf } from '../season/night-of.ts';
import type { Animal } from '../state/animal.ts';
import { inOrder } from '../state/standing.ts';
import { appetiteIn, rememberNights, wasEstablished, type Appetite } from './appetite.ts';
import { cyclesOf, type Cycle } from './cycles.ts';

/** What one animal's records come to, all years of them. */
export interface AnimalPart {
  /** Of a female. */
  readonly cycles: readonly Cycle[];
  /** Of one that laid: her weights on either side of each clutch. */
  readonly masses: ReadonlyMap<ClutchId, LayingMasses>;
  readonly appetite: Appetite;
  /** Of one that hatched here: it once ate so many meals in a row unaided as make it established. */
  readonly established: boolean;
}

/** Kept for as long as neither the animal's records nor the protocol change. */
const kept = new WeakMap<Protocol, WeakMap<Animal, AnimalPart>>();

/** The part of each animal, by its id. Reads only the records of those that changed since. */
export function animalParts(picture: Picture): ReadonlyMap<AnimalId, AnimalPart> {
  const { facts, ledger } = picture;
  const ofProtocol = kept.get(facts.protocol) ?? new WeakMap<Animal, AnimalPart>();
  kept.set(facts.protocol, ofProtocol);
  const nightOf = rememberNights(facts.nightOf);
  return new Map(
    picture.animals().map((animal) => {
      const part =
        ofProtocol.get(animal) ??
        partOf(animal, ledger.counted(animal.id), facts.protocol, nightOf);
      // A picture that was saved holds no records until they are read: nothing to keep yet.
      if (ledger.hasHistory) ofProtocol.set(animal, part);
      return [animal.id, part] as const;
    }),
  );
}

function partOf(
  { id, sex, hatched }: Animal,
  records: readonly RackEvent[],
  protocol: Protocol,
  nightOf: NightOf,
): AnimalPart {
  const cycles = sex === 'female' ? cyclesOf(id, records, protocol, nightOf) : [];
  return {
    cycles,
    masses: cycles.some(({ laid }) => laid) ? massesIn(records, nightOf) : NONE,
    appetite: appetiteIn(records, nightOf),
    established: hatched !== undefined && wasEstablished(records, protocol.establishedMeals),
  };
}

const NONE: AnimalPart['masses'] = new Map();

function massesIn(records: readonly RackEvent[], nightOf: NightOf): AnimalPart['masses'] {
  const weighings = inOrder(records.filter(({ type }) => type === 'weighed')).flatMap((event) =>
    event.type === 'weighed' ? [event] : [],
  );
  return new Map(
    records.flatMap((event) =>
      event.type === 'laid' ? [[event.clutch, massesAround(event, weighings, nightOf)]] : [],
    ),
  );
}
