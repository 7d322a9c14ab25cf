import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { SignLead } from '../../../src/domain/season/experience.ts';
import { signStatistics } from '../../../src/domain/season/sign-statistics.ts';
import { signLine } from '../../../src/domain/views/sign-words.ts';
import { anEvent, aPicture } from '../../make.ts';
import { animalId } from '../../make-ids.ts';
import { arrivals, her, on, ovulated, scan, shed } from './make-season.ts';

const leads = (sign: string, ...days: readonly number[]): readonly SignLead[] =>
  days.map((each, i) => ({ female: animalId(i + 1), sign, days: each }));

test('a sign is told with its days and its share, and too few are told as too few', () => {
  const statistics = signStatistics({
    cycles: 11,
    leads: [...leads('round the bowl', 30, 9, 21, 17, 12, 26, 14), ...leads('glow', 40, 12)],
  });
  expect(statistics.map(({ sign }) => sign)).toEqual(['round the bowl', 'glow']);
  const [bowl, glow] = statistics;
  expect(bowl).toMatchObject({ seenIn: 7, cycles: 11 });
  expect(bowl?.lead).toEqual({ latest: 9, middle: 17, earliest: 30 });
  // 7 of 11: 0.3538 to 0.8483 by the score method, computed by hand.
  expect(bowl?.share.low).toBeCloseTo(0.3538, 3);
  expect(bowl?.share.high).toBeCloseTo(0.8483, 3);
  expect(glow?.lead).toBeUndefined();
  expect(statistics.map((each) => signLine(each).says)).toEqual([
    'In your records it came 9–30 days before ovulation, the middle one 17, in 7 of 11 cycles (35–85 %).',
    'Seen in 2 of 11 cycles: too few to say when it comes.',
  ]);
});

test('from ten cycles on, one in ten is left out at either end', () => {
  const days = [2, 11, 12, 13, 14, 15, 16, 17, 18, 80];
  const leadOf = (some: readonly number[]) =>
    signStatistics({ cycles: 12, leads: leads('inverted', ...some) })[0]?.lead;
  expect(leadOf(days)).toEqual({ latest: 11, middle: 15, earliest: 18 });
  expect(leadOf(days.slice(1))).toEqual({ latest: 11, middle: 15, earliest: 80 });
});

test('at least four of five of the keeper’s cycles lie within the days that are told', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 0, max: 120 }), { minLength: 3, maxLength: 60 }),
      (days) => {
        const told = signStatistics({ cycles: 60, leads: leads('glow', ...days) })[0]?.lead;
        if (!told) throw new Error('Three cycles are told.');
        const within = days.filter((each) => each >= told.latest && each <= told.earliest);
        expect(within.length / days.length).toBeGreaterThanOrEqual(0.8);
        expect(told.middle).toBeGreaterThanOrEqual(told.latest);
        expect(told.middle).toBeLessThanOrEqual(told.earliest);
        expect(days.filter((each) => each < told.latest).length / days.length).toBeLessThanOrEqual(
          0.1,
        );
      },
    ),
  );
});

test('the order of records changes nothing', () => {
  const all = [...leads('glow', 40, 12, 8), ...leads('inverted', 9, 8, 7), ...leads('off food', 3)];
  fc.assert(
    fc.property(fc.shuffledSubarray(all, { minLength: all.length }), (shuffled) => {
      expect(signStatistics({ cycles: 5, leads: shuffled })).toEqual(
        signStatistics({ cycles: 5, leads: all }),
      );
    }),
  );
});

test('only the first time a sign was seen counts, and only before the ovulation', () => {
  const sign = (day: string) => anEvent('sign-seen', { animal: her, sign: 'glow', at: on(day) });
  const picture = aPicture(
    [
      ...arrivals,
      scan('2026-12-20', 22),
      sign('2027-01-10'),
      sign('2027-01-20'),
      ovulated('2027-02-05'),
      anEvent('sign-seen', { animal: her, sign: 'inverted', at: on('2027-02-08') }),
      shed('2027-02-24', true),
    ],
    on('2027-02-25'),
  );
  // 10 January to 5 February: 26 days.
  expect(picture.experience().leads).toEqual([{ female: her, sign: 'glow', days: 26 }]);
  expect(signStatistics(picture.experience())).toMatchObject([
    { sign: 'glow', seenIn: 1, cycles: 1 },
  ]);
});
