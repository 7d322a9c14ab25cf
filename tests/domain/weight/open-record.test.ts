import { describe, expect, test } from 'vitest';
import { daysBetween } from '../../../src/domain/core/calendar.ts';
import { weightAlarm, type AlarmFacts } from '../../../src/domain/weight/alarm.ts';
import { dropBetween } from '../../../src/domain/weight/drop.ts';
import { fastedG, fastLoss } from '../../../src/domain/weight/fast.ts';
import { foodBalance } from '../../../src/domain/weight/food-balance.ts';
import { layingBalanceG, sinceLaying } from '../../../src/domain/weight/laying.ts';
import { preyShare } from '../../../src/domain/weight/prey-share.ts';
import { regainedOn } from '../../../src/domain/weight/regained.ts';
import { defaultProtocol } from '../../../src/domain/protocol/values.ts';
import { day } from '../../make.ts';
import { fromOpenRecord, openRecord } from './open-record.ts';
import type { WeightStory } from './weight-story.ts';

const names = openRecord.map(({ snake }) => snake);
const kindOf = (massG: number): AlarmFacts['kind'] =>
  massG < defaultProtocol.hatchlingBelowG ? 'hatchling' : 'other';

/** What was said on the evening of its n-th weight. */
function alarmAt({ readings, ...story }: WeightStory, n: number) {
  const soFar = readings.slice(0, n + 1);
  return weightAlarm({ ...story, readings: soFar, kind: kindOf(soFar.at(-1)?.massG ?? NaN) });
}

const steps = names.flatMap((name) => {
  const story = fromOpenRecord(name);
  return story.readings.slice(1).flatMap((after, i) => {
    const before = story.readings[i];
    return before
      ? [{ name, n: i + 1, drop: dropBetween('the weight before', before, after) }]
      : [];
  });
});

test('the table holds what the source does: 89 weights, 121 meals, 12,618 g of prey', () => {
  // Counted in the source by another script than the one that transcribed it.
  expect(openRecord.flatMap(({ masses }) => masses)).toHaveLength(89);
  const meals = openRecord.flatMap((snake) => snake.meals);
  expect(meals).toHaveLength(121);
  expect(meals.reduce((sum, [, massG]) => sum + massG, 0)).toBe(12_618);
});

test('of 77 steps, four fall by a tenth or more', () => {
  expect(steps).toHaveLength(77);
  const large = steps.filter(({ drop }) => drop.share >= 0.1);
  expect(
    large.map(({ name, drop }) => `${name} ${drop.after.night} ${(100 * drop.share).toFixed(1)}`),
  ).toEqual([
    '02 2010-12-03 11.6',
    '06 2010-06-06 24.2',
    '10 2010-10-01 13.8',
    '12 2010-11-13 40.2',
  ]);
});

describe('the weight alarm on the evening of each weight', () => {
  test('speaks for the hatchling that was never seen to eat, and for no other of twelve snakes', () => {
    const speaks = steps.flatMap(({ name, n, drop }) => {
      const alarm = alarmAt(fromOpenRecord(name), n);
      return alarm.speaks ? [`${name} ${drop.after.night} ${alarm.level}`] : [];
    });
    expect(speaks).toEqual(['10 2010-10-01 act']);
  });

  test.each([
    ['06', '2010-06-06', ['laying']],
    ['02', '2010-12-03', ['gut contents', 'shed', 'expected fast']],
    ['12', '2010-11-13', ['entry error?']],
  ])('names what the drop of snake %s on %s is', (name, night, causes) => {
    const story = fromOpenRecord(name);
    const n = story.readings.findIndex((reading) => reading.night === night);
    const alarm = alarmAt(story, n);
    expect(alarm.speaks).toBe(false);
    expect(alarm.speaks ? [] : alarm.exclusions.map(({ what }) => what)).toEqual(causes);
  });

  test('says of the eggs what they weighed', () => {
    const alarm = alarmAt(fromOpenRecord('06'), 3);
    expect(alarm.speaks ? '' : alarm.exclusions[0]?.sentence).toMatch(/472\sg.*398\sg/);
  });

  test('of the hatchling, says that a meal, a shed, a slip and a laying were looked for', () => {
    const alarm = alarmAt(fromOpenRecord('10'), 1);
    expect(alarm.speaks ? alarm.because : []).toHaveLength(6);
  });

  test.each([
    // Weights 5 to 7 days after a meal; the next ones are of empty guts.
    ['02', '2010-08-01', 7.43],
    ['04', '2010-08-01', 8.28],
    ['06', '2010-08-01', 6.95],
  ])('puts the drop of snake %s on %s down to its gut', (name, night, percent) => {
    const step = steps.find(({ name: of, drop }) => of === name && drop.after.night === night);
    expect(100 * (step?.drop.share ?? NaN)).toBeCloseTo(percent, 2);
    const alarm = alarmAt(fromOpenRecord(name), step?.n ?? NaN);
    expect(alarm.speaks ? [] : alarm.exclusions.map(({ what }) => what)).toContain('gut contents');
  });
});

