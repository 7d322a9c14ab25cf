import { describe, expect, test } from 'vitest';
import { assess } from '../../../src/domain/assess/assess.ts';
import type { Draft } from '../../../src/domain/events/event.ts';
import { anEvent, aPicture, clockAt, nightsAgo, TONIGHT } from '../../make.ts';

const verdictOf = (draft: Draft, ...events: Parameters<typeof aPicture>[0]) =>
  assess(draft, aPicture(events), clockAt(TONIGHT), undefined);
const set = (values: Record<string, number | null>): Draft => ({ type: 'protocol-set', values });

describe('a number of the keeper’s own', () => {
  test('that is in use is not asked about', () => {
    expect(verdictOf(set({ maleStayDays: 5, weighDays: null }))).toEqual({
      refusals: [],
      doubts: [],
      notes: [],
    });
  });

  test('outside what is in use is asked about, with what most keep', () => {
    expect(verdictOf(set({ feedGrowerDays: 14 })).doubts).toEqual([
      {
        code: 'unusual-feedGrowerDays',
        message: 'Feed growers every 14 days: most keep 7–10 days. Sure?',
      },
    ]);
  });

  test('that cannot be is refused', () => {
    expect(verdictOf(set({ feedGrowerDays: 100 })).refusals).toHaveLength(1);
  });

  test('is held against the others as they are set already', () => {
    const own = anEvent('protocol-set', { values: { maleForgottenDays: 3 }, at: nightsAgo(3) });
    expect(verdictOf(set({ maleStayDays: 4 })).refusals).toEqual([]);
    expect(verdictOf(set({ maleStayDays: 4 }), own).refusals).toMatchObject([
      { code: 'order-maleStayDays' },
    ]);
  });
});

test.each([
  { phone: '01632 960017', refused: [] },
  { phone: '+44 (0)1632-960 017', refused: [] },
  { phone: '112', refused: [] },
  { phone: 'see the fridge', refused: ['no-number'] },
])('a vet’s number, $phone: refused $refused', ({ phone, refused }) => {
  const { refusals } = verdictOf({ type: 'vet-stated', name: 'Dr Ahorn', phone });
  expect(refusals.map(({ code }) => code)).toEqual(refused);
});
