import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { createLedger, type Ledger } from '../../../src/domain/state/ledger.ts';
import { anEvent, instead } from '../../make.ts';
import { eventId } from '../../make-ids.ts';
import { anyLog, runs } from '../../arbitrary.ts';

function folded(...batches: readonly (readonly RackEvent[])[]): Ledger {
  const ledger = createLedger();
  for (const batch of batches) ledger.add(batch);
  return ledger;
}

const strike = (target: RackEvent) => anEvent('struck', { target: target.id });

/** A log, and the same records in another order, some of them twice. */
const reordered = anyLog.chain((log) =>
  fc.tuple(fc.constant(log), fc.shuffledSubarray([...log, ...log], { minLength: log.length * 2 })),
);

/** A list cut at up to three places. */
function cut<Each>(list: readonly Each[], shares: readonly number[]): readonly (readonly Each[])[] {
  const ends = [...shares.map((share) => Math.floor(share * list.length)), list.length];
  const sorted = ends.toSorted((a, b) => a - b);
  return sorted.map((end, i) => list.slice(sorted[i - 1] ?? 0, end));
}
const shares = fc.array(fc.double({ min: 0, max: 1, noNaN: true }), { maxLength: 3 });

describe('the same set of records gives the same picture', () => {
  test('in whatever order, split and repetition it arrives', () => {
    fc.assert(
      fc.property(reordered, shares, ([log, other], cuts) => {
        expect(folded(...cut(other, cuts)).subjects).toEqual(folded(log).subjects);
      }),
      runs(500),
    );
  });

  test('one by one or all at once', () => {
    fc.assert(
      fc.property(anyLog, (log) => {
        const one = folded(...log.map((event) => [event]));
        expect(one.subjects).toEqual(folded(log).subjects);
        expect(one.size).toBe(log.length);
      }),
      runs(200),
    );
  });

  test('from a saved picture, later records and the log behind them', () => {
    fc.assert(
      fc.property(anyLog, shares, ([...log], cuts) => {
        const [before = [], ...later] = cut(log, cuts);
        const ledger = createLedger();
        ledger.restore(structuredClone(folded(before).save()));
        for (const batch of later) ledger.add(batch);
        ledger.fill(log);
        const whole = folded(log);
        expect(ledger.subjects).toEqual(whole.subjects);
        expect(new Set(ledger.events())).toEqual(new Set(whole.events()));
        // And goes on from there as if nothing had happened.
        expect(ledger.save()).toHaveLength(whole.save().length);
      }),
      runs(500),
    );
  });

  test('and goes on the same way after a start from a saved picture', () => {
    fc.assert(
      fc.property(anyLog, shares, ([...log], cuts) => {
        const [before = [], between = [], ...after] = cut(log, cuts);
        const ledger = createLedger();
        ledger.restore(folded(before).save());
        ledger.add(between);
        const onDisk = before.concat(between);
        ledger.fill(onDisk);
        for (const batch of after) ledger.add(batch);
        expect(ledger.subjects).toEqual(folded(log).subjects);
      }),
      runs(300),
    );
  });
});

test('what is added says which subjects changed, and no other did', () => {
  fc.assert(
    fc.property(anyLog, shares, (log, cuts) => {
      const ledger = createLedger();
      for (const batch of cut(log, cuts)) {
        const before = new Map(ledger.subjects);
        const touched = ledger.add(batch);
        const ids = new Set([...before.keys(), ...ledger.subjects.keys()]);
        const changed = [...ids].filter((id) => ledger.subjects.get(id) !== before.get(id));
        expect(changed.filter((id) => !touched.has(id))).toEqual([]);
      }
    }),
    runs(200),
  );
});

describe('corrections', () => {
  const weighed = anEvent('weighed', { massG: 15_00 });
  const animal = weighed.animal;
  const masses = (...events: RackEvent[]) => {
    const found = folded(events).subjects.get(animal);
    return found && 'weighings' in found ? found.weighings.map(({ massG }) => massG) : [];
  };
  const mended = instead(weighed, anEvent('weighed', { massG: 1_510 }));
  const mendedAgain = instead(mended, anEvent('weighed', { massG: 1_520 }));

  test('a struck record does not count, and stays in the history with its reason', () => {
    const ledger = folded([weighed, strike(weighed)]);
    expect(ledger.subjects.get(animal)).toBeUndefined();
    expect(ledger.history(animal)).toEqual([weighed]);
    expect(ledger.reasonStruck(weighed.id)).toBe('mistap');
  });

  test('a replacement counts in place of what it replaces, and so does a chain of them', () => {
    expect(masses(weighed, mended)).toEqual([1_510]);
    expect(masses(weighed, mended, mendedAgain)).toEqual([1_520]);
  });

  test('striking the last replacement brings back what it stood in for', () => {
    expect(masses(weighed, mended, strike(mended))).toEqual([1_500]);
    expect(masses(weighed, mended, mendedAgain, strike(mendedAgain))).toEqual([1_510]);
  });

  test('striking one in the middle changes nothing while the last one stands', () => {
    expect(masses(weighed, mended, mendedAgain, strike(mended))).toEqual([1_520]);
  });

  test('a correction may come before what it corrects', () => {
    expect(masses(mendedAgain, mended, weighed)).toEqual([1_520]);
    expect(masses(strike(weighed), weighed)).toEqual([]);
  });

  test('two reasons for one strike give the same one on both phones', () => {
    const reasons = ['wrong snake', 'mistap'].map((reason) =>
      anEvent('struck', { target: weighed.id, reason }),
    );
    const there = folded([weighed, ...reasons]).reasonStruck(weighed.id);
    expect(folded([weighed, ...reasons.toReversed()]).reasonStruck(weighed.id)).toBe(there);
  });

  test('records that correct themselves or each other, as a broken file may hold, do no harm', () => {
    const self = eventId(901);
    const [one, other] = [eventId(902), eventId(903)];
    const circles = [
      anEvent('struck', { id: self, target: self }),
      anEvent('struck', { id: one, target: other }),
      anEvent('struck', { id: other, target: one }),
    ];
    expect(masses(weighed, ...circles)).toEqual([1_500]);
    const ring = [
      { ...anEvent('weighed', { id: eventId(904) }), replaces: { id: eventId(905), reason: 'x' } },
      { ...anEvent('weighed', { id: eventId(905) }), replaces: { id: eventId(904), reason: 'x' } },
    ];
    expect(masses(...ring)).toEqual([1_500]);
  });
});
