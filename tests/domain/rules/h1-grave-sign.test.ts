import { expect, test } from 'vitest';
import { anEvent, nightsAgo, TONIGHT } from '../../make.ts';
import { asked } from './asked.ts';

const note = (severity: number, at: string, parts = {}) =>
  anEvent('health-noted', { system: 'breathing', severity, at, ...parts } as object);

// Breathing trouble is for a reptile vet within a day or two: common practice, no source.
test('[H1] a grave sign is an alarm that sends to a vet, and a lesser one is not', () => {
  const alarm = asked('H1', [note(3, nightsAgo(1))]);
  expect(alarm).toMatchObject({ act: 'look', alarm: true });
  expect(alarm?.because.join(' ')).toContain('reptile vet');
  expect(asked('H1', [note(2, nightsAgo(1))])).toBeUndefined();
});

test('[H1] it stays for a week, however much is written down meanwhile', () => {
  const looks = Array.from({ length: 12 }, () => anEvent('noted', { at: nightsAgo(0) }));
  expect(asked('H1', [note(3, nightsAgo(7)), ...looks])).toBeDefined();
  expect(asked('H1', [note(3, nightsAgo(8))])).toBeUndefined();
});

test('[H1] it ends when the same is seen to be better, and not by another trouble', () => {
  const grave = note(3, nightsAgo(2));
  expect(asked('H1', [grave, note(1, nightsAgo(1))])).toBeUndefined();
  expect(asked('H1', [grave, note(1, nightsAgo(1), { system: 'skin' })])).toBeDefined();
});

test('[H1] it ends when it is passed over, also in the hour that the clocks repeat', () => {
  const grave = note(3, '2026-10-25T02:30:00+02:00');
  const passed = anEvent('passed-over', { rule: 'H1', at: '2026-10-25T02:10:00+01:00' });
  expect(asked('H1', [grave, passed], { at: '2026-10-25T22:00:00+01:00' })).toBeUndefined();
});

test('[H1] a new grave sign after it was passed over is a new alarm', () => {
  const passed = anEvent('passed-over', { rule: 'H1', at: nightsAgo(2) });
  expect(asked('H1', [note(3, nightsAgo(3)), passed, note(3, TONIGHT)])).toBeDefined();
});
