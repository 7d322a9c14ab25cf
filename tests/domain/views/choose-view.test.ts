import { expect, test } from 'vitest';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { oddsWords, percent } from '../../../src/domain/views/chance-words.ts';
import { chooseView } from '../../../src/domain/views/choose-view.ts';
import { aPicture, anEvent, nightsAgo } from '../../make.ts';
import { animalId } from '../../make-ids.ts';
import { grown } from '../choosing/make-collection.ts';

function viewOf(events: readonly RackEvent[], goal: string) {
  const view = chooseView({ goal, young: 6, readyOnly: false }, aPicture(events));
  if (view.kind !== 'ranking') throw new Error(view.problem);
  return view;
}

// 1 − (3/4)^6 = 0.822; 9 young for nine in ten: plain arithmetic.
test('a pair says its chance, what it rests on, and the way there', () => {
  const events = [grown(1, 'male', 'het Clown', 'Rook'), grown(2, 'female', 'het Clown', 'Marl')];
  const { goal, counts, pairs } = viewOf(events, 'visual clown');
  expect(goal).toEqual(['Clown: two copies']);
  expect(counts).toBe('1 female and 1 male looked at; 1 pair can give it.');
  const [pair] = pairs;
  expect(pair).toMatchObject({ chance: '82 %', cautions: [], reasoned: undefined });
  expect(pair?.odds).toEqual([
    'At least one in 6 hatched young: 82 %. None: 18 %.',
    'Each young: 1/4 (25 %).',
  ]);
  expect(pair?.way).toBe('9 hatched young for a chance of 9 in 10: 2 clutches, 2 seasons.');
  expect(pair?.kin.rests).toEqual(['Of one, no parent is known.', 'Unknown, not unrelated.']);
});

test('a het to be proven says how likely it is, and what proof would take', () => {
  const events = [grown(1, 'male', 'Clown', 'Rook'), grown(2, 'female', '66% het Clown', 'Sorrel')];
  const { goal, pairs } = viewOf(events, 'prove the 66 % het of Sorrel');
  expect(goal).toEqual(['Prove that Sorrel carries Clown. By the records: 67 %.']);
  expect(pairs[0]?.odds).toContain('If Sorrel carries it: 98 % in one clutch.');
  expect(pairs[0]?.way).toBe(
    '5 hatched young for a chance of 19 in 20, if Sorrel carries it: 1 clutch, 1 season.',
  );
});

test('a caution is shown with its evidence, and the reason given for the pair is kept', () => {
  const events = [
    grown(1, 'male', 'Spider', 'Rook'),
    grown(2, 'female', 'Champagne', 'Marl'),
    anEvent('pairing-reasoned', {
      male: animalId(1),
      female: animalId(2),
      cautions: ['spider-with-champagne'],
      reason: 'a test of the record',
      at: nightsAgo(2),
    }),
  ];
  const [pair] = viewOf(events, 'spider').pairs;
  const caution = pair?.cautions.find(({ id }) => id === 'spider-with-champagne');
  expect(caution?.weight).toBe('grave');
  expect(caution?.evidence.length).toBeGreaterThan(1);
  expect(pair?.reasoned).toBe('a test of the record');
});

test('close kin ask for a reason as any caution does', () => {
  const parents = { dam: animalId(2), sires: [animalId(1)], at: nightsAgo(800) };
  const events = [
    grown(1, 'male', 'Clown'),
    grown(2, 'female', 'Pied'),
    grown(3, 'male', ''),
    grown(4, 'female', ''),
    anEvent('parents-stated', { animal: animalId(3), ...parents }),
    anEvent('parents-stated', { animal: animalId(4), ...parents }),
  ];
  const { pairs } = viewOf(events, 'clown pied');
  const siblings = pairs.find(
    ({ male, female }) => male.id === animalId(3) && female.id === animalId(4),
  );
  expect(siblings?.kin).toMatchObject({
    figure: 'F of the young 1/4 (25 %)',
    closeness: 'very close',
  });
  expect(siblings?.cautions.map(({ id }) => id)).toEqual(['close-kin']);
});

test('a pair that cannot be sure enough says why', () => {
  const events = [grown(1, 'male', 'Clown'), grown(2, 'female', '66% het Clown')];
  expect(viewOf(events, 'clown').pairs[0]?.way).toMatch(/never passes 2\/3.*out of reach/);
});

test('what is not understood is said', () => {
  const view = chooseView({ goal: 'clownn', young: 6, readyOnly: false }, aPicture([]));
  expect(view).toMatchObject({ kind: 'not understood', problem: expect.stringMatching(/Clown/) });
});

test.each([
  [0, '0 %'],
  [0.001, 'under 1 %'],
  [0.822, '82 %'],
  [0.999, 'over 99 %'],
  [1, '100 %'],
])('a chance of %d reads %s', (chance, words) => {
  expect(percent(chance)).toBe(words);
});
test('odds are fractions where they are simple', () => {
  expect(oddsWords({ n: 1n, d: 16n })).toBe('1/16 (6 %)');
  expect(oddsWords({ n: 243n, d: 755n })).toBe('32 %');
});
