import { rm } from 'node:fs/promises';
import { expect, test } from '@playwright/test';
import { labelsOnPage, type LabelFormat } from '../../src/domain/labels/format.ts';
import { LABEL_FORMATS } from '../../src/domain/labels/formats.ts';
import { layoutLabel } from '../../src/domain/labels/layout.ts';
import { cellOrigin, paginate, type FilledCell } from '../../src/domain/labels/pages.ts';
import { payloadOf } from '../../src/domain/labels/qr.ts';
import { buildLabelPage, openLabelPage } from './label-page.ts';
import { boxAround, darkBox, edgeError, expectedQr } from './measure.ts';
import { chooseFormat, printToPdf } from './print-labels.ts';
import { crop, rasterPdf, type GrayRaster } from './raster.ts';
import { readCodes } from './read-codes.ts';
import { subjectsFor } from './subjects.ts';

const LINK = 'https://labels.example/';
const PAGE_TOLERANCE_MM = 0.2; // The browser rounds paper to hundredths of an inch.

let folder = '';
test.beforeAll(async () => {
  folder = await buildLabelPage();
});
test.afterAll(() => rm(folder, { recursive: true, force: true }));

const tubs = (count: number) => subjectsFor(count).filter(({ kind }) => kind === 'tub');

/** Cuts each label out, as a keeper does, reads it, and measures where its code lies. */
async function checkPage(
  raster: GrayRaster,
  cells: readonly FilledCell[],
  format: LabelFormat,
  linkBase?: string,
): Promise<number> {
  const pixelMm = 25.4 / raster.dpi;
  let worstMm = 0;
  for (const filled of cells) {
    const { holds } = layoutLabel(filled.subject, format, linkBase);
    const label = crop(raster, { ...cellOrigin(format, filled.cell), ...format.label });
    const said = (await readCodes(label)).map(({ text }) => text);
    expect(said).toEqual([payloadOf(filled.subject.code, holds === 'link' ? linkBase : undefined)]);

    const qr = expectedQr(filled, format, linkBase);
    const side = qr.modules * qr.moduleMm;
    const dark = darkBox(raster, boxAround(qr))!;
    const error = edgeError(dark, { x: qr.x, y: qr.y, width: side, height: side });
    expect(error).toBeLessThanOrEqual(pixelMm);
    worstMm = Math.max(worstMm, error);
  }
  return worstMm;
}

for (const format of LABEL_FORMATS) {
  const roll = format.paper === 'roll';
  // A page and two more, so that a page too many or too few shows.
  const subjects = tubs(roll ? 6 : labelsOnPage(format) + 2);
  const pages = paginate(subjects, format, 1);

  test(`${format.paper}, ${format.name}: printed, measured and read`, async ({ page }, info) => {
    await openLabelPage(page, folder, `?count=${subjects.length}`);
    await chooseFormat(page, format);
    for (const linkBase of [undefined, LINK]) {
      await page.getByRole('radio', { name: linkBase ? 'A link' : 'Code only' }).check();
      const pdf = await printToPdf(page, /^Print \d/);
      for (const dpi of roll ? [300, 203.2] : [300]) {
        const rasters = await rasterPdf(pdf, dpi);
        expect(rasters).toHaveLength(pages.length);
        let worstMm = 0;
        for (const [i, raster] of rasters.entries()) {
          const { width, height } = raster.pageMm;
          expect(Math.abs(width - format.page.width)).toBeLessThan(PAGE_TOLERANCE_MM);
          expect(Math.abs(height - format.page.height)).toBeLessThan(PAGE_TOLERANCE_MM);
          worstMm = Math.max(worstMm, await checkPage(raster, pages[i]!, format, linkBase));
        }
        info.annotations.push({
          type: 'figures',
          description: `${format.id}, ${linkBase ? 'link' : 'code'}, ${dpi} dpi: ${subjects.length} read, worst edge ${worstMm.toFixed(3)} mm`,
        });
      }
    }
  });
}
