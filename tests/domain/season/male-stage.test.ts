import { expect, test } from 'vitest';
import { anEvent, aPicture } from '../../make.ts';
import { arrivals, him, on, visit } from './make-season.ts';

const stageOn = (day: string, events: Parameters<typeof aPicture>[0]) => {
  const picture = aPicture([...arrivals, ...events], on(day));
  const animal = picture.animal(him);
  return animal && picture.standing(animal);
};

// Common practice, no source: 3–5 days of rest, amber at 8 % below the mass before the season.
test('a male is ready, goes in, rests and goes round again', () => {
  const stay = visit('2026-12-01', '2026-12-03');
  expect(stageOn('2026-11-20', [])?.stage).toBe('ready');
  expect(stageOn('2026-12-02', visit('2026-12-01'))?.stage).toBe('in rotation');
  expect(stageOn('2026-12-05', stay)?.stage).toBe('resting');
  expect(stageOn('2026-12-07', stay)?.stage).toBe('in rotation');
  expect(stageOn('2027-02-20', stay)?.stage).toBe('ready');
});

test('what he lost is held against his mass before the season, not against his heaviest', () => {
  const thinner = (massG: number) => [
    ...visit('2026-12-01', '2026-12-03'),
    anEvent('weighed', { animal: him, massG, at: on('2026-12-20') }),
  ];
  expect(stageOn('2026-12-21', thinner(740))?.stage).toBe('in rotation');
  expect(stageOn('2026-12-21', thinner(736))).toMatchObject({
    stage: 'losing mass',
    because: ['736\u00A0g, 8 % less than the 800\u00A0g before his season.'],
  });
});

test('three refusals in a row are off food, and a meal ends it', () => {
  const refused = (day: string) =>
    anEvent('meal-offered', { animal: him, outcome: 'refused', at: on(day) });
  const three = [refused('2026-11-01'), refused('2026-11-08'), refused('2026-11-15')];
  expect(stageOn('2026-11-10', three.slice(0, 2))?.stage).toBe('ready');
  expect(stageOn('2026-11-16', three)).toMatchObject({ stage: 'off food', since: '2026-11-01' });
  const ate = anEvent('meal-offered', { animal: him, outcome: 'ate', at: on('2026-11-20') });
  expect(stageOn('2026-11-21', [...three, ate])?.stage).toBe('ready');
});
