import AxeBuilder from '@axe-core/playwright';
import { expect, test } from '@playwright/test';
import { useCanvasCamera } from './camera/canvas-camera.ts';
import { openDemo, screens } from './screens.ts';

test.describe.configure({ mode: 'parallel' });

const sizes = [
  { width: 390, height: 844 },
  { width: 360, height: 640 },
] as const;

for (const light of ['dark', 'light', 'red'] as const) {
  for (const size of sizes) {
    const name = `${light} ${size.width}×${size.height}`;
    test.describe(name, () => {
      test.use({
        viewport: size,
        deviceScaleFactor: 1,
        // A sheet half-way in is neither a picture nor a contrast.
        contextOptions: { reducedMotion: 'reduce' },
      });

      test(`every screen is photographed, fits its width and passes axe, ${name}`, async ({
        page,
      }, info) => {
        test.setTimeout(480_000);
        await page.addInitScript((chosen) => {
          localStorage.setItem('nightdrop.light', chosen);
        }, light);
        await useCanvasCamera(page);
        await page.goto('./');
        await expect(page.getByRole('heading', { name: 'Nightdrop' })).toBeVisible();
        await page.screenshot({ path: info.outputPath(`${light}-${size.width}-start.png`) });
        await openDemo(page);
        const found: string[] = [];
        for (const screen of screens) {
          await screen.visit(page);
          await page.screenshot({
            path: info.outputPath(`${light}-${size.width}-${screen.name}.png`),
          });
          const overflow = await page.evaluate(
            () => document.documentElement.scrollWidth - innerWidth,
          );
          expect(overflow, `${screen.name} is wider than the phone`).toBeLessThanOrEqual(0);
          if (size.width === 390) {
            // Only colours differ from one light to another.
            const axe = new AxeBuilder({ page });
            if (light !== 'dark') axe.withRules(['color-contrast']);
            const { violations } = await axe.analyze();
            for (const { id, nodes } of violations) {
              found.push(`${screen.name}, ${id}: ${nodes[0]?.html ?? ''}`);
            }
          }
        }
        expect(found).toEqual([]);
      });
    });
  }
}
