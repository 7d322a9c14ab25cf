import { expect, test } from '@playwright/test';
import { serve, type Served } from './serve.ts';
import { openWithoutProgram } from './without-program.ts';

test.use({ serviceWorkers: 'block' });

let served: Served | undefined;
test.afterEach(() => served?.stop());

test('the desk starts before there is a program, and once', async ({ context }) => {
  served = await serve();
  const { page, letCome } = await openWithoutProgram(context, served.url);
  expect(await page.evaluate(() => 'desk' in window)).toBe(true);
  await expect.poll(() => page.workers().length).toBe(1);
  letCome();
  await expect(page.getByRole('button', { name: 'Begin my collection' })).toBeVisible();
  expect(page.workers()).toHaveLength(1);
});
