import { expect, test, type Page } from '@playwright/test';
import { tooWidePx } from './access-check.ts';
import { useCanvasCamera } from './camera/canvas-camera.ts';
import { openDemo, screens } from './screens.ts';

// Source: WCAG 2.2, success criteria 1.4.4 (resize text), 2.1.1 (keyboard), 2.5.8 (target size).

test('at twice the text size every screen still fits its width', async ({ page }) => {
  await useCanvasCamera(page);
  await openDemo(page);
  await page.evaluate(() => {
    document.documentElement.style.fontSize = '200%';
  });
  const wide: string[] = [];
  for (const screen of screens) {
    await screen.visit(page);
    const over = await tooWidePx(page);
    if (over > 0) wide.push(`${screen.name}: ${over} px`);
  }
  expect(wide).toEqual([]);
});

/** Presses Tab until the focus is on what is wanted, as someone without a pointer does. */
async function tabTo(page: Page, wanted: RegExp): Promise<void> {
  for (let presses = 0; presses < 80; presses += 1) {
    await page.keyboard.press('Tab');
    const name = await page.evaluate(() => document.activeElement?.textContent ?? '');
    if (wanted.test(name)) return;
  }
  throw new Error(`Tab never came to ${String(wanted)}`);
}

test('a refusal is written and undone by keyboard alone', async ({ page }) => {
  await openDemo(page);
  await tabTo(page, /Feed 1/);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: /^Refused/ })).toBeVisible();
  await tabTo(page, /^Refused/);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('status')).toContainText('refused');
  await tabTo(page, /^Undo/);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('status')).toContainText('Undone');
});

test('a sheet takes the focus, keeps it, and gives it back', async ({ page }) => {
  await openDemo(page);
  await page
    .getByRole('link', { name: /Feed 1/ })
    .first()
    .click();
  await page.getByRole('button', { name: 'Weight' }).focus();
  await page.keyboard.press('Enter');
  const dialog = page.getByRole('dialog');
  await expect(dialog).toBeVisible();
  await page.keyboard.type('153');
  await expect(page.getByLabel('Weight', { exact: true })).toHaveText('153');
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();
  await expect(page.getByRole('button', { name: 'Weight' })).toBeFocused();
});

test('the buttons of the hand are 60 CSS px high at least, and 10 apart', async ({ page }) => {
  await openDemo(page);
  await page
    .getByRole('link', { name: /Feed 1/ })
    .first()
    .click();
  const slabs = page.locator('.actions .slab');
  await expect(slabs).toHaveCount(8);
  const boxes = await slabs.evaluateAll((all) =>
    all.map((each) => {
      const { top, bottom, left, right } = each.getBoundingClientRect();
      return { top, bottom, left, right };
    }),
  );
  for (const box of boxes) expect(box.bottom - box.top).toBeGreaterThanOrEqual(60);
  const [first, beside, below] = boxes;
  expect((beside?.left ?? 0) - (first?.right ?? 0)).toBeGreaterThanOrEqual(10);
  expect((below?.top ?? 0) - (first?.bottom ?? 0)).toBeGreaterThanOrEqual(10);
  // In the thumb's reach: the lowest row ends within the screen.
  expect(boxes.at(-1)?.bottom ?? Infinity).toBeLessThanOrEqual(page.viewportSize()?.height ?? 0);
});
