import { expect, test } from 'vitest';
import { eggCounts } from '../../../src/domain/clutch/eggs.ts';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import type { Clutch } from '../../../src/domain/state/clutch.ts';
import { aPicture, anEvent, nightsAgo } from '../../make.ts';
import { animalId, clutchId } from '../../make-ids.ts';

const clutch = clutchId(1);
const laid = anEvent('laid', { clutch, at: nightsAgo(60), good: 5, slugs: 1, unsure: 1 });
const counts = (...events: readonly RackEvent[]) =>
  eggCounts(aPicture([laid, ...events]).ledger.subjects.get(clutch) as Clutch);
const check = (nights: number, parts: object) =>
  anEvent('eggs-checked', {
    clutch,
    at: nightsAgo(nights),
    how: 'looked',
    good: undefined,
    ...parts,
  });

test('eggs as they were laid', () => {
  expect(counts()).toMatchObject({ laid: 7, good: 5, slugs: 1, dead: 0, inShell: 6, out: 0 });
});

test('a count stands in for what was counted before, and what is lost after it goes off it', () => {
  expect(counts(check(50, { good: 5, unsure: 0, slugs: 1 }))).toMatchObject({
    slugs: 2,
    inShell: 5,
  });
  expect(counts(check(50, { good: 5 }), check(30, { dead: 2 }))).toMatchObject({
    dead: 2,
    inShell: 3,
  });
});

test('letters are counts where no counts are given', () => {
  const each = [
    { egg: 'A', is: 'good' },
    { egg: 'B', is: 'unsure' },
    { egg: 'C', is: 'slug' },
  ];
  expect(
    counts(check(50, { each }), check(40, { each: [{ egg: 'B', is: 'dead' }] })),
  ).toMatchObject({
    dead: 1,
    inShell: 1,
  });
});

test('one that is out counts once, seen or named', () => {
  const seen = (what: 'pip' | 'out', eggs: number) =>
    anEvent('hatching-seen', { clutch, at: nightsAgo(3), seen: what, eggs });
  const named = anEvent('hatched', { animal: animalId(5), clutch, at: nightsAgo(2) });
  expect(counts(check(50, { good: 5 }), seen('pip', 3), seen('out', 1), named)).toMatchObject({
    pipped: 3,
    out: 1,
    inShell: 4,
  });
});

test('what nobody counted is not zero', () => {
  const uncounted = anEvent('laid', { clutch: clutchId(2), good: undefined, slugs: undefined });
  const found = aPicture([uncounted]).ledger.subjects.get(clutchId(2)) as Clutch;
  expect(eggCounts(found)).toMatchObject({ laid: undefined, inShell: undefined });
});
