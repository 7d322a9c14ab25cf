import { describe, expect, test } from 'vitest';
import { aboutValue, known, protocolWith } from '../../../src/domain/protocol/own-protocol.ts';
import { refusalsOf } from '../../../src/domain/protocol/refuse-changes.ts';
import { choiceOf } from '../../../src/domain/protocol/school-choice.ts';
import { schools } from '../../../src/domain/protocol/schools.ts';
import { valueGroups } from '../../../src/domain/protocol/value-groups.ts';
import { showRange, showValue } from '../../../src/domain/protocol/value-words.ts';
import { defaultProtocol, protocolValues } from '../../../src/domain/protocol/values.ts';
import { sources } from '../../../src/domain/sources.ts';
import { applyToHouse } from '../../../src/domain/state/house.ts';
import { HOUSE } from '../../../src/domain/core/ids.ts';
import { anEvent, nightsAgo } from '../../make.ts';

const [strict, middle, permissive] = schools;
if (!strict || !middle || !permissive) throw new Error('Three schools are expected.');

describe('each school', () => {
  test.each(schools)('$name says what it is, and where it comes from', ({ says, source }) => {
    expect(says).toMatch(/\.$/);
    expect(sources[source].cite).not.toBe('');
  });

  test.each(schools)(
    '$name sets numbers that are in use, and none against another',
    ({ values }) => {
      for (const [key, value] of known(values)) {
        const { from, to } = aboutValue(key);
        expect([key, value]).toEqual([key, Math.min(to, Math.max(from, value ?? Number.NaN))]);
      }
      expect(refusalsOf({}, values)).toEqual([]);
      expect(protocolWith(values)).toEqual({ ...defaultProtocol, ...values });
    },
  );

  test('the middle one is the defaults', () => {
    expect(protocolWith(middle.values)).toEqual(defaultProtocol);
  });

  test.each([
    // Common practice, no source: lighter, younger, longer together, less rest is the permissive side.
    ['femaleFromG', 'less'],
    ['femaleFromMonths', 'less'],
    ['maleFromG', 'less'],
    ['maleFromMonths', 'less'],
    ['maleStayDays', 'more'],
    ['maleRestDays', 'less'],
    ['mealToPairingDays', 'less'],
    ['maleLossWatchShare', 'more'],
    ['maleLossStopShare', 'more'],
  ] as const)(
    'of %s the permissive one has %s than the middle, the strict one not',
    (key, more) => {
      const side = more === 'more' ? 1 : -1;
      const offMiddle = [strict, permissive].map(({ values }) =>
        Math.sign((values[key] ?? Number.NaN) - defaultProtocol[key]),
      );
      expect(offMiddle).toEqual([-side, side]);
    },
  );
});

describe('choosing a school', () => {
  const own = anEvent('protocol-set', { values: { maleStayDays: 2 }, at: nightsAgo(9) });
  const house = (...events: Parameters<typeof applyToHouse>[1]) =>
    applyToHouse(undefined, events, HOUSE);

  test('sets all it has, where nothing was set', () => {
    expect(choiceOf(strict, undefined)).toEqual({ sets: strict.values, keeps: [] });
    expect(choiceOf(middle, undefined)).toEqual({ sets: {}, keeps: [] });
  });

  test('leaves the keeper’s own number, and tells both', () => {
    const { sets, keeps } = choiceOf(strict, house(own));
    expect(sets).not.toHaveProperty('maleStayDays');
    expect(keeps).toEqual([{ key: 'maleStayDays', own: 2, school: 1 }]);
  });

  test('puts the numbers of the school before it back, and the keeper’s own stay', () => {
    const { sets } = choiceOf(strict, house(own));
    const follows = anEvent('protocol-set', { values: sets, school: 'strict', at: nightsAgo(8) });
    const back = choiceOf(middle, house(own, follows));
    expect(back.keeps).toEqual([{ key: 'maleStayDays', own: 2, school: 3 }]);
    const returns = anEvent('protocol-set', { values: back.sets, school: 'middle' });
    const { own: left, school } = house(own, follows, returns);
    expect(Object.keys(left)).toEqual(['maleStayDays']);
    expect(school).toBe('middle');
  });

  test('has nothing left to set once it is followed', () => {
    const { sets } = choiceOf(permissive, undefined);
    const follows = anEvent('protocol-set', { values: sets, school: 'permissive' });
    expect(choiceOf(permissive, house(follows))).toEqual({ sets: {}, keeps: [] });
  });
});

test('every value stands under one heading', () => {
  const grouped = valueGroups.flatMap(({ keys }) => keys);
  expect(grouped.toSorted()).toEqual(Object.keys(protocolValues).toSorted());
});

test.each([
  [showValue(1, 'days'), '1 day'],
  [showValue(12, 'o’clock'), '12 o’clock'],
  [showValue(0.07, 'share'), '7 %'],
  [showValue(0.05, 'share of body mass'), '5 % of body mass'],
  [showValue(1_500, 'g'), '1,500\u00A0g'],
  [showValue(31.5, '°C'), '31.5 °C'],
  [showValue(10, 'month'), 'October'],
  [showRange(7, 10, 'days'), '7–10 days'],
  [showRange(0.03, 0.05, 'share'), '3–5 %'],
])('a value is told as %s', (told, expected) => {
  expect(told).toBe(expected);
});
