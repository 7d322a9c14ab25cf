import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { LABEL_FORMATS } from '../../../src/domain/labels/formats.ts';
import { layoutLabel, type LabelLayout } from '../../../src/domain/labels/layout.ts';
import {
  boxOfText,
  type BoxMm,
  type PlacedQr,
  type PlacedText,
} from '../../../src/domain/labels/placed.ts';
import { groupedCode } from '../../../src/domain/labels/subject.ts';
import { CAP_HEIGHT } from '../../../src/domain/labels/text-width.ts';
import { animal, anySubject, tub } from './make.ts';

const SLACK_MM = 1e-6;

const LINKS = [undefined, 'https://a.example/', 'https://keeper.example/some/longer/path/'];

const qrOf = ({ placed }: LabelLayout) =>
  placed.find((mark): mark is PlacedQr => mark.kind === 'qr')!;
const textsOf = ({ placed }: LabelLayout) =>
  placed.filter((mark): mark is PlacedText => mark.kind === 'text');

/** The dark square, with as many modules of white around it. */
function boxOfQr({ x, y, modules, moduleMm }: PlacedQr, white: number): BoxMm {
  const side = (modules + 2 * white) * moduleMm;
  return { x: x - white * moduleMm, y: y - white * moduleMm, width: side, height: side };
}

const inside = (box: BoxMm, { width, height }: { width: number; height: number }) =>
  box.x >= -SLACK_MM &&
  box.y >= -SLACK_MM &&
  box.x + box.width <= width + SLACK_MM &&
  box.y + box.height <= height + SLACK_MM;

const apart = (a: BoxMm, b: BoxMm) =>
  a.x + a.width <= b.x + SLACK_MM ||
  b.x + b.width <= a.x + SLACK_MM ||
  a.y + a.height <= b.y + SLACK_MM ||
  b.y + b.height <= a.y + SLACK_MM;

describe.each(LABEL_FORMATS)('$paper, $name', (format) => {
  test('whatever the words, nothing leaves the label or touches anything else', () => {
    fc.assert(
      fc.property(anySubject, fc.constantFrom(...LINKS), (subject, linkBase) => {
        const layout = layoutLabel(subject, format, linkBase);
        // Source: ISO/IEC 18004:2015, 6.3.8: four modules of white on every side.
        const quiet = boxOfQr(qrOf(layout), 4);
        expect(inside(quiet, format.label)).toBe(true);
        const boxes = textsOf(layout).map(boxOfText);
        for (const [i, box] of boxes.entries()) {
          expect(inside(box, format.label)).toBe(true);
          expect(apart(box, quiet)).toBe(true);
          for (const other of boxes.slice(i + 1)) expect(apart(box, other)).toBe(true);
        }
      }),
      { numRuns: 25 },
    );
  });

  test('the code stands beside its QR code, large enough to be typed from at half a metre', () => {
    for (const subject of [tub(), animal()]) {
      const line = textsOf(layoutLabel(subject, format, undefined)).find(
        ({ text }) => text === groupedCode(subject.code),
      );
      // Source: ISO 9241-3: 16 minutes of arc at least, which at 0.45 m is 2.1 mm.
      expect(line!.size * CAP_HEIGHT).toBeGreaterThanOrEqual(2.05);
    }
  });

  // Source: ISO 9241-3: 20 minutes of arc, which at 1 m is 5.8 mm.
  test('a position is read at a metre', () => {
    const line = textsOf(layoutLabel(tub(), format, undefined)).find(({ text }) => text === 'B4-2');
    expect(line!.size * CAP_HEIGHT).toBeGreaterThanOrEqual(5.8);
  });

  test('a plain code has modules of half a millimetre or more', () => {
    expect(qrOf(layoutLabel(tub(), format, undefined)).moduleMm).toBeGreaterThanOrEqual(0.5);
  });

  test('a link has so too, wherever the label is high enough; else 0.4 mm; else it is left out', () => {
    for (const linkBase of LINKS.slice(1)) {
      const layout = layoutLabel(tub(), format, linkBase);
      const { modules, moduleMm } = qrOf(layout);
      const half = Math.ceil(0.5 / format.dotMm - 1e-9) * format.dotMm;
      const fitsAtHalf = (modules + 8) * half <= format.label.height - 1;
      expect(moduleMm).toBeGreaterThanOrEqual(fitsAtHalf ? 0.5 : 0.4);
    }
  });

  test('on a roll every edge of the code falls on a printer dot', () => {
    if (format.paper !== 'roll') return;
    for (const linkBase of LINKS) {
      const { x, y, moduleMm } = qrOf(layoutLabel(tub(), format, linkBase));
      for (const mm of [x, y, moduleMm]) expect((mm * 8) % 1).toBeCloseTo(0, 9);
    }
  });
});

test('a link too long for a label gives way to the plain code, and says so', () => {
  const smallest = LABEL_FORMATS[0]!;
  const base = `https://keeper.example/${'long/'.repeat(12)}`;
  expect(layoutLabel(tub(), smallest, base).holds).toBe('code');
  expect(layoutLabel(tub(), smallest, 'https://a.example/').holds).toBe('link');
});

test('long words are cut with an ellipsis, and the first lines matter most', () => {
  const smallest = LABEL_FORMATS[0]!;
  const texts = textsOf(
    layoutLabel(tub({ title: 'Superlong'.repeat(9), lines: ['never seen'] }), smallest, undefined),
  ).map(({ text }) => text);
  expect(texts.some((text) => text.endsWith('…'))).toBe(true);
  expect(texts).not.toContain('never seen');
});
