import type { Animal } from '../state/animal.ts';

/** What the book reads of an animal: none but these fields can change a chance. */
export type Entry = Pick<
  Animal,
  | 'id'
  | 'sex'
  | 'traits'
  | 'hatchedDay'
  | 'hatched'
  | 'dam'
  | 'sires'
  | 'youngCounted'
  | 'geneTests'
>;

const fields = [
  'id',
  'sex',
  'traits',
  'hatchedDay',
  'hatched',
  'dam',
  'sires',
  'youngCounted',
  'geneTests',
] as const satisfies readonly (keyof Entry)[];

/** Whether nothing was recorded that the book must be written anew for. */
export const isSame = (a: readonly Entry[], b: readonly Entry[]): boolean =>
  a.length === b.length &&
  a.every((entry, n) => fields.every((field) => entry[field] === b[n]?.[field]));
