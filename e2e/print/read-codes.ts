import {
  getDefaultScanner,
  scanGrayBuffer,
  ZBarConfigType,
  ZBarSymbolType,
} from '@undecaf/zbar-wasm';
import type { GrayRaster } from './raster.ts';

/** A QR code found in a raster, and its corners in pixels. */
export interface FoundCode {
  readonly text: string;
  readonly corners: readonly { readonly x: number; readonly y: number }[];
}

/** Every QR code in a raster, read by a decoder that shares nothing with our encoder. */
export async function readCodes({
  width,
  height,
  pixels,
}: Pick<GrayRaster, 'width' | 'height' | 'pixels'>): Promise<readonly FoundCode[]> {
  const scanner = await getDefaultScanner();
  scanner.setConfig(ZBarSymbolType.ZBAR_NONE, ZBarConfigType.ZBAR_CFG_ENABLE, 0);
  scanner.setConfig(ZBarSymbolType.ZBAR_QRCODE, ZBarConfigType.ZBAR_CFG_ENABLE, 1);
  const buffer = new Uint8Array(pixels).buffer;
  const symbols = await scanGrayBuffer(buffer, width, height, scanner);
  return symbols.map((symbol) => ({ text: symbol.decode(), corners: symbol.points }));
}
