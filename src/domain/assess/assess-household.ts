import type { Draft } from '../events/event.ts';
import type { Picture } from '../picture/picture.ts';
import { aboutValue } from '../protocol/own-protocol.ts';
import { refusalsOf, unusualIn } from '../protocol/refuse-changes.ts';
import { valueReasons } from '../protocol/value-reasons.ts';
import { showRange, showValue } from '../protocol/value-words.ts';
import { ownNumbers } from '../state/house.ts';
import { noObjection, type Verdict } from './doubt.ts';

type Set = Extract<Draft, { type: 'protocol-set' }>;
type Stated = Extract<Draft, { type: 'vet-stated' }>;

/** Objections to numbers of the keeper’s own. */
export function assessProtocol({ values }: Set, picture: Picture): Verdict {
  const refusals = refusalsOf(ownNumbers(picture.house()), values);
  const doubts = unusualIn(values).map((key) => {
    const { name } = valueReasons[key];
    const { unit, from, to } = aboutValue(key);
    const own = showValue(values[key] ?? 0, unit);
    return {
      code: `unusual-${key}`,
      message: `${name} ${own}: most keep ${showRange(from, to, unit)}. Sure?`,
    };
  });
  return { refusals, doubts, notes: [] };
}

/** The shortest numbers one can ring, those of emergency services, have three digits. */
const LEAST_DIGITS = 3;

export function assessVet({ phone }: Stated): Verdict {
  const digits = phone.replace(/\D/g, '').length;
  if (digits >= LEAST_DIGITS) return noObjection;
  return {
    refusals: [
      { code: 'no-number', message: `“${phone}” is no telephone number: it has ${digits} digits.` },
    ],
    doubts: [],
    notes: [],
  };
}
