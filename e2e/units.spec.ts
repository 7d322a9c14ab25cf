import { expect, test } from '@playwright/test';
import { backUp, beginWithThree, walkTo, walkToSnake, written } from './keeper.ts';

test('in pounds and ounces: all is said so, typed so, and kept in grams', async ({
  page,
  baseURL,
}) => {
  await beginWithThree(page, baseURL ?? '');
  await walkTo(page, '/shelf');
  await page.getByRole('button', { name: 'Use lb and oz' }).click();
  await expect(page.getByRole('button', { name: 'Use g', exact: true })).toBeVisible();

  await walkTo(page, '/tonight');
  // 1,500 g carry a small rat of 65 g: 2.29 oz.
  await expect(
    page.getByRole('link', { name: /Marrow.*Feed 1 small rat, 2\.29 oz/ }),
  ).toBeVisible();

  await walkToSnake(page, 'Marrow');
  await expect(page.getByText('3 lb 4.9 oz').first()).toBeVisible();
  await page.getByRole('button', { name: 'Weight', exact: true }).click();
  const sheet = page.getByRole('dialog', { name: 'Weight of Marrow' });
  const type = async (keys: string) => {
    for (const key of keys) {
      const name = key === '.' ? 'Point' : key;
      await sheet.getByRole('button', { name, exact: true }).click();
    }
  };
  await type('3');
  await sheet.getByRole('button', { name: 'That was lb' }).click();
  await type('5.2');
  await expect(sheet.getByText('Kept in grams: 1508.2 g.')).toBeVisible();
  await sheet.getByRole('button', { name: 'Write 3 lb 5.2 oz' }).click();
  await expect(written(page, 'Marrow: weighed 3 lb 5.2 oz')).toBeVisible();

  // 53.2 oz are 1,508.2 g: NIST SP 811 (2008), Appendix B.8.
  const { records } = await backUp(page);
  const last = records.findLast(({ type: kind }) => kind === 'weighed');
  expect(last).toMatchObject({ massG: 1508.2, entered: { value: 53.2, unit: 'oz' } });

  await page.reload();
  await walkToSnake(page, 'Marrow');
  await expect(page.getByText('3 lb 5.2 oz').first()).toBeVisible();
  await walkTo(page, '/shelf');
  await page.getByRole('button', { name: 'Use g', exact: true }).click();
  await walkToSnake(page, 'Marrow');
  await expect(page.getByText('1,508 g').first()).toBeVisible();
});
