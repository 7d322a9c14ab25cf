import { expect, test } from 'vitest';
import { anEvent, nightsAgo, TONIGHT } from '../../make.ts';
import { asked } from './asked.ts';

const left = anEvent('meal-offered', { outcome: 'left', at: nightsAgo(0) });
const settled = anEvent('meal-settled', { offer: left.id, at: '2026-11-25T07:00:00+01:00' });

test('[F2] a meal left overnight asks whether it was eaten', () => {
  const task = asked('F2', [left], { at: '2026-11-25T07:00:00+01:00' });
  expect(task).toMatchObject({ act: 'settle', offer: left.id, state: 'due' });
});

// Taken out and binned within 12 hours: common practice, no source.
test('[F2] it presses after twelve hours, and on the next night at the latest', () => {
  expect(asked('F2', [left], { at: '2026-11-25T10:00:00+01:00' })?.state).toBe('due');
  expect(asked('F2', [left], { at: '2026-11-25T10:01:00+01:00' })?.state).toBe('overdue');
  const late = { ...left, at: '2026-11-25T11:00:00+01:00' as typeof left.at };
  expect(asked('F2', [late], { at: '2026-11-25T13:00:00+01:00' })?.state).toBe('overdue');
});

test('[F2] what became of it clears it, though the morning was written down before the night', () => {
  expect(asked('F2', [left, settled])).toBeUndefined();
  const early = anEvent('meal-settled', { offer: left.id, at: nightsAgo(1) });
  expect(asked('F2', [early, left])).toBeUndefined();
});

test('[F2] a meal that was eaten or refused at once asks nothing', () => {
  expect(asked('F2', [anEvent('meal-offered', { at: TONIGHT })])).toBeUndefined();
});
