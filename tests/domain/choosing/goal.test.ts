import { expect, test } from 'vitest';
import { readGoal } from '../../../src/domain/choosing/goal.ts';
import { openHets } from '../../../src/domain/choosing/open-hets.ts';
import { genesBook } from '../../../src/domain/genes-book/genes-book.ts';
import { aPicture } from '../../make.ts';
import { animalId } from '../../make-ids.ts';
import { goalIn, grown } from './make-collection.ts';

const picture = aPicture([
  grown(1, 'female', '66% het Clown', 'Sorrel'),
  grown(2, 'male', '66% het Clown, 50% het Pied', 'Sorrel Junior'),
  grown(3, 'male', 'Pastel', 'Twin'),
  grown(4, 'male', 'het Pied', 'Twin'),
]);

const problemOf = (text: string): string => {
  const book = genesBook(picture);
  const read = readGoal(text, {
    catalogue: book.catalogue,
    animals: picture.living(),
    mayCarry: (animal) => openHets(animal, picture, book),
  });
  return read.ok ? 'none' : read.problem;
};

test.each([
  [
    'visual clown pied',
    undefined,
    [
      ['clown', 2],
      ['pied', 2],
    ],
  ],
  [
    'Clown het Pied',
    undefined,
    [
      ['clown', 2],
      ['pied', 1],
    ],
  ],
  [
    'a female Pastel Clown',
    'female',
    [
      ['pastel', 1],
      ['clown', 2],
    ],
  ],
  ['super pastel', undefined, [['pastel', 2]]],
])('“%s” is read for what it asks', (text, sex, wants) => {
  const goal = goalIn(picture, text);
  if (goal.kind !== 'young') throw new Error('Read as a proof.');
  expect(goal.target.sex).toBe(sex);
  expect(goal.target.wants.map((want) => [want.locus, 'copies' in want && want.copies])).toEqual(
    wants,
  );
});

test.each([
  ['prove the 66 % het of Sorrel', 1, 'clown'],
  ['prove Sorrel', 1, 'clown'],
  ['Prove the clown of sorrel junior', 2, 'clown'],
  ['prove 50% het pied of Sorrel Junior', 2, 'pied'],
])('“%s” names the snake and the gene', (text, animal, locus) => {
  const goal = goalIn(picture, text);
  expect(goal.kind === 'prove' && [goal.animal, goal.locus.id]).toEqual([animalId(animal), locus]);
});

test.each([
  ['', /Write what you want/],
  ['visual clownn', /“clownn” is not known.*Clown/],
  ['female', /Name a trait/],
  ['prove the het of Nobody', /by the name on record/],
  ['prove the het of Twin', /More than one snake/],
  ['prove Sorrel Junior', /more than one: .*Name the one/],
  ['prove the pastel of Sorrel', /shows with one copy/],
])('“%s” is answered with what is missing', (text, problem) => {
  expect(problemOf(text)).toMatch(problem);
});
