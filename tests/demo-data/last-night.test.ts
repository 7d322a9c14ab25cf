import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { demoScenario } from '../../demo-data/scenario.ts';
import { simulate } from '../../demo-data/simulate.ts';
import { daysBetween, monthOf, type Day } from '../../src/domain/core/calendar.ts';
import { aDay, anOffset } from './arbitrary.ts';
import { nightOf, replay, rhythm, type Told } from './replay.ts';

const isLeft = ({ offers }: Told): boolean => offers.at(-1)?.outcome === 'left';

const refusalsInRow = ({ offers }: Told): number =>
  offers.length - 1 - offers.findLastIndex(({ outcome }) => outcome !== 'refused');

/** What is to be done on the last night, worked out from the records alone. */
function tonight(lastNight: Day, offsetMin: number) {
  const events = simulate(demoScenario(lastNight, offsetMin));
  const { animals } = replay(events);
  const living = [...animals.values()].filter(({ gone }) => !gone);
  const since = (day: Day | undefined): number => (day ? daysBetween(day, lastNight) : Infinity);
  const hungry = (animal: Told): boolean =>
    since(animal.offers.at(-1)?.night) >= rhythm(animal, lastNight) && !animal.gravid;
  const held = (animal: Told): boolean => since(animal.broughtUpOn) < 10;
  const free = (animal: Told): boolean =>
    !animal.opaqueOn && !animal.visit && !held(animal) && !isLeft(animal);
  const young = (animal: Told): boolean => since(animal.arrived.hatchedDay) < 180;
  const males = living.filter(({ sex, visit }) => sex === 'male' && visit);
  return {
    newest: events.map(nightOf).toSorted().at(-1)!,
    alive: living.length,
    due: living.filter((animal) => hungry(animal) && free(animal)),
    left: living.filter(isLeft),
    inBlue: living.filter((animal) => animal.opaqueOn && hungry(animal)),
    broughtUp: living.map((animal) => since(animal.broughtUpOn)).filter((days) => days < 14),
    visits: males.map(({ visit }) => since(visit?.since)),
    shy: living.filter((animal) => young(animal) && refusalsInRow(animal) >= 4),
    unweighed: living.filter(({ weights }) => since(weights.at(-1)?.night) > 31),
  };
}

const within = (count: number, low: number, high: number): boolean => count >= low && count <= high;

/** The promises that do not hold on a last night; none, it is hoped. */
function broken(lastNight: Day, offsetMin: number): string[] {
  const end = tonight(lastNight, offsetMin);
  const cool = monthOf(lastNight) >= 10 || monthOf(lastNight) <= 3;
  const visits = end.visits.toSorted((a, b) => a - b).join();
  const promises = {
    'the last records are of the night before': daysBetween(end.newest, lastNight) === 1,
    '43 to 48 alive': within(end.alive, 43, 48),
    '12 to 18 due': within(end.due.length, 12, 18),
    'due on four racks or more': new Set(end.due.map(({ rack }) => rack)).size >= 4,
    'two meals left overnight': end.left.length === 2,
    'two or three in blue that would be due': within(end.inBlue.length, 2, 3),
    'one brought up a meal five days ago': end.broughtUp.join() === '5',
    'two hatchlings that keep refusing': end.shy.length === 2,
    'three weights or more are due': end.unweighed.length >= 3,
    'one male is forgotten, one is new, in season': visits === (cool ? '1,5' : ''),
  };
  return Object.entries(promises).flatMap(([promise, kept]) => (kept ? [] : [promise]));
}

describe('the last night', () => {
  it.each(['2026-11-24', '2026-02-14', '2026-04-03', '2026-07-15', '2026-09-05', '2028-02-29'])(
    'holds real work on %s',
    (day) => {
      expect(broken(day as Day, 60)).toEqual([]);
    },
  );

  it('holds real work on any date, in any zone', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(aDay, anOffset, (day, offsetMin) => {
        expect(broken(day, offsetMin)).toEqual([]);
      }),
      { numRuns: 8 },
    );
  });
});
