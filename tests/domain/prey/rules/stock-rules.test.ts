import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { RackEvent } from '../../../../src/domain/events/event.ts';
import { stockRules } from '../../../../src/domain/prey/rules/all.ts';
import type { StockRuleId } from '../../../../src/domain/prey/rules/stock-rule.ts';
import { sources } from '../../../../src/domain/sources.ts';
import { preyView } from '../../../../src/domain/views/prey-view.ts';
import { anEvent, aPicture, day, nightsAgo } from '../../../make.ts';

const note = (rule: StockRuleId, events: readonly RackEvent[]) =>
  preyView(4, aPicture(events)).notes.find((each) => each.rule === rule);

const stocked = (pieces: number, useBy = '2027-05-01') =>
  anEvent('prey-stocked', { pieces, useBy: day(useBy), at: nightsAgo(20) });

test('every rule has an id and a source of its own, and every rule file is listed', () => {
  expect(new Set(stockRules.map(({ id }) => id)).size).toBe(stockRules.length);
  for (const { source } of stockRules) expect(sources).toHaveProperty(source);
  const folder = new URL('../../../../src/domain/prey/rules/', import.meta.url);
  const files = readdirSync(folder).filter((file) => file.startsWith('rule-'));
  expect(files).toHaveLength(stockRules.length);
});

describe('[K1] more out than in', () => {
  const short = [stocked(4), anEvent('prey-thawed', { pieces: 6, at: nightsAgo(3) })];

  test('is asked about with the number of pieces, until they are counted', () => {
    expect(note('K1', short)).toMatchObject({ pieces: 2 });
    expect(note('K1', short)?.because.join(' ')).toContain('2 small rats');
    expect(note('K1', [...short, anEvent('prey-counted', { pieces: 3 })])).toBeUndefined();
  });

  test('a freezer that adds up asks nothing', () => {
    expect(note('K1', [stocked(6), anEvent('prey-thawed', { pieces: 6 })])).toBeUndefined();
  });
});

/** One that takes a small rat every eight days, as females do in the season. */
const eater = [
  anEvent('arrived', { sex: 'female', at: nightsAgo(90) }),
  anEvent('weighed', { massG: 1_500, at: nightsAgo(8) }),
  anEvent('meal-offered', { at: nightsAgo(8) }),
];

describe('[K2] running out', () => {
  test('is said some days before, and not while enough is there', () => {
    expect(note('K2', [...eater, stocked(1)])?.asks).toMatch(/small rat: enough for \d+ days?/);
    expect(note('K2', [...eater, stocked(20)])).toBeUndefined();
  });

  test('a size that nobody takes does not run out', () => {
    expect(note('K2', [stocked(1)])).toBeUndefined();
  });
});

describe('[K3] past its date', () => {
  test('is to be thrown away, and only what is past', () => {
    const events = [stocked(3, '2026-11-23'), stocked(5, '2026-11-24')];
    expect(note('K3', events)).toMatchObject({ pieces: 3 });
    const out = anEvent('prey-thrown-out', { pieces: 3, from: 'freezer' });
    expect(note('K3', [...events, out])).toBeUndefined();
  });
});

describe('[K4] fed and not taken out', () => {
  const fed = [...eater, stocked(20), anEvent('meal-offered', {})];

  test('is offered to be taken off, to the piece', () => {
    expect(note('K4', fed)).toMatchObject({ pieces: 1 });
    expect(note('K4', [...fed, anEvent('prey-thawed', { pieces: 1 })])).toBeUndefined();
  });

  test('a refused meal uses up nothing', () => {
    const refused = anEvent('meal-offered', { outcome: 'refused' });
    expect(note('K4', [...eater, stocked(20), refused])).toBeUndefined();
  });
});
