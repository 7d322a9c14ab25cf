import type { Animal } from '../state/animal.ts';
import { femaleStanding } from './female-stage.ts';
import { maleStanding } from './male-stage.ts';
import type { StageFacts, Standing } from './standing.ts';

/** Where an animal stands tonight; undefined where its sex is not known, or it has left. */
export function standingOf(animal: Animal, facts: StageFacts): Standing | undefined {
  if (animal.gone) return undefined;
  if (animal.sex === 'female') return femaleStanding(animal, facts);
  return animal.sex === 'male' ? maleStanding(animal, facts) : undefined;
}
