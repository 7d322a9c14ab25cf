import { describe, expect, test } from 'vitest';
import { readdirSync, readFileSync } from 'node:fs';
import { clutchRules, incubatorRules } from '../../../src/domain/clutch/rules/all.ts';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { sources } from '../../../src/domain/sources.ts';
import { hatcheryView } from '../../../src/domain/views/hatchery-view.ts';
import { aPicture, anEvent } from '../../make.ts';
import { animalId, clutchId, incubatorId } from '../../make-ids.ts';

const clutch = clutchId(1);
const incubator = incubatorId(1);
const at = (day: string, time = '21:00') => `${day}T${time}:00+02:00`;

const dam = anEvent('arrived', { animal: animalId(1), name: 'Sorrel', at: at('2027-01-02') });
const made = anEvent('incubator-made', { incubator, name: 'Left', at: at('2027-04-01') });
const laid = anEvent('laid', { animal: animalId(1), clutch, at: at('2027-04-10'), good: 5 });
const set = anEvent('eggs-set', { clutch, incubator, at: at('2027-04-10', '21:10') });
const read = (when: string, tempC: number, parts: object = {}) =>
  anEvent('incubator-read', { incubator, at: when, tempC, ...parts });

function asked(rule: string, now: string, ...events: readonly RackEvent[]) {
  const { open, incubators } = hatcheryView(aPicture([dam, made, laid, set, ...events], now));
  return [...open, ...incubators]
    .flatMap(({ chores }) => chores)
    .find((each) => each.rule === rule);
}

const looked = (day: string, seen: 'nothing yet' | 'pip', time = '20:00') =>
  anEvent('hatching-seen', { clutch, at: at(day, time), seen, eggs: 1 });

// The days and degrees of these rules: common practice, no source.

describe('[C1] looks for pips', () => {
  test('begin on day 52, once a night', () => {
    expect(asked('C1', at('2027-05-31'))).toBeUndefined();
    expect(asked('C1', at('2027-06-01'))?.asks).toBe('Look for pips');
    expect(asked('C1', at('2027-06-01'), looked('2027-06-01', 'nothing yet'))).toBeUndefined();
    expect(asked('C1', at('2027-06-02'), looked('2027-06-01', 'nothing yet'))?.because).toContain(
      'Last look last night.',
    );
  });

  test('begin sooner where the keeper’s own clutches were sooner', () => {
    const quick = [2022, 2023, 2024, 2025, 2026].flatMap((year, n) => {
      const of = { clutch: clutchId(10 + n) };
      return [
        anEvent('laid', { ...of, animal: animalId(1), good: 5, at: at(`${year}-04-10`) }),
        anEvent('hatching-seen', { ...of, seen: 'pip', eggs: 1, at: at(`${year}-05-30`) }),
        anEvent('clutch-closed', { ...of, at: at(`${year}-06-30`) }),
      ];
    });
    const early = asked('C1', at('2027-05-31'), ...quick);
    expect(early?.because.join(' ')).toMatch(/The first pip is awaited from \d+ May/);
    expect(asked('C1', at('2027-05-15'), ...quick)).toBeUndefined();
  });

  test('go on after an early pip', () => {
    expect(asked('C1', at('2027-05-30'), looked('2027-05-29', 'pip'))?.asks).toMatch(/pipped/);
  });
});

describe('[C2] air for the box', () => {
  const aired = (day: string) => anEvent('box-aired', { clutch, at: at(day) });

  test('is due after a week, and every three days from day 40', () => {
    expect(asked('C2', at('2027-04-16'))).toBeUndefined();
    expect(asked('C2', at('2027-04-17'))?.asks).toBe('Air the box');
    expect(asked('C2', at('2027-04-20'), aired('2027-04-17'))).toBeUndefined();
    expect(asked('C2', at('2027-05-21'), aired('2027-05-18'))?.because).toEqual([
      'Aired 3 days ago; every 3 days from day 40 on.',
    ]);
  });
});

describe('[C3] overdue eggs', () => {
  const nights = Array.from({ length: 80 }, (_, n) => n);
  const daily = (tempC: number) =>
    nights.map((n) => {
      const day = new Date(Date.UTC(2027, 3, 10 + n)).toISOString().slice(0, 10);
      return read(at(day, '21:30'), tempC);
    });

  test('are an alarm from 65 days as at 31.5 °C: sooner warm than cool', () => {
    const now = at('2027-06-16');
    expect(asked('C3', now, ...daily(31.5))).toMatchObject({ alarm: true, vet: true });
    expect(asked('C3', now, ...daily(29))).toBeUndefined();
    expect(asked('C3', at('2027-06-25'), ...daily(29))).toMatchObject({ alarm: true });
  });

  test('tell of the probe and of the day of laying, and of no procedure', () => {
    const { asks, because = [] } = asked('C3', at('2027-06-16'), ...daily(31.5)) ?? {};
    expect([asks, ...because].join(' ')).not.toMatch(/cut|slit|open/i);
  });
});

