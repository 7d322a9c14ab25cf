import { expect, test } from 'vitest';
import { anEvent, nightsAgo } from '../../make.ts';
import { asked } from './asked.ts';

const { male } = anEvent('introduced');
const visit = (nights: number) => [
  anEvent('arrived', { at: nightsAgo(90) }),
  anEvent('arrived', { animal: male, name: 'Cedar', sex: 'male', at: nightsAgo(90) }),
  anEvent('introduced', { at: nightsAgo(nights) }),
];
const his = { animal: male };

// A stay of 1–3 days; over five is too long for him. Common practice, no source.
test('[P1] a male goes home after three days, and is forgotten after five', () => {
  expect(asked('P1', visit(2), his)).toBeUndefined();
  expect(asked('P1', visit(3), his)).toMatchObject({ act: 'take-out', state: 'due' });
  expect(asked('P1', visit(4), his)?.state).toBe('due');
  expect(asked('P1', visit(5), his)?.state).toBe('overdue');
  expect(asked('P1', visit(3), his)?.asks).toBe('Take Cedar out of Sorrel’s tub');
});

test('[P1] taken out, he is not asked for, nor is she ever', () => {
  expect(asked('P1', [...visit(4), anEvent('taken-out')], his)).toBeUndefined();
  expect(asked('P1', visit(4))).toBeUndefined();
});

test('[P1] taken out of another tub than he is in changes nothing', () => {
  const elsewhere = anEvent('taken-out', { female: anEvent('introduced').male });
  expect(asked('P1', [...visit(4), elsewhere], his)).toBeDefined();
});
