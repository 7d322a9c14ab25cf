import { LABEL_CODES, labelCode } from '../../src/domain/core/code.ts';
import type { LabelSubject } from '../../src/domain/labels/subject.ts';

const MORPHS = ['Normal', 'Pastel', 'Clown het Pied', 'Banana Pastel 66 % het Clown', 'Enchi Fire'];

const code = (n: number) => labelCode((n * 982_451_653) % LABEL_CODES);

/** A tub and an animal for each of `count`, with codes far apart from each other. */
export function subjectsFor(count: number): readonly LabelSubject[] {
  const pairs = Array.from({ length: count }, (_, i): readonly LabelSubject[] => {
    const morph = MORPHS[i % MORPHS.length] ?? '';
    const sex = i % 3 === 0 ? 'Male' : 'Female';
    return [
      {
        code: code(2 * i + 1),
        kind: 'tub',
        position: `${'ABCDEF'.charAt(i / 12)}${(Math.floor(i / 3) % 4) + 1}-${(i % 3) + 1}`,
        title: `Adult rack, ${i % 2 ? 'lower' : 'upper'} half`,
        lines: ['Tub 12 litres', 'Heat 32 °C'],
      },
      {
        code: code(2 * i + 2),
        kind: 'animal',
        title: `26-${String(i + 1).padStart(3, '0')} Éloïse`,
        lines: [morph, `${sex}, hatched 2026-08-14`, 'Dam 22-004 × sire 21-117'],
      },
    ];
  });
  return pairs.flat();
}
