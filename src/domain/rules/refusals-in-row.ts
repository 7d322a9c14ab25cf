import type { Animal, Offer } from '../state/animal.ts';

/** A meal it took by itself, whole or in part. */
const isOwnMeal = ({ outcome, how }: Offer): boolean =>
  how !== 'assisted' && (outcome === 'ate' || outcome === 'partly');

/** Refused offers since its last unaided meal; a meal left overnight counts as neither. */
export const refusedInRow = ({ offers }: Animal): readonly Offer[] =>
  offers
    .slice(offers.findLastIndex(isOwnMeal) + 1)
    .filter(({ outcome, how }) => how !== 'assisted' && outcome === 'refused');

export const refusalsInRow = (animal: Animal): number => refusedInRow(animal).length;
