import { chooseQr, type ChosenQr } from './choose-qr.ts';
import { oneLineSize } from './fit-text.ts';
import type { LabelFormat } from './format.ts';
import type { BoxMm, Placed, PlacedLine, PlacedQr, PlacedText } from './placed.ts';
import { QUIET_MODULES, quietSide } from './qr.ts';
import {
  bannerMm,
  CODE_TYPE_MM,
  insetOf,
  isTall,
  METRE_TYPE_MM,
  NOTE_ROW_MM,
  QR_INSET_MM,
} from './rooms.ts';
import { groupedCode, type LabelSubject } from './subject.ts';
import { placeHeadline, placeLine, placeParagraphs } from './text-block.ts';
import { textWidth } from './text-width.ts';

/** One label: what stands on it, all lengths in mm from its left upper corner. */
export interface LabelLayout {
  readonly placed: readonly Placed[];
  readonly holds: ChosenQr['holds'];
}

/**
 * Lays out one label: the QR code at the left with the code as text below or beside it; right of
 * them (on tall labels, above) the position or name as large as it goes, then title and lines.
 */
export function layoutLabel(
  subject: LabelSubject,
  format: LabelFormat,
  linkBase: string | undefined,
): LabelLayout {
  const { width, height } = format.label;
  const inset = insetOf(format);
  const chosen = chooseQr(subject, format, linkBase, bannerMm(format));
  const { qr, bottom, pencil } = placeQr(chosen, format);
  const right = qr.x + (qr.modules + QUIET_MODULES) * qr.moduleMm;
  const end = pencil ? Math.max(bottom, height * 0.55) : height - inset;
  const column: BoxMm = { x: right, y: inset, width: width - inset - right, height: end - inset };

  const code = placeCode(subject, chosen, qr, bottom, column);
  const codeRoom = chosen.codeBelow ? 0 : code.size * 1.1;
  const words = isTall(format)
    ? tallWords(subject, format, { ...column, y: qr.y, height: end - qr.y })
    : columnWords(subject, { ...column, height: column.height - codeRoom });
  return {
    placed: [
      qr,
      code,
      ...words.placed,
      ...(pencil ? pencilLines(format, Math.max(bottom, words.bottom)) : []),
    ],
    holds: chosen.holds,
  };
}

/**
 * The QR code on the printer's dots: under the banner where there is room for a pencil below it,
 * else halfway between the banner and the label's end. `bottom` is the end of what belongs to it.
 */
function placeQr({ qr, codeBelow }: ChosenQr, format: LabelFormat) {
  const banner = bannerMm(format);
  const { height } = format.label;
  const group = quietSide(qr) + (codeBelow ? CODE_TYPE_MM : 0);
  const pencil = height - banner - group - insetOf(format) > 2 * NOTE_ROW_MM;
  const top = pencil ? banner : (banner + height - group) / 2;
  const quiet = QUIET_MODULES * qr.moduleMm;
  const onDots = (mm: number) => Math.ceil(mm / format.dotMm - 1e-6) * format.dotMm;
  const placed: PlacedQr = {
    kind: 'qr',
    x: onDots(QR_INSET_MM + quiet),
    y: onDots(top + quiet),
    ...qr,
  };
  return { qr: placed, bottom: placed.y - quiet + group, pencil };
}

/** The code as text: under the middle of its QR code, or at the end of the column beside it. */
function placeCode(
  subject: LabelSubject,
  { codeBelow }: ChosenQr,
  { x, modules, moduleMm }: PlacedQr,
  bottom: number,
  column: BoxMm,
): PlacedText {
  const code = groupedCode(subject.code);
  // Hardly wider than the dark square, or it would run into the column; nor louder than its title.
  const room = codeBelow ? (modules + 4) * moduleMm : column.width * 0.88;
  const size = oneLineSize(code, room, CODE_TYPE_MM, true);
  if (!codeBelow) return placeLine(code, column.x, column.y + column.height - size, size, true);
  const left = x + (modules * moduleMm - textWidth(code, size, true)) / 2;
  return placeLine(code, left, bottom - CODE_TYPE_MM, size, true);
}

const headlineOf = ({ position, title }: LabelSubject) => position ?? title;

const paragraphsOf = ({ position, title, lines }: LabelSubject) => [
  ...(position === undefined ? [] : [{ text: title, bold: true }]),
  ...lines.map((text) => ({ text, bold: false })),
];

function tallWords(subject: LabelSubject, format: LabelFormat, column: BoxMm) {
  const inset = insetOf(format);
  const banner = {
    x: inset,
    y: inset,
    width: format.label.width - 2 * inset,
    height: bannerMm(format) - inset,
  };
  const headline = placeHeadline(headlineOf(subject), banner, subject.position !== undefined);
  const rest = placeParagraphs(paragraphsOf(subject), column, 6);
  return { placed: [...headline.placed, ...rest.placed], bottom: column.y + rest.height };
}

function columnWords(subject: LabelSubject, column: BoxMm) {
  const paragraphs = paragraphsOf(subject);
  const unbroken = subject.position !== undefined;
  const share = paragraphs.length === 0 ? 1 : 0.5;
  const least = unbroken ? METRE_TYPE_MM * 1.1 : 0;
  const height = Math.max(column.height * share, Math.min(column.height, least));
  const headline = placeHeadline(headlineOf(subject), { ...column, height }, unbroken);
  const taken = headline.height * 1.05;
  const below = { ...column, y: column.y + taken, height: column.height - taken };
  const rest = placeParagraphs(paragraphs, below, Math.max(3, column.height * 0.13));
  return { placed: [...headline.placed, ...rest.placed], bottom: below.y + rest.height };
}

/** Ruled lines from `top` to the label's end: keepers insist on some pencil space. */
function pencilLines(format: LabelFormat, top: number): readonly PlacedLine[] {
  const inset = insetOf(format);
  const { width, height } = format.label;
  const lines: PlacedLine[] = [];
  for (let y = height - inset; y - NOTE_ROW_MM >= top; y -= NOTE_ROW_MM) {
    lines.push({ kind: 'line', from: [inset, y], to: [width - inset, y], weight: 0.15 });
  }
  return lines;
}
