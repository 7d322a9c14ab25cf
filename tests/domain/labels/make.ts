import * as fc from 'fast-check';
import { LABEL_CODES, labelCode } from '../../../src/domain/core/code.ts';
import type { LabelSubject } from '../../../src/domain/labels/subject.ts';

/** A tub in the second position of the fourth shelf, with what differs. */
export const tub = (differing: Partial<LabelSubject> = {}): LabelSubject => ({
  code: labelCode(123_456_789),
  kind: 'tub',
  position: 'B4-2',
  title: 'Grow-on rack',
  lines: ['12 litres', 'Heat 32 °C'],
  ...differing,
});

/** An animal's card, which names no place, since it moves with the animal. */
export const animal = (differing: Partial<LabelSubject> = {}): LabelSubject => ({
  code: labelCode(987_654_321),
  kind: 'animal',
  title: '26-014C Mahogany',
  lines: ['Clown het Pied', 'Female, hatched 2026-08-14', 'Dam 22-004 × sire 21-117'],
  ...differing,
});

const words = fc.string({ unit: 'grapheme', maxLength: 60 });

/** Any subject, with words in any script and of any length, and often none at all. */
export const anySubject: fc.Arbitrary<LabelSubject> = fc
  .record({
    serial: fc.integer({ min: 0, max: LABEL_CODES - 1 }),
    position: fc.option(fc.stringMatching(/^[A-Z]{1,3}[1-9][0-9]?-[1-9][0-9]?$/), {
      nil: undefined,
    }),
    title: words,
    lines: fc.array(words, { maxLength: 6 }),
  })
  .map(({ serial, position, title, lines }) => ({
    code: labelCode(serial),
    kind: position === undefined ? ('animal' as const) : ('tub' as const),
    ...(position === undefined ? {} : { position }),
    title,
    lines,
  }));
