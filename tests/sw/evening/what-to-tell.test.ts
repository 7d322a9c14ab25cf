import { expect, test } from 'vitest';
import { day } from '../../make.ts';
import { toldOf, whatToTell, type Wake } from '../../../src/sw/evening/what-to-tell.ts';

const evening: Wake['evening'] = {
  night: day('2026-11-24'),
  title: 'Tonight: 16 to do',
  body: '2 to take out, 14 to feed',
  count: 16,
  alarms: 0,
};
const lessToDo = { ...evening, title: 'Tonight: 14 to do', body: '14 to feed', count: 14 };
const alarm = { ...evening, title: 'Tonight: 1 alarm, 16 to do', count: 17, alarms: 1 };
const nextNight = { ...evening, night: day('2026-11-25') };

const woken = (wake: Partial<Wake>) =>
  whatToTell({ evening, told: undefined, isWatched: false, today: '2026-11-24', ...wake });

test('the first wake of an evening speaks up', () => {
  expect(woken({})).toBe('tell');
  const told = toldOf(evening);
  expect(woken({ evening: nextNight, told, today: '2026-11-25' })).toBe('tell');
});

test('the same is not said twice, not even where it was wiped away', () => {
  expect(woken({ told: toldOf(evening) })).toBe('leave');
});

test('a change the same evening makes no sound', () => {
  expect(woken({ evening: lessToDo, told: toldOf(evening) })).toBe('tell quietly');
  expect(woken({ evening: lessToDo, told: toldOf(alarm) })).toBe('tell quietly');
});

test('but a new alarm does', () => {
  expect(woken({ evening: alarm, told: toldOf(evening) })).toBe('tell');
});

test('after midnight the night is still the one before, and nobody is woken', () => {
  expect(woken({ today: '2026-11-25' })).toBe('leave');
});

test('a keeper who is at the app needs no notification', () => {
  expect(woken({ isWatched: true })).toBe('leave');
});

test('with all done, what was said is taken back at any hour', () => {
  const done = { ...evening, count: 0 };
  expect(woken({ evening: done, told: toldOf(evening) })).toBe('hush');
  expect(woken({ evening: done, told: toldOf(evening), today: '2026-11-25' })).toBe('hush');
});
