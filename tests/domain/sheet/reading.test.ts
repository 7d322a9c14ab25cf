import { describe, expect, test } from 'vitest';
import { contradictionIn, inBase, readAmount } from '../../../src/domain/sheet/amount.ts';
import { guessUnit } from '../../../src/domain/sheet/column-unit.ts';
import { guessOrder } from '../../../src/domain/sheet/day-order.ts';
import { readDay } from '../../../src/domain/sheet/day.ts';
import {
  happeningIn,
  isBlank,
  outcomeIn,
  preyIn,
  sexIn,
  shedIn,
} from '../../../src/domain/sheet/trade-text.ts';

const placed = (texts: readonly string[]) => texts.map((text, i) => ({ text, line: i + 2 }));

describe('an amount in a cell', () => {
  test.each([
    ['1640', { value: 1640 }],
    ['1640 g', { value: 1640, unit: 'g' }],
    ['1,640', { value: 1640 }],
    ['1.640,5 g', { value: 1640.5, unit: 'g' }],
    ['1 640', { value: 1640 }],
    ['58 oz', { value: 58, unit: 'oz' }],
    ['3 lb 10 oz', { value: 58, unit: 'oz' }],
    ['3lbs 10oz.', { value: 58, unit: 'oz' }],
    ['1640 g (58 oz)', { value: 1640, unit: 'g', again: { value: 58, unit: 'oz' } }],
    ['about', undefined],
    ['1640 cm', undefined],
    ['12/3', undefined],
    ['', undefined],
  ])('%s', (text, read) => {
    expect(readAmount(text, 'mass', false)).toEqual(read);
  });

  test('a comma is a point where the column writes tenths with one', () => {
    expect(readAmount('62,5', 'mass', false)?.value).toBe(62.5);
    expect(readAmount('1,640', 'mass', true)?.value).toBe(1.64);
  });

  // NIST SP 811 (2008), Appendix B.8: 1 oz = 28.34952 g, 1 lb = 453.5924 g, t/°C = (t/°F − 32)/1.8.
  test('is taken over by the exact factors', () => {
    expect(inBase('mass', 1, 'oz')).toBeCloseTo(28.34952, 5);
    expect(inBase('mass', 1, 'lb')).toBeCloseTo(453.5924, 4);
    expect(inBase('warmth', 86, '°F')).toBeCloseTo(30, 10);
    expect(inBase('length', 10, 'in')).toBeCloseTo(25.4, 10);
  });

  test('that is said twice must be the same twice', () => {
    const said = (text: string, kind: 'mass' | 'warmth') =>
      contradictionIn(readAmount(text, kind, false)!, kind);
    expect(said('30 °C (90 °F)', 'warmth')).toBe('30 °C is 86 °F, not 90');
    expect(said('30 °C (86 °F)', 'warmth')).toBeUndefined();
    expect(said('1640 g (58 oz)', 'mass')).toBeUndefined();
    expect(said('1640 g / 85 oz', 'mass')).toBe('1640 g is 57.8 oz, not 85');
  });
});

describe('the unit of a column', () => {
  test.each([
    ['the heading says it', 'Weight (oz)', ['50', '58'], 'oz', false],
    ['each value says it', 'Weight', ['50 oz', '58 oz'], 'oz', false],
    ['only one fits', 'Weight', ['1640', '900', '62'], 'g', false],
    ['young ones in grams, or grown ones in ounces', 'Weight', ['40', '58', '95'], 'g', true],
    ['ounces of young ones, pounds or kilograms', 'Weight', ['1.6', '2.2', '3.1'], 'oz', true],
    ['a heading that cannot be', 'Weight (g)', ['1.6', '2.2', '3.1'], 'g', true],
    ['a heading with a few slips below it', 'Weight (g)', ['1640', '164', '16'], 'g', false],
  ])('%s', (_what, heading, cells, unit, isOpen) => {
    expect(guessUnit(heading, cells, 'mass')).toMatchObject({ unit, isOpen });
  });

  test('degrees Fahrenheit are not taken for Celsius, whatever the heading leaves out', () => {
    expect(guessUnit('Temp', ['79', '82', '88'], 'warmth')).toMatchObject({
      unit: '°F',
      isOpen: false,
    });
    expect(guessUnit('Temp', ['26', '31'], 'warmth')).toMatchObject({ unit: '°C', isOpen: false });
    expect(guessUnit('Temp °C', ['79', '82', '88'], 'warmth')).toMatchObject({ isOpen: true });
  });
});

