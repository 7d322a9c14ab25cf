import { expect, test } from 'vitest';
import { anEvent, nightsAgo } from '../../make.ts';
import { asked } from './asked.ts';

const escaped = [
  anEvent('arrived', { at: nightsAgo(90) }),
  anEvent('left', { how: 'escaped', at: nightsAgo(40) }),
];

test('[H2] an escaped snake is an alarm until it is found', () => {
  expect(asked('H2', escaped)).toMatchObject({ act: 'look', alarm: true, asks: 'Find Sorrel' });
  expect(asked('H2', [...escaped, anEvent('came-back')])).toBeUndefined();
});

test('[H2] one that was sold or died is not looked for', () => {
  expect(asked('H2', [anEvent('left', { how: 'sold' })])).toBeUndefined();
  expect(asked('H2', [anEvent('left', { how: 'died' })])).toBeUndefined();
});
