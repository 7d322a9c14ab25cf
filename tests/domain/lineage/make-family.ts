import type { AnimalId } from '../../../src/domain/core/ids.ts';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { anEvent, nightsAgo } from '../../make.ts';
import { animalId } from '../../make-ids.ts';

export interface Family {
  readonly events: readonly RackEvent[];
  readonly id: (name: string) => AnimalId;
}

/**
 * Records of a family drawn by hand. `young:sire,dam` states parents, `a|b` in place of a sire that
 * it was one of them, `-` nobody; a name alone is a founder.
 */
export function family(text: string): Family {
  const ids = new Map<string, AnimalId>();
  const id = (name: string): AnimalId => {
    const known = ids.get(name) ?? animalId(1_000 + ids.size);
    ids.set(name, known);
    return known;
  };
  const at = nightsAgo(40);
  const stated = text.split(' ').flatMap((each) => {
    const [name = '', sires, dam = '-'] = each.split(/[:,]/);
    const animal = id(name);
    if (sires === undefined) return [];
    const males = sires === '-' ? [] : sires.split('|').map(id);
    const mother = dam === '-' ? {} : { dam: id(dam) };
    return [anEvent('parents-stated', { animal, sires: males, ...mother, at: nightsAgo(30) })];
  });
  const arrived = [...ids].map(([name, animal]) =>
    anEvent('arrived', { animal, name, sex: 'unknown', hatchedDay: undefined, at }),
  );
  return { events: [...arrived, ...stated], id };
}