describe('the order of dates', () => {
  test('one date over twelve says it for all', () => {
    expect(guessOrder(placed(['1/2/2024', '31/12/2024']))).toMatchObject({
      order: 'day first',
      isOpen: false,
      because: '“31/12/2024” on line 3 can only be day first.',
    });
    expect(guessOrder(placed(['12/31/24', '1/2/24']))).toMatchObject({
      order: 'month first',
      isOpen: false,
    });
  });

  test('where nothing says it, or two say otherwise, it is asked', () => {
    expect(guessOrder(placed(['1/2/2024', '3/4/2024'])).isOpen).toBe(true);
    const both = guessOrder(placed(['31/12/2024', '12/31/2024']));
    expect(both.isOpen).toBe(true);
    expect(both.because).toContain('can only be day first');
    expect(both.because).toContain('only month first');
  });

  test('dots, ISO dates and months in words need no question', () => {
    expect(guessOrder(placed(['1.2.2024', '3.4.2024'])).isOpen).toBe(false);
    expect(guessOrder(placed(['2024-02-01', '3 Apr 2024']))).toMatchObject({
      isOpen: false,
      matters: false,
    });
  });

  test('real dates of the first twelve days beside text of later ones look swapped', () => {
    const real = [
      '2024-02-01',
      '2024-03-05',
      '2024-07-11',
      '2024-01-12',
      '2024-09-02',
      '2024-05-06',
    ];
    const column = placed(['31/12/2024', ...real]);
    expect(guessOrder(column)).toMatchObject({ looksSwapped: true, isOpen: true });
    expect(guessOrder(placed(['31/12/2024', ...real, '2024-05-20'])).looksSwapped).toBe(false);
  });
});

describe('a day in a cell', () => {
  const dayFirst = { order: 'day first', swapped: false } as const;
  test.each([
    ['4/3/24', { day: '2024-03-04', againstOrder: false }],
    ['2024-03-04', { day: '2024-03-04', againstOrder: false }],
    ['4 March 2024', { day: '2024-03-04', againstOrder: false }],
    ['Mon, 4 Mar 2024', { day: '2024-03-04', againstOrder: false }],
    ['Mar 4, 2024', { day: '2024-03-04', againstOrder: false }],
    ['4.3.2024 21:10', { day: '2024-03-04', clockMs: 76_200_000, againstOrder: false }],
    ['12/31/2024', { day: '2024-12-31', againstOrder: true }],
    // A day count that a program left in the text: 45355 is 4 March 2024.
    ['45355', { day: '2024-03-04', againstOrder: false }],
    ['31/2/2024', undefined],
    ['2024', undefined],
    ['last week', undefined],
  ])('%s', (text, day) => {
    expect(readDay(text, dayFirst)).toEqual(day);
  });

  test('a real date has day and month changed back where that was said', () => {
    const swapped = { ...dayFirst, swapped: true };
    expect(readDay('2024-03-04', swapped)?.day).toBe('2024-04-03');
    expect(readDay('4/3/2024', swapped)?.day).toBe('2024-03-04');
  });
});

describe('words of the trade', () => {
  test('meals, with what was not said left open', () => {
    expect(preyIn('2 x small rats F/T')).toEqual({
      kind: 'rat',
      size: 'small',
      eachG: 65,
      count: 2,
      state: 'thawed',
    });
    expect(preyIn('live hopper mouse')).toMatchObject({
      kind: 'mouse',
      size: 'hopper',
      state: 'live',
    });
    expect(preyIn('rat 45 g')).toMatchObject({ kind: 'rat', size: 'unsized', eachG: 45, count: 1 });
    expect(preyIn('hopper')).toMatchObject({ kind: 'other', size: 'hopper' });
    expect(preyIn('quail egg')).toMatchObject({ kind: 'other', size: 'quail egg' });
    expect(preyIn('')).toMatchObject({ kind: 'other', size: 'meal', count: 1 });
  });

  test.each([
    ['ate', 'ate'],
    ['Y', 'ate'],
    ['REFUSED', 'refused'],
    ['did not eat', 'refused'],
    ['left overnight', 'left'],
    ['half', 'partly'],
    ['hm', undefined],
  ])('%s is %s', (text, outcome) => {
    expect(outcomeIn(text)).toBe(outcome);
  });

  test('sexes, sheds, happenings and cells that say nothing', () => {
    expect(['F', '1.0', '♀', 'hembra'].map(sexIn)).toEqual(['female', 'male', 'female', undefined]);
    expect(['whole', 'eye caps stuck', 'in pieces'].map(shedIn)).toEqual([
      'whole',
      'caps left',
      'pieces',
    ]);
    expect(['Weight', 'Fed', 'Refused meal', 'in blue', 'Shed'].map(happeningIn)).toEqual([
      'weight',
      'meal',
      'refusal',
      'blue',
      'shed',
    ]);
    expect(['', ' - ', 'n/a', '0'].map(isBlank)).toEqual([true, true, true, false]);
  });
});
