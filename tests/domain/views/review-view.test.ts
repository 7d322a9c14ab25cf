import fc from 'fast-check';
import { expect, test } from 'vitest';
import { demoScenario } from '../../../demo-data/scenario.ts';
import { simulate } from '../../../demo-data/simulate.ts';
import { reviewView, lineShares } from '../../../src/domain/views/review-view.ts';
import { anyLog, runs } from '../../arbitrary.ts';
import { aPicture, day } from '../../make.ts';

const demo = aPicture(simulate(demoScenario(day('2026-11-24'), 60)));

test('seasons add up to all of them, and so do the females in one', () => {
  const all = reviewView('', demo);
  expect(all.seasons.length).toBeGreaterThan(1);
  const seasons = all.seasons.map((season) => reviewView(season, demo));
  for (const [name, { hits, of }] of Object.entries(all.rates)) {
    const each = seasons.map(
      ({ rates }) => Object.entries(rates).find(([key]) => key === name)?.[1],
    );
    expect(each.reduce((sum, rate) => sum + (rate?.hits ?? 0), 0)).toBe(hits);
    expect(each.reduce((sum, rate) => sum + (rate?.of ?? 0), 0)).toBe(of);
  }
  const { laidOfPaired, goodOfEggs } = all.rates;
  expect(laidOfPaired.of).toBeGreaterThan(0);
  const summed = (share: (typeof lineShares)[number]) =>
    all.females.reduce((sum, { rates }) => sum + rates[share].of, 0);
  expect(summed('laidOfPaired')).toBe(laidOfPaired.of);
  expect(summed('goodOfEggs')).toBe(goodOfEggs.of);
  const months = all.months.reduce((sum, { of }) => sum + of, 0);
  expect(months).toBe(all.rates.refusedOfOffers.of);
});

test('a season nobody knows is all of them', () => {
  expect(reviewView('1999/00', demo)).toEqual(reviewView('', demo));
});

test('no share has more hits than cases, and each lies in its interval, whatever is written', () => {
  fc.assert(
    fc.property(anyLog, (log) => {
      const view = reviewView('', aPicture(log));
      const lines = [...view.bySeason, ...view.females, ...view.males, ...view.incubators];
      const rates = [view, ...lines].flatMap((each) => Object.values(each.rates));
      for (const { hits, of, interval } of [...rates, ...view.months]) {
        expect(hits).toBeLessThanOrEqual(of);
        if (of === 0) continue;
        expect(interval.low).toBeLessThanOrEqual(hits / of);
        expect(interval.high).toBeGreaterThanOrEqual(hits / of);
      }
      expect(reviewView('', aPicture(log.toReversed()))).toEqual(view);
    }),
    runs(60),
  );
});
