import type { Picture } from '../picture/picture.ts';
import type { Clutch } from '../state/clutch.ts';
import type { Incubator } from '../state/incubator.ts';

export const clutchesIn = ({ ledger }: Picture): readonly Clutch[] =>
  [...ledger.subjects.values()]
    .flatMap((each) => ('kind' in each && each.kind === 'clutch' ? [each] : []))
    .toSorted((a, b) => (a.id < b.id ? -1 : 1));

export function incubatorsIn({ ledger }: Picture): readonly Incubator[] {
  return [...ledger.subjects.values()]
    .flatMap((each) => ('kind' in each && each.kind === 'incubator' ? [each] : []))
    .toSorted((a, b) => (a.id < b.id ? -1 : 1));
}
