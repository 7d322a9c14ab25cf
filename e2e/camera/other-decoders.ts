import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { scanGrayBuffer } from '@undecaf/zbar-wasm';
import { prepareZXingModule, readBarcodes } from 'zxing-wasm/reader';
import type { Picture } from './picture.ts';

/** Reads the QR codes of a still picture, at its full size and without a browser. */
export type StillDecoder = (picture: Picture) => Promise<readonly string[]>;

/** ZXing-C++ as its authors set it up. The scanner is built on it too, so this is the least it owes. */
export async function startZXing(): Promise<StillDecoder> {
  const path = createRequire(import.meta.url).resolve('zxing-wasm/reader/zxing_reader.wasm');
  await prepareZXingModule({
    overrides: { wasmBinary: new Uint8Array(readFileSync(path)).buffer },
    fireImmediately: true,
  });
  return async ({ width, height, gray }) => {
    const data = new Uint8ClampedArray(4 * gray.length);
    gray.forEach((level, i) => data.set([level, level, level, 255], 4 * i));
    const found = await readBarcodes(
      { width, height, data, colorSpace: 'srgb' },
      { formats: ['QRCode'], tryHarder: true },
    );
    return found.filter(({ isValid }) => isValid).map(({ text }) => text);
  };
}

/** ZBar, which shares no code with ZXing. */
export const zbar: StillDecoder = async ({ width, height, gray }) => {
  const symbols = await scanGrayBuffer(new Uint8Array(gray).buffer, width, height);
  return symbols.map((symbol) => symbol.decode());
};
