import type { AnimalId } from '../core/ids.ts';
import type { RackEvent } from '../events/event.ts';
import { unknownAnimal, type Animal } from '../state/animal.ts';
import { applyToSeasons, type SeasonEvent } from '../state/apply-to-seasons.ts';
import type { Copy } from '../state/copy.ts';
import type { Season } from '../state/season.ts';
import { inOrder } from '../state/standing.ts';

/** What a season is made of; a kind that is missing here is a type error. */
const kinds: Readonly<Record<SeasonEvent['type'], true>> = {
  introduced: true,
  'taken-out': true,
  'pair-seen': true,
  'follicles-scanned': true,
  'sign-seen': true,
  ovulated: true,
  'nothing-yet': true,
  shed: true,
  'nest-box-set': true,
  laid: true,
  'season-closed': true,
};

const isOfSeason = (event: RackEvent): event is SeasonEvent => event.type in kinds;

/**
 * All seasons of an animal, oldest first, each whole. Its state keeps only what later seasons learn
 * from the earlier ones; a look back wants every visit.
 */
export function everySeason(id: AnimalId, records: readonly RackEvent[]): readonly Season[] {
  const animal: Copy<Animal> = unknownAnimal(id);
  const seasons: Season[] = [];
  for (const event of inOrder(records.filter(isOfSeason)).filter(isOfSeason)) {
    const [before, past] = [animal.season, animal.pastSeasons];
    applyToSeasons(animal, event);
    if (before && animal.pastSeasons !== past) seasons.push(before);
  }
  return animal.season ? [...seasons, animal.season] : seasons;
}
