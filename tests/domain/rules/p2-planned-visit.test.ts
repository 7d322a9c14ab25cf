import { expect, test } from 'vitest';
import { anEvent, day } from '../../make.ts';
import { arrivals, ate, her, him, on, ovulated, scan, visit } from '../season/make-season.ts';
import { asked } from './asked.ts';

// A plan is the keeper's own record; no number of the trade is in it.
const at = on('2026-12-10');
const kept = (into: string, out: string) =>
  anEvent('visits-planned', {
    night: day('2026-12-09'),
    visits: [{ female: her, male: him, in: day(into), out: day(out) }],
    at: on('2026-12-09'),
  });
const tonight = [
  ...arrivals,
  scan('2026-11-20', 14),
  scan('2026-12-09', 20),
  kept('2026-12-10', '2026-12-13'),
];
const his = { animal: him, at };

test('[P2] on the evening of the kept plan he is to go in, for so many days', () => {
  expect(asked('P2', tonight, his)).toMatchObject({
    act: 'pair',
    asks: 'Put Cedar in with Sorrel',
    blocked: undefined,
  });
  expect(asked('P2', tonight, his)?.because[0]).toBe('By the plan you kept, for 3 days.');
  expect(asked('P2', tonight, { animal: him, at: on('2026-12-09') })).toBeUndefined();
  expect(asked('P2', tonight, { animal: her, at })).toBeUndefined();
});

test('[P2] waits, with the reason, when she has eaten or ovulated since', () => {
  expect(asked('P2', [...tonight, ate('2026-12-10')], his)?.blocked).toBe(
    'Sorrel: digesting, ate tonight',
  );
  expect(asked('P2', [...tonight, ovulated('2026-12-10')], his)?.blocked).toBe(
    'Sorrel: ovulated now',
  );
});

test('[P2] once he is in, or another plan is kept, it is not asked', () => {
  expect(asked('P2', [...tonight, ...visit('2026-12-10')], his)).toBeUndefined();
  expect(asked('P2', [...tonight, kept('2026-12-12', '2026-12-15')], his)).toBeUndefined();
});

test('[P2] while a visit is planned, no other rule asks for a male', () => {
  const without = tonight.filter(({ type }) => type !== 'visits-planned');
  expect(asked('S2', without, { animal: her, at })).toBeDefined();
  expect(asked('S2', tonight, { animal: her, at })).toBeUndefined();
});
