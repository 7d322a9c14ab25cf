import { expect, test } from '@playwright/test';
import { serve, type Served } from './serve.ts';
import { holdBack } from './hold-back.ts';
import { openWithoutProgram } from './without-program.ts';

test.use({ serviceWorkers: 'block' });

let served: Served | undefined;
test.afterEach(() => served?.stop());

test('tonight is asked for while the desk is still on its way', async ({ page }) => {
  served = await serve();
  await page.addInitScript(() => {
    const asked: string[] = [];
    class Overheard extends Worker {
      override postMessage(message: { readonly kind?: string }): void {
        asked.push(message.kind ?? '');
        super.postMessage(message);
      }
    }
    Object.assign(window, { asked, Worker: Overheard });
  });
  const { letCome } = await holdBack(page, /assets\/worker-[^/]+\.js$/);
  await page.goto(`${served.url}#/tonight`, { waitUntil: 'commit' });
  const asked = () => page.evaluate(() => (window as unknown as { asked: string[] }).asked);
  await expect.poll(asked).toContain('tonight');
  await expect(page.locator('main[aria-busy=true]')).toBeAttached();
  letCome();
  await expect(page.getByRole('button', { name: 'Begin my collection' })).toBeVisible();
});

test('the desk starts before there is a program, and once', async ({ context }) => {
  served = await serve();
  const { page, letCome } = await openWithoutProgram(context, served.url);
  expect(await page.evaluate(() => 'desk' in window)).toBe(true);
  await expect.poll(() => page.workers().length).toBe(1);
  letCome();
  await expect(page.getByRole('button', { name: 'Begin my collection' })).toBeVisible();
  expect(page.workers()).toHaveLength(1);
});
