// The encoder is a pure function of its text, which is all the domain asks of a library.
import { encode } from 'uqr';
import type { LabelCode } from '../core/code.ts';

/** White around a QR code, in modules. Source: ISO/IEC 18004, quiet zone. */
export const QUIET_MODULES = 4;

/** Below this a phone at 12 to 15 cm fails too often. Unit: mm. Source: common practice. */
export const MIN_MODULE_MM = 0.4;

/** What we give a module whenever the label lets us. Unit: mm. Source: common practice. */
export const GOOD_MODULE_MM = 0.5;

/** More only takes room from the text: 33 mm read well at 30 cm. Unit: mm. */
const MAX_MODULE_MM = 1;

/** A QR code without its quiet zone: a path in module units, and how large a module is. */
export interface QrSquare {
  readonly modules: number;
  readonly moduleMm: number;
  readonly path: string;
}

/** What the QR code says: the code, or a link that ends in it, which any camera app can open. */
export const payloadOf = (code: LabelCode, linkBase: string | undefined): string =>
  linkBase === undefined ? code : `${linkBase}#/${code}`;

/**
 * The largest QR code for `text` that fits a square of `roomMm` with its quiet zone.
 *
 * Error level Q, since tubs get wet and scratched, or H where that costs no room. A sheet's codes
 * get version 2 if the room allows: its alignment pattern keeps apart what stands side by side.
 * Modules are whole printer dots (`dotMm`). Undefined when a module would be under 0.4 mm.
 */
export function fitQr(
  text: string,
  roomMm: number,
  dotMm: number,
  alone: boolean,
): QrSquare | undefined {
  const sized = (minVersion: number): QrSquare => {
    const { data, size } = encode(text, { ecc: 'Q', boostEcc: true, minVersion, border: 0 });
    const dots = Math.min(MAX_MODULE_MM, roomMm / (size + 2 * QUIET_MODULES)) / dotMm;
    // The small share is for rounding: a room of exactly four dots is not three.
    return { modules: size, moduleMm: Math.floor(dots + 1e-6) * dotMm, path: runs(data) };
  };
  const wide = sized(alone ? 1 : 2);
  const best = wide.moduleMm < GOOD_MODULE_MM ? sized(1) : wide;
  return best.moduleMm < MIN_MODULE_MM ? undefined : best;
}

/** Side of the QR code with its quiet zone, in mm. */
export const quietSide = ({ modules, moduleMm }: QrSquare): number =>
  (modules + 2 * QUIET_MODULES) * moduleMm;

/** One path for all dark modules, so that no renderer leaves hairlines between neighbours. */
function runs(rows: readonly (readonly boolean[])[]): string {
  let path = '';
  for (const [y, row] of rows.entries()) {
    for (let x = 0; x < row.length; x += 1) {
      const from = x;
      while (row[x]) x += 1;
      if (x > from) path += `M${from} ${y}h${x - from}v1h${from - x}z`;
    }
  }
  return path;
}
