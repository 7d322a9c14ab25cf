import { expect, test, type Page } from '@playwright/test';
import { useCanvasCamera, showToCamera } from './camera/canvas-camera.ts';
import { cameraFrame } from './camera/frames.ts';
import { qrPrint } from './camera/print.ts';
import { walkTo } from './keeper.ts';
import { openDemo, screens } from './screens.ts';

// Not a test: takes the README's pictures anew, with `PICTURES=1 npm run e2e`.
test.use({ viewport: { width: 390, height: 844 }, deviceScaleFactor: 1 });

const visit = async (page: Page, name: string) => {
  await screens.find((screen) => screen.name === name)?.visit(page);
};

test('the pictures of the README', async ({ page }) => {
  const shoot = (name: string) => page.screenshot({ path: `e2e/pictures/${name}.png` });
  await useCanvasCamera(page);
  await openDemo(page);
  await shoot('tonight');
  await visit(page, 'capture');
  await shoot('capture');
  await visit(page, 'rack');
  await shoot('rack');
  await visit(page, 'snake');
  await shoot('snake');

  await walkTo(page, '/labels');
  const code = (await page.locator('.labels-code').nth(3).textContent()) ?? '';
  await walkTo(page, '/round');
  await expect(page.locator('video')).toBeVisible();
  const label = qrPrint(code.replaceAll(' ', ''));
  await showToCamera(page, cameraFrame(label, { scale: 7, rotation: 6, tilt: 12, noise: 3 }));
  await expect(page.getByRole('button', { name: /^Weight/ })).toBeVisible();
  await shoot('round');

  await page.evaluate(() => localStorage.setItem('nightdrop.light', 'red'));
  await page.reload();
  await visit(page, 'tonight');
  await shoot('red');
});
