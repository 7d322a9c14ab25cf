import { describe, expect, test } from 'vitest';
import { depthWords, shareWords } from '../../../src/domain/views/kin-words.ts';
import { lineageView, type LineageView } from '../../../src/domain/views/lineage-view.ts';
import { aPicture, anEvent, nightsAgo } from '../../make.ts';
import { family } from '../lineage/make-family.ts';

function viewOf(text: string, name = 'x'): LineageView {
  const { events, id } = family(text);
  const view = lineageView(id(name), aPicture(events));
  if (!view) throw new Error('No such animal.');
  return view;
}
const told = ({ rows }: LineageView) => rows.map(({ relation, who }) => [relation, who?.name]);
const names = (kin: readonly { readonly name: string }[]) => kin.map(({ name }) => name).toSorted();

test('ancestors are told line by line, her dam’s first, to the fourth generation', () => {
  const view = viewOf('e:f,g d:-,e c:-,d b:-,c x:S,b');
  expect(told(view)).toEqual([
    ['dam', 'b'],
    ['dam’s dam', 'c'],
    ['dam’s dam’s dam', 'd'],
    ['dam’s dam’s dam’s dam', 'e'],
    ['dam’s dam’s dam’s sire', undefined],
    ['dam’s dam’s sire', undefined],
    ['dam’s sire', undefined],
    ['sire', 'S'],
  ]);
  expect(view.rows.find(({ who }) => who?.name === 'e')?.isFounder).toBe(false);
});

test('possible fathers say how many they are, and what hangs on them says so too', () => {
  const { rows } = viewOf('M:P,Q x:M|N,D');
  expect(rows.map(({ who, sure, doubt }) => [who?.name, sure, doubt])).toEqual([
    ['D', 1, undefined],
    ['M', 1 / 2, '1 of 2 possible fathers'],
    ['Q', 1 / 2, 'only if the one above is the father'],
    ['P', 1 / 2, 'only if the one above is the father'],
    ['N', 1 / 2, '1 of 2 possible fathers'],
  ]);
});

test('an ancestor on both sides is told once in full, and named as such', () => {
  const view = viewOf('A:P,Q m:A,B f:A,C x:m,f');
  expect(names(view.common)).toEqual(['A']);
  expect(view.rows.filter(({ who }) => who?.name === 'A').map(({ again }) => again)).toEqual([
    false,
    true,
  ]);
  expect(view.rows.filter(({ who }) => who?.name === 'P')).toHaveLength(1);
  expect(view.kin).toMatchObject({ figure: 'F 1/8 (12.5 %)', closeness: 'close' });
});

test('siblings by what they share, young by the other parent', () => {
  const { siblings } = viewOf('full:S,D half:T,D open:S|T,D his:S,E perhaps:S|T,E x:S,D');
  expect(siblings.map(({ shares, kin }) => [shares, names(kin)])).toEqual([
    ['both parents', ['full']],
    ['the dam, and perhaps the sire', ['open']],
    ['the dam', ['half']],
    ['the sire', ['his']],
    ['perhaps the sire', ['perhaps']],
  ]);
  const { broods } = viewOf('a:x,D b:x,D c:x|T,D');
  expect(
    broods.map(({ others, isPerhaps, young }) => [names(others), isPerhaps, names(young)]),
  ).toEqual([
    [['D'], false, ['a', 'b']],
    [['D'], true, ['c']],
  ]);
});

describe('what is not known', () => {
  test('is unknown, not unrelated', () => {
    const { kin } = viewOf('x:A,-');
    expect(kin.figure).toBe('F unknown');
    expect(kin.rests).toEqual(['Parents known for 0.5 generations.', 'Unknown, not unrelated.']);
  });
  test('nothing found on known ground is said to be so far only', () => {
    const { kin } = viewOf('x:A,B');
    expect(kin.figure).toBe('F 0 as far as is known');
    expect(kin.rests).toEqual(['Parents known for 1 generation.']);
  });
  test('who the father is can be open, and the figure with it', () => {
    const { kin } = viewOf('m:A|C,B f:A,D x:m,f');
    expect(kin.figure).toBe('F 0 to 1/8 (12.5 %)');
    expect(kin.rests).toContain('The father of m is A or C.');
  });
});

test('a ring names its links and the record that states it', () => {
  const { events, id } = family('a:b,M b:a,N');
  const view = lineageView(id('a'), aPicture(events));
  const stated = events.filter(({ type }) => type === 'parents-stated').map((event) => event.id);
  expect(view?.slips).toHaveLength(1);
  expect(view?.slips[0]?.records.map(({ record }) => record).toSorted()).toEqual(stated.toSorted());
  expect(view?.slips[0]?.says).toMatch(/^a would be its own ancestor: a is from b, b is from a\./);
});

test('a corrected record mends it', () => {
  const { events, id } = family('a:b,M b:a,N');
  const wrong = events.find((event) => event.type === 'parents-stated' && event.animal === id('b'));
  if (!wrong) throw new Error('Nothing to strike.');
  const struck = anEvent('struck', {
    target: wrong.id,
    reason: 'mixed up',
    at: nightsAgo(1),
  });
  const view = lineageView(id('a'), aPicture([...events, struck]));
  expect(view?.slips).toEqual([]);
});

test.each([
  [0, '0'],
  [1 / 4, '1/4 (25 %)'],
  [5 / 32, '5/32 (15.6 %)'],
  [1 / 64, '1/64 (1.56 %)'],
])('a share of %d reads %s', (share, words) => {
  expect(shareWords(share)).toBe(words);
});
test.each([
  [0, 'No parent is known.'],
  [1, 'Parents known for 1 generation.'],
  [2.5, 'Parents known for 2.5 generations.'],
])('%d generations read as words', (generations, words) => {
  expect(depthWords(generations)).toBe(words);
});