describe('[C4] eggs that do not follow', () => {
  test('are looked at by someone who knows from the fourth day', () => {
    const pip = looked('2027-06-06', 'pip');
    expect(asked('C4', at('2027-06-09'), pip)).toBeUndefined();
    expect(asked('C4', at('2027-06-10'), pip)).toMatchObject({
      asks: '5 still in the shell',
      vet: true,
    });
  });
});

describe('[I1] eggs in danger', () => {
  const now = at('2027-04-20');
  test.each([
    [33.4, false],
    [33.5, true],
    [35, true],
    [27, false],
    [26.9, true],
  ])('%f °C by hand is an alarm: %s', (tempC, isAlarm) => {
    const chore = asked('I1', now, read(at('2027-04-20', '20:55'), tempC));
    expect(chore?.alarm ?? false).toBe(isAlarm);
  });

  test('a sensor must see it for a quarter of an hour, and 35 °C not at all', () => {
    const logged = (...readings: [number, number][]) =>
      anEvent('incubator-logged', {
        incubator,
        spot: 'egg level',
        sensor: 'probe',
        at: at('2027-04-20', '20:00'),
        readings,
      });
    expect(asked('I1', now, logged([0, 31.5], [20, 33.6], [30, 33.6]))).toBeUndefined();
    expect(asked('I1', now, logged([0, 31.5], [20, 33.6], [35, 33.6]))).toBeDefined();
    expect(asked('I1', now, logged([0, 31.5], [35, 35]))).toBeDefined();
  });

  test('is not asked of an empty incubator, nor by an old reading', () => {
    const closed = anEvent('clutch-closed', { clutch, at: at('2027-04-19') });
    expect(asked('I1', now, read(at('2027-04-20', '20:55'), 36), closed)).toBeUndefined();
    expect(asked('I1', now, read(at('2027-04-18'), 36))).toBeUndefined();
  });
});

describe('[I2] eggs to watch', () => {
  const now = at('2027-04-20');
  test.each([
    [29.9, true],
    [30, false],
    [32.8, false],
    [32.9, true],
    [34, false],
  ])('%f °C by hand is worth a look: %s', (tempC, isAsked) => {
    const chore = asked('I2', now, read(at('2027-04-20', '20:55'), tempC));
    expect(chore !== undefined).toBe(isAsked);
    expect(chore?.alarm ?? false).toBe(false);
  });

  test('dry air is, under 75 %', () => {
    const dry = read(at('2027-04-20', '20:55'), 31.5, { humidityPercent: 74 });
    expect(asked('I2', now, dry)?.asks).toBe('Left: 74 % humidity');
  });
});

describe('[I3] the look twice a day', () => {
  test('is due half a day after the last, and overdue after a day', () => {
    const morning = read(at('2027-04-20', '08:00'), 31.5);
    expect(asked('I3', at('2027-04-20', '18:00'), morning)).toBeUndefined();
    expect(asked('I3', at('2027-04-20', '19:30'), morning)).toMatchObject({ state: 'due' });
    expect(asked('I3', at('2027-04-21', '10:00'), morning)).toMatchObject({ state: 'overdue' });
    expect(asked('I3', at('2027-04-20'))?.because).toEqual([
      'It has not been read yet, and eggs are in it.',
    ]);
  });
});

describe('[I4] no heat', () => {
  const failed = anEvent('heat-failed', { incubators: [incubator], at: at('2027-04-20', '18:00') });
  const back = anEvent('heat-back', { incubators: [incubator], at: at('2027-04-20', '20:00') });

  test('is an alarm until it is back', () => {
    expect(asked('I4', at('2027-04-20', '19:00'), failed)).toMatchObject({
      alarm: true,
      because: ['No heat since 18:00, 1 h ago, and eggs in it.'],
    });
    expect(asked('I4', at('2027-04-20'), failed, back)).toBeUndefined();
  });
});

describe('every rule about eggs', () => {
  const all = [...clutchRules, ...incubatorRules];
  const tests = readFileSync(new URL(import.meta.url), 'utf8');

  test.each(all.map(({ id, source }) => ({ id, source })))(
    '$id has a test that names it, and a source',
    ({ id, source }) => {
      expect(tests).toContain(`describe('[${id}] `);
      expect(sources).toHaveProperty(source);
    },
  );

  test('has an id of its own, and every rule file is listed', () => {
    expect(new Set(all.map(({ id }) => id)).size).toBe(all.length);
    const folder = new URL('../../../src/domain/clutch/rules/', import.meta.url);
    const files = readdirSync(folder).filter((file) => file.startsWith('rule-'));
    // Danger and watch stand in one file.
    expect(files.length + 1).toBe(all.length);
  });
});
