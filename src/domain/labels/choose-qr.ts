import type { LabelFormat } from './format.ts';
import { fitQr, GOOD_MODULE_MM, payloadOf, type QrSquare } from './qr.ts';
import { bannerMm, CODE_BAND_MM, QR_INSET_MM } from './rooms.ts';
import type { LabelSubject } from './subject.ts';

/** The QR code of a label, and where the code as text goes: under it, or else beside it. */
export interface ChosenQr {
  readonly qr: QrSquare;
  readonly codeBelow: boolean;
  /** `code` although a link was asked for: the link's QR code is too large for such labels. */
  readonly holds: 'code' | 'link';
}

// Shares of the label's width a QR code may take: half, or more where modules are small else.
const SHARES = [0.5, 0.62];

const ROOMY_MODULE_MM = 0.6; // The text goes below only where modules still are this large.

/**
 * The largest QR code that leaves room for what people read, below a banner of `takenMm`.
 *
 * A link that does not fit at 0.4 mm a module gives way to the plain code.
 *
 * Errors: throws when even that does not fit, which no format in `formats.ts` lets happen.
 */
export function chooseQr(
  { code }: LabelSubject,
  format: LabelFormat,
  linkBase: string | undefined,
  takenMm: number,
): ChosenQr {
  if (linkBase !== undefined) {
    const link = fitLabel(payloadOf(code, linkBase), format, takenMm);
    if (link) return { ...link, holds: 'link' };
  }
  const plain = fitLabel(payloadOf(code, undefined), format, takenMm);
  if (!plain) throw new Error(`No QR code fits a label of ${format.name}.`);
  return { ...plain, holds: 'code' };
}

function fitLabel(text: string, format: LabelFormat, takenMm: number) {
  const { width, height } = format.label;
  const free = height - takenMm - QR_INSET_MM;
  const fit = (roomMm: number) => fitQr(text, roomMm, format.dotMm, format.paper === 'roll');

  const under = fit(Math.min(width * (SHARES[0] ?? 0), free - CODE_BAND_MM));
  if (under && under.moduleMm >= ROOMY_MODULE_MM) return { qr: under, codeBelow: true };

  let best: QrSquare | undefined;
  for (const share of SHARES) {
    best = fit(Math.min(width * share, free - QR_INSET_MM));
    if (best && best.moduleMm >= GOOD_MODULE_MM) break;
  }
  return best && { qr: best, codeBelow: false };
}

/** Whether this format has room for a link. All codes are equally long, so one speaks for all. */
export const hasRoomForLink = (
  subject: LabelSubject,
  format: LabelFormat,
  linkBase: string,
): boolean => chooseQr(subject, format, linkBase, bannerMm(format)).holds === 'link';
