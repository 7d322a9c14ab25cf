import fc from 'fast-check';
import { expect, test } from 'vitest';
import { eveningView } from '../../../src/domain/views/evening-view.ts';
import { hatcheryView } from '../../../src/domain/views/hatchery-view.ts';
import { tonightView } from '../../../src/domain/views/tonight-view.ts';
import { anyLog, runs } from '../../arbitrary.ts';
import { anEvent, aPicture, nightsAgo } from '../../make.ts';
import { animalId, clutchId, incubatorId, tubId } from '../../make-ids.ts';

const sorrel = animalId(1);
const flint = animalId(2);
const arrivals = [
  anEvent('arrived', { animal: sorrel, name: 'Sorrel', sex: 'female', at: nightsAgo(40) }),
  anEvent('arrived', { animal: flint, name: 'Flint', sex: 'male', at: nightsAgo(40) }),
];
const weighed = [sorrel, flint].map((animal) =>
  anEvent('weighed', { animal, massG: 1_000, at: nightsAgo(1) }),
);
const fed = [sorrel, flint].map((animal) =>
  anEvent('meal-offered', { animal, outcome: 'ate', at: nightsAgo(1) }),
);

test('a free evening counts nothing and says so', () => {
  expect(eveningView(aPicture([...arrivals, ...weighed, ...fed]))).toMatchObject({
    title: 'Tonight: nothing to do',
    body: '',
    count: 0,
  });
});

test('says in two lines what is to be done', () => {
  const pair = { male: flint, female: sorrel, tub: tubId(1) };
  const picture = aPicture([
    ...arrivals,
    ...weighed,
    ...fed.slice(0, 1),
    anEvent('introduced', { ...pair, at: nightsAgo(4) }),
  ]);
  // Flint stayed four nights of three, and a visitor is not fed.
  expect(eveningView(picture)).toMatchObject({
    night: '2026-11-24',
    title: 'Tonight: 1 to do',
    body: '1 to take out',
    count: 1,
    alarms: 0,
  });
});

test('an alarm comes first', () => {
  const picture = aPicture([
    ...arrivals,
    ...weighed,
    anEvent('health-noted', { animal: sorrel, system: 'breathing', severity: 3 }),
    ...fed.slice(1),
  ]);
  const { title, body, alarms } = eveningView(picture);
  expect(title).toMatch(/^Tonight: 1 alarm/);
  expect(body.split('\n')[0]).toBe('Look at Sorrel first (breathing)');
  expect(alarms).toBe(1);
});

test('eggs without heat come before all else, and young that do not follow are among the alarms', () => {
  const [left, right] = [incubatorId(1), incubatorId(2)];
  const [young, due] = [clutchId(1), clutchId(2)];
  const laid = (clutch: typeof young, animal: typeof sorrel, nights: number) => [
    anEvent('laid', { animal, clutch, good: 5, at: nightsAgo(nights) }),
    anEvent('eggs-set', { clutch, incubator: left, at: nightsAgo(nights) }),
  ];
  const picture = aPicture([
    ...arrivals,
    ...weighed,
    ...fed,
    anEvent('health-noted', { animal: sorrel, system: 'breathing', severity: 3 }),
    anEvent('incubator-made', { incubator: left, name: 'Left', at: nightsAgo(90) }),
    anEvent('incubator-made', { incubator: right, name: 'Right', at: nightsAgo(90) }),
    ...laid(young, sorrel, 20),
    ...laid(due, animalId(3), 60),
    anEvent('hatching-seen', { clutch: due, seen: 'pip', eggs: 1, at: nightsAgo(5) }),
    anEvent('heat-failed', { incubators: [left], at: nightsAgo(0) }),
  ]);
  const { title, body, alarms } = eveningView(picture);
  expect(body.split('\n').slice(0, 3)).toEqual([
    'Left: no heat',
    'Look at Sorrel first (breathing)',
    expect.stringMatching(/^Eggs of .+: 5 still in the shell$/),
  ]);
  expect(alarms).toBe(3);
  expect(title).toMatch(/^Tonight: 3 alarms, \d+ to do$/);
  expect(body).toMatch(/\d+ for eggs$/);
});

test('names nobody: a stranger may read the locked screen', () => {
  const people = ['Dr Ahorn', 'Herr Buyer', 'a house in Elm Street'];
  const picture = aPicture([
    anEvent('arrived', { animal: sorrel, name: 'Sorrel', origin: 'bought', from: people[1] }),
    anEvent('treated', { animal: sorrel, prescribedBy: people[0]! }),
    anEvent('health-noted', { animal: sorrel, system: 'skin', severity: 3, remark: people[2] }),
    anEvent('left', { animal: sorrel, how: 'escaped', remark: people[2] }),
  ]);
  const { title, body } = eveningView(picture);
  expect(body).toContain('Find Sorrel');
  for (const person of people) expect(title + body).not.toContain(person);
});

test('its number is what the list on the screen comes to, whatever is on record', () => {
  fc.assert(
    fc.property(anyLog, (events) => {
      const picture = aPicture(events);
      const { count, title } = eveningView(picture);
      const { stops, alarms, rooms } = tonightView(picture);
      const open = stops.flatMap(({ chores }) =>
        chores.filter(({ blocked }) => blocked === undefined),
      );
      const { incubators, open: clutches } = hatcheryView(picture);
      const eggs = [...incubators, ...clutches].flatMap(({ chores }) => chores);
      expect(count).toBe(open.length + alarms.length + rooms.length + eggs.length);
      expect(title).not.toMatch(/undefined|NaN/);
    }),
    runs(60),
  );
});
