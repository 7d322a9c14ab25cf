import {
  hasDecimalComma,
  inBase,
  readAmount,
  unitInHeading,
  unitsOf,
  type Measured,
  type Unit,
} from './amount.ts';

/** In which unit a column is written, and what says so. */
export interface UnitGuess {
  readonly unit: Unit;
  readonly because: string;
  /** It may as well be another: the keeper is asked. */
  readonly isOpen: boolean;
}

/** What snakes and their rooms come to, wide on purpose. Source: weightSlips for mass. */
const LIKELY: { readonly [Kind in Measured]: readonly [number, number] } = {
  mass: [30, 4_500],
  length: [20, 200],
  warmth: [10, 45],
};
const NEARLY_ALL = 0.9;
/** A heading is believed against a few slips below it. */
const MOST = 0.5;

const count = (n: number): string => n.toLocaleString('en');

/** Undefined: no cell of the column is an amount. */
export function guessUnit(
  heading: string,
  cells: readonly string[],
  kind: Measured,
): UnitGuess | undefined {
  const comma = hasDecimalComma(cells);
  const amounts = cells.flatMap((cell) => readAmount(cell, kind, comma) ?? []);
  if (amounts.length === 0) return undefined;
  const said = new Map<Unit, number>();
  for (const { unit } of amounts) if (unit) said.set(unit, (said.get(unit) ?? 0) + 1);
  const bare = amounts.flatMap(({ value, unit }) => (unit === undefined ? [value] : []));
  const share = (unit: Unit): number => {
    const [low, high] = LIKELY[kind];
    const inside = bare.filter((value) => {
      const base = inBase(kind, value, unit);
      return base >= low && base <= high;
    });
    return bare.length === 0 ? 1 : inside.length / bare.length;
  };
  const fits = (unit: Unit): boolean => share(unit) >= NEARLY_ALL;
  const [mostSaid] = [...said].toSorted((a, b) => b[1] - a[1]);
  const inHeading = unitInHeading(heading, kind);
  if (inHeading !== undefined)
    return byHeading(inHeading, mostSaid, amounts.length, share(inHeading) >= MOST);
  if (bare.length === 0 && mostSaid) {
    return { unit: mostSaid[0], because: 'Each value says its unit itself.', isOpen: false };
  }
  const also = mostSaid ? ` ${count(mostSaid[1])} say ${mostSaid[0]} themselves.` : '';
  const span = `${count(Math.min(...bare))} to ${count(Math.max(...bare))}`;
  const likely = unitsOf[kind].map(({ unit }) => unit).filter(fits);
  const [first = unitsOf[kind][0]?.unit ?? 'g', second] = likely;
  if (likely.length === 1) {
    return { unit: first, because: `${span}: only ${first} fits.${also}`, isOpen: false };
  }
  return second === undefined
    ? { unit: first, because: `${span} fits no unit known here.${also}`, isOpen: true }
    : {
        unit: first,
        because: `${span} may be ${likely.join(' or ')}; nothing says which.${also}`,
        isOpen: true,
      };
}

function byHeading(
  unit: Unit,
  mostSaid: readonly [Unit, number] | undefined,
  amounts: number,
  isLikely: boolean,
): UnitGuess {
  if (mostSaid && mostSaid[0] !== unit && isLikely) {
    return {
      unit,
      because: `The heading says ${unit}, but ${count(mostSaid[1])} of ${count(amounts)} values say ${mostSaid[0]}: those are read as they say.`,
      isOpen: false,
    };
  }
  return isLikely
    ? { unit, because: `The heading says ${unit}.`, isOpen: false }
    : {
        unit,
        because: `The heading says ${unit}, but most values are not likely in ${unit}.`,
        isOpen: true,
      };
}
