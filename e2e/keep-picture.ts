import { expect, type Page } from '@playwright/test';

/** A picture as a phone takes it, larger than what is kept. */
async function aPicture(page: Page, width: number, height: number): Promise<Buffer> {
  const text = await page.evaluate(
    ([w, h]) => {
      const canvas = document.createElement('canvas');
      canvas.width = w ?? 1;
      canvas.height = h ?? 1;
      const pen = canvas.getContext('2d');
      pen?.fillRect((w ?? 1) / 4, 0, 40, h ?? 1);
      return canvas.toDataURL('image/png').split(',')[1] ?? '';
    },
    [width, height],
  );
  return Buffer.from(text, 'base64');
}

/** Puts one into the form in view. */
export async function keepPicture(page: Page): Promise<void> {
  await page.getByLabel('Keep the picture').setInputFiles({
    name: 'scan.png',
    mimeType: 'image/png',
    buffer: await aPicture(page, 2_560, 1_440),
  });
  await expect(page.getByRole('button', { name: 'Picture to keep' })).toBeVisible();
}
