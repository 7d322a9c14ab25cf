import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { demoScenario } from '../../../demo-data/scenario.ts';
import { simulate } from '../../../demo-data/simulate.ts';
import { daysBetween, type Day } from '../../../src/domain/core/calendar.ts';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import type { Picture } from '../../../src/domain/picture/picture.ts';
import { rules } from '../../../src/domain/rules/all.ts';
import type { RuleId, Task } from '../../../src/domain/rules/rule.ts';
import { ovulationSpan } from '../../../src/domain/season/span.ts';
import { anyLog, runs } from '../../arbitrary.ts';
import { aPicture, TONIGHT } from '../../make.ts';
import { arrivals, on, upTo, visit, wholeSeason } from '../season/make-season.ts';

// A because may say nothing that the rule did not look at: each number in it stands in a record it
// names, in the protocol, or is the days between the nights of those and tonight.

const digits = (text: string): number[] =>
  [...text.replaceAll(/(\d),(\d{3})/g, '$1$2').matchAll(/\d+(?:\.\d+)?/g)].map(([each]) =>
    Number(each),
  );

function numbersIn(value: unknown): number[] {
  if (typeof value === 'number') return [value];
  if (typeof value === 'string') return digits(value);
  return typeof value === 'object' && value !== null ? Object.values(value).flatMap(numbersIn) : [];
}

/** Every number a because may hold, given the records it names. */
function allowed({ records, animal }: Task, picture: Picture): Set<number> {
  const { protocol, night, nightOf, nowMs } = picture.facts;
  const events = records.map((id) => picture.ledger.event(id)).filter((each) => each !== undefined);
  // A regurgitation is known by its moment alone.
  const broughtUp = picture.animal(animal)?.regurgitations.map(nightOf) ?? [];
  const nights = [...new Set([night, ...broughtUp, ...events.flatMap(nightsOf)])];
  const between = nights.flatMap((a) => nights.map((b) => Math.abs(daysBetween(a, b))));
  const sizes = events.flatMap((event) => {
    if (event.type !== 'follicles-scanned' || event.found.method !== 'ultrasound') return [];
    const [a = 0, b = 0] = event.found.largestMm ?? [];
    return [Math.round(5 * (a + b)) / 10];
  });
  return new Set([
    ...Object.values(protocol),
    ...events.flatMap(numbersIn).flatMap((n) => [n, Math.round(n)]),
    ...sizes,
    ...between,
    ...protocolSums(picture),
    ...kindCounts(events),
    ...weightNumbers(events, protocol, between),
    events.length,
    nowMs,
  ]);

  function nightsOf(event: RackEvent): Day[] {
    const { at, notBefore } = event;
    if (event.type === 'ovulated' && event.precision !== 'between') {
      // One that was worked out stands for some nights to either side.
      const { first, last } = ovulationSpan({ ...event, notBefore: undefined }, nightOf);
      return [nightOf(at), first, last];
    }
    return notBefore === undefined ? [nightOf(at)] : [nightOf(at), nightOf(notBefore)];
  }
}

const asTold = (share: number): number[] => {
  const percent = 100 * Math.abs(share);
  return [Number(percent.toFixed(1)), Math.round(percent)];
};

