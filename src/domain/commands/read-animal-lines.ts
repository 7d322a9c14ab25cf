import { Day } from '../events/fields.ts';
import type { Sex } from '../events/life.ts';
import type { NewAnimal } from './new-animals.ts';

/** A pasted line as it was understood, or why it was not. */
export type ReadLine =
  | { readonly ok: true; readonly line: string; readonly animal: NewAnimal }
  | { readonly ok: false; readonly line: string; readonly why: string };

/** How a sex is written, in lower case. Common practice, no source. */
export const SEXES: ReadonlyMap<string, Sex> = new Map([
  ['f', 'female'],
  ['female', 'female'],
  ['0.1', 'female'],
  ['♀', 'female'],
  ['m', 'male'],
  ['male', 'male'],
  ['1.0', 'male'],
  ['♂', 'male'],
  ['u', 'unknown'],
  ['?', 'unknown'],
  ['unknown', 'unknown'],
  ['0.0.1', 'unknown'],
]);

/** A tub's place, as it stands on its label. */
export const POSITION = /^[A-Za-z0-9]{0,3}[A-Za-z]\d{1,2}(?:-\d{1,2})?$/;
const MASS = /^(\d{2,4}(?:[.,]\d)?)\s*g$/i;

/**
 * Reads pasted lines, one animal each, parts set apart by commas, semicolons or tabs: the name
 * first, the rest in any order. What is not a sex, a position, a mass or a hatch day is traits.
 *
 * Errors: never throws; a line without a name comes back with the reason.
 *
 * @example readAnimalLines('Sorrel, f, B4-2, 1640 g, 2022-07-14, Pastel het Clown')
 */
export const readAnimalLines = (text: string): readonly ReadLine[] =>
  text
    .split('\n')
    .map((line) => line.trim())
    .filter((line) => line !== '')
    .map(readLine);

function readLine(line: string): ReadLine {
  const [name = '', ...parts] = line.split(/[,;\t]/).map((part) => part.trim());
  if (name === '') return { ok: false, line, why: 'The name comes first.' };
  if (name.length > 60) return { ok: false, line, why: 'A name has 60 letters at most.' };
  const traits: string[] = [];
  let animal: NewAnimal = { name, sex: 'unknown' };
  for (const part of parts.filter((each) => each !== '')) {
    const sex = SEXES.get(part.toLowerCase());
    const mass = MASS.exec(part)?.[1];
    const day = Day.safeParse(part);
    if (sex !== undefined) animal = { ...animal, sex };
    else if (mass !== undefined) animal = { ...animal, massG: Number(mass.replace(',', '.')) };
    else if (day.success) animal = { ...animal, hatchedDay: day.data };
    else if (/^\d{1,4}[-./]\d{1,2}[-./]\d{1,4}$/.test(part)) {
      return { ok: false, line, why: `${part}: write the hatch day as 2024-07-31.` };
    } else if (/^\d+$/.test(part)) {
      // Half of a mass with a comma in it: the other half alone would be a mass, too.
      return { ok: false, line, why: `${part}: write a mass as 1640 g or 62.5 g.` };
    } else if (POSITION.test(part)) animal = { ...animal, position: part.toUpperCase() };
    else traits.push(part);
  }
  return {
    ok: true,
    line,
    animal: traits.length > 0 ? { ...animal, traits: traits.join(', ') } : animal,
  };
}
