import { describe, expect, test } from 'vitest';
import type { Clutch } from '../../../src/domain/state/clutch.ts';
import type { Incubator } from '../../../src/domain/state/incubator.ts';
import { aPicture, anEvent, instead, nightsAgo } from '../../make.ts';
import { animalId, clutchId, incubatorId } from '../../make-ids.ts';

const clutch = clutchId(1);
const incubator = incubatorId(1);

describe('a clutch', () => {
  const laid = anEvent('laid', { animal: animalId(1), clutch, at: nightsAgo(60), good: 6 });
  const set = anEvent('eggs-set', { clutch, incubator, at: nightsAgo(60) });
  const pip = anEvent('hatching-seen', { clutch, seen: 'pip', eggs: 1, at: nightsAgo(3) });
  const out = anEvent('hatched', { animal: animalId(5), clutch, at: nightsAgo(1) });

  test('is made of what was written of it, whoever it was written of', () => {
    const { ledger } = aPicture([out, pip, set, laid]);
    expect(ledger.subjects.get(clutch)).toMatchObject({
      kind: 'clutch',
      dam: animalId(1),
      laid: { good: 6 },
      stands: [{ incubator }],
      hatching: [{ seen: 'pip' }],
      hatched: [{ animal: animalId(5) }],
    });
    expect(ledger.subjects.get(animalId(5))).toMatchObject({ hatched: { clutch } });
  });

  test('takes a corrected count, and keeps the one of two layings that came first', () => {
    const right = instead(
      laid,
      anEvent('laid', { animal: animalId(1), clutch, at: laid.at, good: 5 }),
    );
    const again = anEvent('laid', { animal: animalId(1), clutch, at: nightsAgo(59), good: 1 });
    const { ledger } = aPicture([laid, again, right]);
    expect((ledger.subjects.get(clutch) as Clutch).laid?.good).toBe(5);
  });
});

describe('an incubator', () => {
  const made = anEvent('incubator-made', { incubator, name: 'Left', at: nightsAgo(90) });
  const failed = anEvent('heat-failed', { incubators: [incubator], at: nightsAgo(20) });
  const back = anEvent('heat-back', {
    incubators: [incubator],
    lowestC: 24.5,
    at: nightsAgo(19),
  });
  const of = (...events: Parameters<typeof aPicture>[0]) =>
    aPicture(events).ledger.subjects.get(incubator) as Incubator;

  test('has no heat until it is said to be back, and then knows how cold it got', () => {
    expect(of(made, failed).failures).toMatchObject([{ from: failed.at, until: undefined }]);
    expect(of(back, failed, made).failures).toMatchObject([{ until: back.at, lowestC: 24.5 }]);
  });

  test('keeps an end that was known at once', () => {
    const until = nightsAgo(19);
    const whole = anEvent('heat-failed', {
      incubators: [incubator],
      at: nightsAgo(20),
      until,
      lowestC: 22,
    });
    const later = anEvent('heat-back', { incubators: [incubator], at: nightsAgo(2) });
    expect(of(made, whole, later).failures).toMatchObject([{ until, lowestC: 22 }]);
  });

  test('carries the last readings alone, as a room does', () => {
    const old = anEvent('incubator-read', { incubator, at: nightsAgo(40), tempC: 31 });
    const fresh = anEvent('incubator-read', { incubator, at: nightsAgo(1), tempC: 31.6 });
    expect(of(made, old, fresh).recent).toMatchObject([
      { spot: 'egg level', readings: [{ tempC: 31.6 }] },
    ]);
  });
});