/** What weights, meals and a protocol come to: differences, shares of them, and what a fast costs. */
function weightNumbers(
  events: readonly RackEvent[],
  protocol: Picture['facts']['protocol'],
  between: readonly number[],
): number[] {
  const masses = events.flatMap((event) => (event.type === 'weighed' ? [event.massG] : []));
  const meals = events.flatMap((event) =>
    event.type === 'meal-offered' ? [(event.prey.eachG ?? 0) * event.prey.count] : [],
  );
  const guts = [0, ...meals, meals.reduce((sum, each) => sum + each, 0)];
  const pairs = masses.flatMap((a) =>
    masses.flatMap((b) =>
      guts.flatMap((gut) => {
        const lost = [a - b, Math.max(0, Math.abs(a - b) - gut)];
        return lost.flatMap((each) => [Math.round(Math.abs(each)), ...asTold(each / a)]);
      }),
    ),
  );
  const fasts = between.flatMap((days) =>
    [protocol.fastLossLowShare, protocol.fastLossHighShare].flatMap((monthly) =>
      asTold(1 - (1 - monthly) ** (days / 30)),
    ),
  );
  const weeks = between.map((days) => Math.floor(days / 7));
  const sheds = masses.flatMap((massG) => {
    const upToG = protocol.shedLossShare * massG;
    return [Math.round(upToG), Number(upToG.toFixed(1))];
  });
  return [...pairs, ...fasts, ...weeks, ...sheds, ...guts, ...asTold(protocol.fastGainShare)];
}

/** How many records of each kind there are among those named. */
function kindCounts(events: readonly RackEvent[]): number[] {
  const counts = new Map<string, number>();
  for (const { type } of events) counts.set(type, (counts.get(type) ?? 0) + 1);
  return [...counts.values()];
}

/** From ovulation to eggs is the sum of two links. */
const protocolSums = ({ facts: { protocol } }: Picture): number[] => [
  protocol.ovulationToShedNeverBeforeDays + protocol.shedToLayNeverBeforeDays,
  protocol.ovulationToShedNeverAfterDays + protocol.shedToLayNeverAfterDays,
];

const known = rules.map(({ id }) => id);

function check(picture: Picture): Set<RuleId> {
  const tasks = picture.animals().flatMap(({ id }) => picture.tasks(id));
  for (const task of tasks) {
    expect(task.because, `[${task.rule}]`).not.toHaveLength(0);
    for (const id of task.records) {
      expect(picture.ledger.stands(id), `${task.rule} names a record that counts`).toBe(true);
    }
    const may = allowed(task, picture);
    for (const sentence of task.because) {
      expect(sentence).toMatch(/[.?]$/);
      const strange = digits(sentence).filter((n) => !may.has(n));
      expect(strange, `[${task.rule}] ${sentence}`).toEqual([]);
    }
  }
  return new Set(tasks.map(({ rule }) => rule));
}

describe('every because is built from facts its rule used', () => {
  test('through two years of the demo collection', { timeout: 60_000 }, () => {
    const demo = simulate(demoScenario('2027-03-01' as Day, 60));
    const seen = new Set<RuleId>();
    for (const day of ['2026-07-10', '2026-11-02', '2026-12-20', '2027-02-14', '2027-03-01']) {
      for (const rule of check(aPicture(upTo(day, demo), on(day)))) seen.add(rule);
    }
    expect([...seen].toSorted()).toEqual(
      expect.arrayContaining(['F1', 'F2', 'P1', 'S1', 'S3', 'W1']),
    );
  });

  test('through a season as it should be', () => {
    const seen = ['2026-10-28', '2026-11-30', '2026-12-18', '2027-01-28', '2027-03-20'].flatMap(
      (day) => [...check(aPicture([...arrivals, ...upTo(day, wholeSeason)], on(day)))],
    );
    expect(seen).toEqual(expect.arrayContaining(['S1', 'S2', 'S3', 'S4', 'S6', 'S7']));
  });

  test('through a season that goes wrong', () => {
    const gravid = [...arrivals, ...wholeSeason.slice(0, 9)];
    const seen = [
      check(aPicture([...gravid, ...visit('2027-02-26')], on('2027-02-27'))),
      check(aPicture(gravid, on('2027-04-16'))),
    ].flatMap((each) => [...each]);
    expect(seen).toEqual(expect.arrayContaining(['S5', 'S6', 'S8']));
  });

  test('in any log', { timeout: 60_000 }, () => {
    fc.assert(
      fc.property(anyLog, (log) => {
        expect(known).toEqual(expect.arrayContaining([...check(aPicture(log, TONIGHT))]));
      }),
      runs(200),
    );
  });
});
