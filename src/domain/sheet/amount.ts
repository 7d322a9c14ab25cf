import { celsiusOf, GRAMS_PER_OUNCE, GRAMS_PER_POUND, MM_PER_INCH } from '../core/units.ts';

/** What is measured: each in its own unit inside, whatever the file is written in. */
export type Measured = 'mass' | 'length' | 'warmth';

export type Unit = 'g' | 'kg' | 'oz' | 'lb' | 'cm' | 'in' | '°C' | '°F';

interface UnitOf {
  readonly unit: Unit;
  /** As it stands behind a number or in a heading. */
  readonly written: RegExp;
  /** In grams, centimetres or degrees Celsius. */
  readonly base: (value: number) => number;
}

/** In the order in which they are offered. */
export const unitsOf: { readonly [Kind in Measured]: readonly UnitOf[] } = {
  mass: [
    { unit: 'g', written: /^(?:g|gr|gms?|grams?)$/i, base: (value) => value },
    { unit: 'oz', written: /^(?:oz|ounces?)$/i, base: (value) => value * GRAMS_PER_OUNCE },
    { unit: 'lb', written: /^(?:lbs?|pounds?)$/i, base: (value) => value * GRAMS_PER_POUND },
    { unit: 'kg', written: /^(?:kgs?|kilos?|kilograms?)$/i, base: (value) => value * 1_000 },
  ],
  length: [
    { unit: 'cm', written: /^(?:cms?|centimet(?:er|re)s?)$/i, base: (value) => value },
    {
      unit: 'in',
      written: /^(?:in|inch|inches|"|”|″)$/i,
      base: (value) => (value * MM_PER_INCH) / 10,
    },
  ],
  warmth: [
    { unit: '°C', written: /^(?:[°º]\s?)?c(?:elsius)?$/i, base: (value) => value },
    { unit: '°F', written: /^(?:[°º]\s?)?f(?:ahrenheit)?$/i, base: celsiusOf },
  ],
};

export const inBase = (kind: Measured, value: number, unit: Unit): number =>
  unitsOf[kind].find((each) => each.unit === unit)?.base(value) ?? value;

/** Units that can be chosen for a column. */
export const unitsFor = (kind: Measured): readonly Unit[] => unitsOf[kind].map(({ unit }) => unit);

/** An amount as it stands in a cell. */
export interface Written {
  readonly value: number;
  /** Absent: the cell does not say. */
  readonly unit?: Unit | undefined;
  /** The same once more, as in `30 °C (86 °F)`. */
  readonly again?: { readonly value: number; readonly unit: Unit } | undefined;
}

const NUMBER = /^[~≈]?\s*([+-]?\d(?:[\d.,'’\s]*\d)?)\s*(.*)$/s;

/**
 * An amount with its unit or without, also `3 lb 4 oz`, and one that is said twice.
 *
 * Undefined: not understood.
 */
export function readAmount(
  text: string,
  kind: Measured,
  commaIsPoint: boolean,
): Written | undefined {
  const [, digits = '', rest = ''] = NUMBER.exec(text.trim()) ?? [];
  const value = digits === '' ? undefined : readDigits(digits, commaIsPoint);
  if (value === undefined) return undefined;
  const [, word = '', tail = ''] = /^([^\d(/=,;]*)(.*)$/s.exec(rest) ?? [];
  const unit = unitNamed(word, kind);
  if (word.trim() !== '' && unit === undefined) return undefined;
  const more = tail.replaceAll(/^[\s(/=,;]+|[\s)]+$/g, '');
  if (more === '') return { value, unit };
  const second = readAmount(more, kind, commaIsPoint);
  if (second?.unit === undefined) return undefined;
  if (unit === 'lb' && second.unit === 'oz' && !/^\s*[(/=]/.test(tail)) {
    return { value: value * 16 + second.value, unit: 'oz', again: second.again };
  }
  return { value, unit, again: { value: second.value, unit: second.unit } };
}

function unitNamed(word: string, kind: Measured): Unit | undefined {
  const bare = word.trim().replace(/\.$/, '');
  return unitsOf[kind].find(({ written }) => written.test(bare))?.unit;
}

/** The unit that a heading names, as in `Weight (g)` or `temp °F`. */
export function unitInHeading(heading: string, kind: Measured): Unit | undefined {
  const words = heading.split(/[\s()[\],;:/_.-]+/).filter((word) => word !== '');
  for (const word of words) {
    const unit = unitNamed(word, kind);
    if (unit !== undefined) return unit;
  }
  return undefined;
}

/** Whether numbers of a column are written with a decimal comma: one with one or two digits behind. */
export const hasDecimalComma = (cells: Iterable<string>): boolean =>
  Array.from(cells).some((cell) => /\d,\d{1,2}(?!\d)/.test(cell));

function readDigits(written: string, commaIsPoint: boolean): number | undefined {
  const text = written.replaceAll(/['’\s]/g, '');
  const [comma, point] = [text.lastIndexOf(','), text.lastIndexOf('.')];
  const isThousands = (mark: string) =>
    new RegExp(`^[+-]?\\d{1,3}(?:\\${mark}\\d{3})+$`).test(text);
  const value =
    comma >= 0 && point >= 0
      ? comma > point
        ? text.replaceAll('.', '').replace(',', '.')
        : text.replaceAll(',', '')
      : comma >= 0
        ? !commaIsPoint && isThousands(',')
          ? text.replaceAll(',', '')
          : text.replace(',', '.')
        : text.indexOf('.') !== point && isThousands('.')
          ? text.replaceAll('.', '')
          : text;
  const number = Number(value);
  return Number.isFinite(number) ? number : undefined;
}

/** How far two ways to say the same may lie apart, being rounded. */
const isSame = (kind: Measured, one: number, other: number): boolean =>
  kind === 'warmth' ? Math.abs(one - other) <= 0.6 : Math.abs(one - other) <= 0.03 * one;

/** What is wrong with an amount that is said twice; undefined where both are the same. */
export function contradictionIn(
  { value, unit, again }: Written,
  kind: Measured,
): string | undefined {
  if (unit === undefined || again === undefined) return undefined;
  const [one, other] = [inBase(kind, value, unit), inBase(kind, again.value, again.unit)];
  if (isSame(kind, one, other)) return undefined;
  const really = inUnit(kind, one, again.unit);
  return `${value} ${unit} is ${really} ${again.unit}, not ${again.value}`;
}

function inUnit(kind: Measured, base: number, unit: Unit): number {
  const [none, each] = [inBase(kind, 0, unit), inBase(kind, 1, unit)];
  return Math.round(((base - none) / (each - none)) * 10) / 10;
}
