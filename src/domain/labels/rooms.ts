import type { LabelFormat } from './format.ts';
import { CAP_HEIGHT } from './text-width.ts';

/** From the label's edge to the QR code's quiet zone, which is white itself. Unit: mm. */
export const QR_INSET_MM = 0.5;

/** Type size of the code as text: capitals of 3 mm, read at half a metre. Unit: mm. */
export const CODE_TYPE_MM = 3 / CAP_HEIGHT;

/** Room under a QR code for that line of text. Unit: mm. */
export const CODE_BAND_MM = CODE_TYPE_MM + 0.5;

/** Capitals of 5.8 mm: 20 minutes of arc at 1 m. Unit: mm of type. Source: ISO 9241-3. */
export const METRE_TYPE_MM = 5.8 / CAP_HEIGHT;

/** From one ruled line to the next, for a pencil. Unit: mm. */
export const NOTE_ROW_MM = 8;

/** From the label's edge to any text, so that a print slightly off loses none. Unit: mm. */
export const insetOf = ({ label }: LabelFormat): number =>
  Math.min(3, Math.max(1.2, label.height * 0.05));

/** Tall labels carry their headline above the QR code, the others beside it. */
export const isTall = ({ label }: LabelFormat): boolean => label.height > label.width;

/** Height above the QR code that a tall label keeps for its headline, edge included. Unit: mm. */
export const bannerMm = (format: LabelFormat): number =>
  isTall(format) ? insetOf(format) + format.label.height * 0.16 : 0;