describe('snake 06, which laid', () => {
  const { readings, layings } = fromOpenRecord('06');
  const on = (night: string) => readings.find((reading) => reading.night === night)?.massG ?? NaN;

  test('and her eggs weigh 74 g more than she did before', () => {
    expect(layingBalanceG(on('2010-05-29'), on('2010-06-06'), 472)).toBe(74);
  });

  test('has her 1,735 g again on 26 October, 142 days after laying', () => {
    const night = regainedOn(sinceLaying(readings, layings), 1735);
    expect(night).toBe('2010-10-26');
    expect(night && daysBetween(readings[3]?.night ?? night, night)).toBe(142);
  });

  test('had lost 5.19 % in 49 days without food: within what a fast costs', () => {
    const { low, high } = fastLoss(49, defaultProtocol);
    const share = 1 - on('2010-05-29') / on('2010-04-10');
    expect(100 * share).toBeCloseTo(5.19, 2);
    expect(share).toBeGreaterThan(low);
    expect(share).toBeLessThan(high);
  });
});

describe('what a fast costs', () => {
  test.each([
    // 18.3 % in 168 days [McCue M.D. 2007, Zoology 110:318–327], compounding; worked out by hand.
    [30, 1446.8],
    [60, 1395.5],
    [90, 1346.1],
    [120, 1298.4],
    [168, 1225.5],
  ])('of 1,500 g, after %i days %f g are left', (days, massG) => {
    expect(fastedG(1_500, days)).toBeCloseTo(massG, 0);
    const { low, high } = fastLoss(days, defaultProtocol);
    expect(massG).toBeLessThan(1_500 * (1 - low));
    expect(massG).toBeGreaterThan(1_500 * (1 - high));
  });

  test.each([
    // The same study's slowest and fastest snakes: 9.3 % and 24.4 % in 168 days.
    [168, 0.093, 0.244],
  ])('in %i days lies about the least and the most that was measured', (days, least, most) => {
    const { low, high } = fastLoss(days, defaultProtocol);
    expect(low).toBeCloseTo(least, 1);
    expect(high).toBeCloseTo(most, 1);
  });

  test('brooding females lose less than the most: under 6 % in about 60 days', () => {
    // Aubret F. et al. 2005, Anim Behav: abstract.
    expect(fastLoss(60, defaultProtocol).high).toBeGreaterThan(0.06);
  });
});

describe('gain by food', () => {
  test.each([
    // Worked out from the source's own figures by another script.
    ['01', 0.302],
    ['02', 0.367],
    ['03', 0.327],
    ['04', 0.189],
    ['05', 0.233],
    ['06', 0.057],
    ['07', 0.263],
    ['08', 0.203],
  ])('of snake %s is %f', (name, ratio) => {
    const { weighings, offers } = fromOpenRecord(name).sources;
    const [first] = weighings;
    const last = weighings.at(-1);
    const balance = first && last && foodBalance(first, last, offers);
    expect(balance?.ratio).toBeCloseTo(ratio, 3);
    expect(balance?.mealsMissing).toBe(false);
  });

  test('of snake 11 is 0.698: meals are missing from the record', () => {
    const { weighings, offers } = fromOpenRecord('11').sources;
    const [first] = weighings;
    const last = weighings.at(-1);
    const balance = first && last && foodBalance(first, last, offers);
    expect(balance?.ratio).toBeCloseTo(0.698, 3);
    expect(balance?.mealsMissing).toBe(true);
  });
});

test('meals are 14.2 % of the last weight in the median, and over 20 % in 22 of 121', () => {
  // Worked out from the source’s own figures by another script.
  const shares = openRecord
    .flatMap(({ snake, meals }) => {
      const { readings } = fromOpenRecord(snake);
      return meals.map(([date, massG]) => preyShare(massG, day(date), readings)?.share ?? NaN);
    })
    .toSorted((a, b) => a - b);
  expect(shares).toHaveLength(121);
  expect(shares[60]).toBeCloseTo(0.142, 3);
  expect(shares[0]).toBeCloseTo(0.047, 3);
  expect(shares.at(-1)).toBeCloseTo(0.551, 3);
  expect(shares.filter((share) => share > 0.2)).toHaveLength(22);
  expect(shares.filter((share) => share > 0.25)).toHaveLength(12);
});
