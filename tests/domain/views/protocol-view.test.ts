import { describe, expect, test } from 'vitest';
import { protocolView, type ValueRow } from '../../../src/domain/views/protocol-view.ts';
import type { RackEvent } from '../../../src/domain/events/event.ts';
import { anEvent, aPicture, nightsAgo } from '../../make.ts';

const viewOf = (...events: RackEvent[]) => protocolView(aPicture(events));
const rowOf = (key: ValueRow['key'], ...events: RackEvent[]) =>
  viewOf(...events)
    .groups.flatMap(({ rows }) => rows)
    .find((row) => row.key === key)!;

const set = (values: Record<string, number | null>, nights: number, school?: string) =>
  anEvent('protocol-set', { values, school, at: nightsAgo(nights) });

describe('the protocol on the screen', () => {
  test('begins with the defaults of the middle school', () => {
    const { changed, schools, vet, history } = viewOf();
    expect([changed, vet, history]).toEqual([0, undefined, []]);
    expect(schools.filter(({ isChosen }) => isChosen).map(({ id }) => id)).toEqual(['middle']);
    expect(rowOf('maleStayDays')).toMatchObject({
      words: '3 days',
      usualWords: '3 days',
      range: '1–5 days',
      set: undefined,
    });
  });

  test('tells the last of each number by time, in whatever order they were read', () => {
    const first = set({ maleStayDays: 2, weighDays: 20 }, 9);
    const later = set({ maleStayDays: 4 }, 5);
    for (const events of [
      [first, later],
      [later, first],
    ]) {
      expect(rowOf('maleStayDays', ...events)).toMatchObject({ value: 4, set: 'own' });
      expect(rowOf('weighDays', ...events)).toMatchObject({ value: 20, usualWords: '30 days' });
    }
    expect(viewOf(first, later).changed).toBe(2);
  });

  test('goes back to the default on null, and to what was before when that is struck', () => {
    const own = set({ maleStayDays: 2 }, 9);
    const back = set({ maleStayDays: null }, 5);
    expect(rowOf('maleStayDays', own, back)).toMatchObject({ value: 3, set: undefined });
    const struck = anEvent('struck', { target: back.id });
    expect(rowOf('maleStayDays', own, back, struck)).toMatchObject({ value: 2, set: 'own' });
  });

  test('tells a school’s numbers, and where the keeper’s own differ from them', () => {
    const follows = set({ maleStayDays: 1, maleRestDays: 7 }, 9, 'strict');
    const own = set({ maleRestDays: 5 }, 5);
    expect(rowOf('maleStayDays', follows, own)).toMatchObject({ set: { school: 'Strict' } });
    expect(rowOf('maleRestDays', follows, own)).toMatchObject({
      set: 'own',
      school: { name: 'Strict', value: 7, words: '7 days' },
    });
  });

  test('does not tell a number as in force that cannot be', () => {
    expect(rowOf('maleStayDays', set({ maleStayDays: 500 }, 9))).toMatchObject({
      value: 3,
      set: undefined,
    });
  });

  test('types shares as percentages', () => {
    expect(rowOf('maleLossStopShare').entry).toEqual({
      unit: '% of body mass',
      times: 100,
      decimals: false,
      least: 3,
      most: 80,
      fineness: 1,
      step: 1,
    });
  });

  test('keeps the history, newest first, with what was struck', () => {
    const vet = anEvent('vet-stated', { at: nightsAgo(9) });
    const wrong = set({ weighDays: 20, ofALaterVersion: 1 }, 5);
    const { history, vet: told } = viewOf(vet, wrong, anEvent('struck', { target: wrong.id }));
    expect(told).toEqual({ name: 'Dr Ahorn', phone: '01632 960017' });
    expect(history.map(({ words, struck }) => [words, struck])).toEqual([
      ['Weigh every 20 days', 'mistap'],
      ['vet: Dr Ahorn, 01632 960017', undefined],
    ]);
  });
});
