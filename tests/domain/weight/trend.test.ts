import { describe, expect, test } from 'vitest';
import { chanceFrom } from '../../../demo-data/random.ts';
import { addDays, daysBetween } from '../../../src/domain/core/calendar.ts';
import { defaultProtocol } from '../../../src/domain/protocol/values.ts';
import { weightCourse } from '../../../src/domain/weight/trend.ts';
import { day } from '../../make.ts';
import { normal } from '../windows/sampling.ts';
import { fromOpenRecord } from './open-record.ts';
import { aWeightStory, type StoryParts } from './weight-story.ts';

function course(parts: StoryParts) {
  const { readings, layings, protocol } = aWeightStory(parts);
  return weightCourse(readings, layings, protocol);
}

describe('a trend', () => {
  test('is the daily growth of log mass', () => {
    // By hand: 1 % a day over 20 days.
    const masses = [0, 10, 20].map((days) => {
      return [addDays(day('2026-03-01'), days), 500 * 1.01 ** days] as const;
    });
    const trend = course({ masses });
    expect(trend.kind === 'trend' ? trend.percentPerDay : NaN).toBeCloseTo(100 * Math.log(1.01), 9);
  });

  test.each([
    ['none', [], 'none', 'no weight'],
    ['one', ['2026-03-01'], 'none', 'one weight'],
    ['two', ['2026-03-01', '2026-04-01'], 'difference', 'two weights'],
    [
      'two, one of them twice',
      ['2026-03-01', '2026-03-01', '2026-04-01'],
      'difference',
      'two weights',
    ],
    [
      'three within ten days',
      ['2026-03-01', '2026-03-05', '2026-03-11'],
      'difference',
      'too few days',
    ],
    ['three in a month', ['2026-03-01', '2026-03-15', '2026-04-01'], 'trend', undefined],
  ])('of %s weights', (_name, nights, kind, why) => {
    const found = course({ masses: nights.map((night, i) => [night, 1_000 + 5 * i] as const) });
    expect(found.kind).toBe(kind);
    expect('why' in found ? found.why : undefined).toBe(why);
  });

  test('leaves full guts out where there are three empty weights, else says that it did not', () => {
    const masses = ['2026-03-01', '2026-03-20', '2026-04-10', '2026-04-30'].map(
      (night) => [night, 800] as const,
    );
    const early: StoryParts['meals'] = [['2026-01-05', 40]];
    const one = course({ masses, meals: [...early, ['2026-03-17', 60]] });
    expect(one.kind === 'trend' && [one.isMixed, one.readings.length]).toEqual([false, 3]);
    const three = course({
      masses,
      meals: [...early, ['2026-03-17', 60], ['2026-04-07', 60], ['2026-04-27', 60]],
    });
    expect(three.kind === 'trend' && [three.isMixed, three.readings.length]).toEqual([true, 4]);
  });

  test('runs only from the last laying on', () => {
    const trend = course({
      masses: [
        ['2026-03-01', 2_000],
        ['2026-04-01', 2_000],
        ['2026-05-02', 1_400],
        ['2026-06-01', 1_440],
        ['2026-07-01', 1_480],
      ],
      layings: [{ date: '2026-05-01' }],
    });
    expect(trend.kind === 'trend' && trend.from).toBe('2026-05-02');
    expect(trend.kind === 'trend' && trend.percentPerDay).toBeGreaterThan(0.07);
  });

  test('reaches no farther back than its days', () => {
    const masses = Array.from({ length: 12 }, (_, i) => {
      return [addDays(day('2026-01-01'), 30 * i), i < 7 ? 300 + 100 * i : 1_000] as const;
    });
    const trend = course({ masses });
    expect(trend.kind === 'trend' && trend.percentPerDay).toBeCloseTo(0, 6);
  });

  test('of snake 06 without food is 0.05 to 0.17 % a day', () => {
    // 5.19 % in 49 days: 0.106 % a day, worked out from the source.
    const { readings } = fromOpenRecord('06');
    const trend = weightCourse(readings.slice(0, 3), [], defaultProtocol);
    expect(trend.kind === 'trend' ? -trend.percentPerDay : NaN).toBeGreaterThan(0.08);
    expect(trend.kind === 'trend' ? -trend.percentPerDay : NaN).toBeLessThan(0.13);
  });

  test.each([
    // ln(last/first)/237 days, from the source; a robust line need not be the same.
    ['01', 0.143],
    ['02', 0.202],
    ['03', 0.294],
    ['07', 0.176],
  ])('of snake %s all year is near its mean growth, %f %% a day', (name, mean) => {
    const { readings } = fromOpenRecord(name);
    const [first] = readings;
    const last = readings.at(-1);
    const days = first && last ? daysBetween(first.night, last.night) : NaN;
    expect((100 * Math.log((last?.massG ?? NaN) / (first?.massG ?? NaN))) / days).toBeCloseTo(
      mean,
      3,
    );
    const protocol = { ...defaultProtocol, weightTrendDays: 300 };
    const trend = weightCourse(readings, [], protocol);
    expect(trend.kind === 'trend' && trend.low <= mean && mean <= trend.high).toBe(true);
  });

  test.each([3, 4, 6, 10])(
    'of %i weights holds the true one four times in five or more',
    (count) => {
      const chance = chanceFrom(count);
      const RUNS = 600;
      let held = 0;
      for (let run = 0; run < RUNS; run += 1) {
        const daily = chance.between(-0.002, 0.004);
        // One weight in ten is far off, as none of the formulas know.
        const masses = Array.from({ length: count }, (_, i) => {
          const off = (chance.happens(0.1) ? 0.06 : 0.015) * normal(chance);
          return [
            addDays(day('2026-03-01'), 10 * i),
            900 * Math.exp(daily * 10 * i + off),
          ] as const;
        });
        const trend = course({ masses });
        if (trend.kind !== 'trend') continue;
        held += trend.low <= 100 * daily && 100 * daily <= trend.high ? 1 : 0;
      }
      expect(held / RUNS).toBeGreaterThan(0.78);
    },
  );
});
