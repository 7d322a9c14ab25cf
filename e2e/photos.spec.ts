import { expect, test } from '@playwright/test';
import { axeFindings, tooWidePx } from './access-check.ts';
import { useCanvasCamera } from './camera/canvas-camera.ts';
import { inEveryLight } from './room-light.ts';
import { openDemo, screens } from './screens.ts';

for (const size of [
  { width: 390, height: 844 },
  { width: 360, height: 640 },
]) {
  test.describe(`${size.width}×${size.height}`, () => {
    test.use({
      viewport: size,
      deviceScaleFactor: 1,
      // A sheet half-way in is neither a picture nor a contrast.
      contextOptions: { reducedMotion: 'reduce' },
    });

    test(`every screen is photographed in every light, fits its width and passes axe, ${size.width} px`, async ({
      page,
    }, info) => {
      test.setTimeout(600_000);
      await useCanvasCamera(page);
      const found: string[] = [];
      const look = async (name: string) => {
        await inEveryLight(page, async (light) => {
          const path = info.outputPath(`${light}-${size.width}-${name}.png`);
          await page.screenshot({ path });
          if (size.width !== 390) return;
          // Only colours differ from one light to another.
          const rules = light === 'dark' ? undefined : ['color-contrast'];
          const findings = await axeFindings(page, rules);
          found.push(...findings.map((finding) => `${name}, ${light}, ${finding}`));
        });
        const over = await tooWidePx(page);
        if (over > 0) found.push(`${name} is ${over} px wider than the phone`);
      };

      await page.goto('./');
      await expect(page.getByRole('heading', { name: 'Nightdrop' })).toBeVisible();
      await look('start');
      await openDemo(page);
      for (const { name, visit } of screens) {
        await visit(page);
        await look(name);
      }
      expect(found).toEqual([]);
    });
  });
}
