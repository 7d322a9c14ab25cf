import { PDFiumLibrary } from '@hyzyla/pdfium';
import { MM_PER_INCH } from '../../src/domain/core/units.ts';

const POINTS_PER_INCH = 72;

/** A page as a scanner would see it: one byte a pixel, 0 is black, row by row. */
export interface GrayRaster {
  readonly width: number;
  readonly height: number;
  readonly pixels: Uint8Array;
  readonly dpi: number;
  /** The page's own size from the PDF, before rounding to pixels. */
  readonly pageMm: { readonly width: number; readonly height: number };
}

/** Draws every page of a PDF at `dpi`. */
export async function rasterPdf(pdf: Uint8Array, dpi: number): Promise<readonly GrayRaster[]> {
  const library = await PDFiumLibrary.init();
  const document = await library.loadDocument(pdf);
  try {
    const rasters: GrayRaster[] = [];
    for (const page of document.pages()) {
      const { originalWidth, originalHeight } = page.getOriginalSize();
      // Given a scale, the library rounds the page down to whole points first: up to 0.35 mm lost.
      const width = Math.round((originalWidth / POINTS_PER_INCH) * dpi);
      const height = Math.round((originalHeight / POINTS_PER_INCH) * dpi);
      const { data } = await page.render({ width, height, render: 'bitmap', colorSpace: 'Gray' });
      rasters.push({
        width,
        height,
        pixels: data,
        dpi,
        pageMm: {
          width: (originalWidth / POINTS_PER_INCH) * MM_PER_INCH,
          height: (originalHeight / POINTS_PER_INCH) * MM_PER_INCH,
        },
      });
    }
    return rasters;
  } finally {
    document.destroy();
    library.destroy();
  }
}

/** The part of a raster inside a box in mm, cut to whole pixels. */
export function crop(
  raster: GrayRaster,
  box: { readonly x: number; readonly y: number; readonly width: number; readonly height: number },
): GrayRaster {
  const px = (mm: number) => Math.round((mm / MM_PER_INCH) * raster.dpi);
  const left = Math.max(0, px(box.x));
  const top = Math.max(0, px(box.y));
  const width = Math.min(raster.width, px(box.x + box.width)) - left;
  const height = Math.min(raster.height, px(box.y + box.height)) - top;
  const pixels = new Uint8Array(width * height);
  for (let y = 0; y < height; y += 1) {
    const from = (top + y) * raster.width + left;
    pixels.set(raster.pixels.subarray(from, from + width), y * width);
  }
  return { ...raster, width, height, pixels };
}
