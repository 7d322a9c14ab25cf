import { expect, test } from 'vitest';
import { groundsOf } from '../../../src/domain/genes/grounds.ts';
import { pair } from './pairs.ts';

// Grades: Brown 2022 for Albino; Mallery & Carrillo 2016 for Coral Glow; no publication for the rest.

const grounds = (dam: string, sire: string) =>
  groundsOf(pair(dam, sire)).map(({ statement, evidence }) => [
    statement.split('.')[0],
    evidence.grade,
  ]);

test('odds rest on how genes are inherited, and how well that is known', () => {
  expect(grounds('het Albino', 'het Candy')).toEqual([
    ['Albino is recessive', 'published'],
    ['Candy is recessive', 'trade consensus'],
    ['Albino, Candy are of one locus (TYR): two at most in one snake', 'trade consensus'],
  ]);
});

test('on the rate of crossing over, which is an assumption', () => {
  expect(grounds('Normal', 'male maker Banana')).toEqual([
    ['Banana is incomplete dominant', 'published'],
    ['Banana lies on the X and the Y', 'published'],
    ['It crosses between a male’s X and Y in 1 of 10 young', 'disputed'],
  ]);
});

test('and on what does not live', () => {
  expect(grounds('Spider', 'Spider')).toEqual([
    ['Spider is dominant', 'trade consensus'],
    ['Two copies of Spider were never seen to live', 'trade consensus'],
  ]);
  expect(grounds('Spider', 'Normal')).toEqual([['Spider is dominant', 'trade consensus']]);
});

test('normals rest on nothing', () => {
  expect(grounds('Normal', 'Normal')).toEqual([]);
});
