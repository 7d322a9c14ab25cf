import type { Day } from '../core/calendar.ts';
import type { AnimalId, Minter } from '../core/ids.ts';
import { ok, refuse, type Result } from '../core/result.ts';
import type { Draft } from '../events/event.ts';
import type { Sex } from '../events/life.ts';
import { inNameOrder } from '../picture/walk.ts';
import type { Picture } from '../picture/picture.ts';

export interface NewAnimal {
  readonly name: string;
  readonly sex: Sex;
  /** `B4-2`; left out, it stands in no tub yet. */
  readonly position?: string | undefined;
  readonly massG?: number | undefined;
  readonly hatchedDay?: Day | undefined;
  readonly traits?: string | undefined;
}

/**
 * The records that bring animals in: arrival, tub and first weight.
 *
 * Errors: refuses the whole list, naming the animal, when a position does not exist or is taken.
 */
export function newAnimalDrafts(
  wanted: readonly NewAnimal[],
  picture: Picture,
  mint: Minter,
): Result<{ readonly animals: readonly AnimalId[]; readonly drafts: readonly Draft[] }> {
  const tubs = new Map(picture.walk().map((tub) => [picture.position(tub.id) ?? '', tub.id]));
  const animals: AnimalId[] = [];
  const drafts: Draft[] = [];
  const taken = new Set<string>();
  for (const { name, sex, position, massG, hatchedDay, traits } of wanted) {
    const animal = mint.animal();
    animals.push(animal);
    drafts.push({
      type: 'arrived',
      animal,
      name,
      sex,
      ...(hatchedDay === undefined ? {} : { hatchedDay }),
      ...(traits === undefined ? {} : { traits }),
    });
    if (position !== undefined) {
      const tub = tubs.get(position);
      if (!tub) {
        return refuse(
          'no-such-position',
          `${name}: there is no tub at ${position}. Yours are ${someOf(tubs)}.`,
        );
      }
      if (taken.has(position) || picture.ownersOf(tub).length > 0) {
        const owner = picture.ownersOf(tub)[0]?.name ?? 'another of this list';
        return refuse('position-taken', `${name}: ${position} is ${owner}’s tub.`);
      }
      taken.add(position);
      drafts.push({ type: 'moved', animal, tub });
    }
    if (massG !== undefined) drafts.push({ type: 'weighed', animal, massG });
  }
  return ok({ animals, drafts });
}

function someOf(tubs: ReadonlyMap<string, unknown>): string {
  const positions = [...tubs.keys()].toSorted(inNameOrder);
  const [first, last] = [positions[0], positions.at(-1)];
  return first === undefined ? 'none yet: make a rack first' : `${first} to ${last ?? first}`;
}
