/** Calculations and rules as a clinician looks something up, by keyboard. */
import { expect, test } from '@playwright/test';
import { desk, expectAccessible, signedIn, watched } from '../support.ts';

test('a calculation is found by a plain name, its faults are said at once, and no result stands beside other figures', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({ viewport: desk, baseURL });
  await signedIn(context, baseURL!, 'clinician');
  const page = await context.newPage();
  const troubles = watched(page);
  await page.goto('/calculations');
  await page.getByLabel('Search the calculations').fill('heaviest weight lighter');
  await expect(page.getByText(/found for “heaviest weight lighter”/)).toBeVisible();
  await expectAccessible(page, 'calculations found');
  await page.getByRole('link', { name: 'One-repetition maximum by one equation' }).press('Enter');
  await expect(page.getByRole('heading', { name: 'The example gives' })).toBeVisible();
  // What is tried stands above what is cited.
  const place = async (name: string) =>
    (await page.getByRole('heading', { name, exact: true }).boundingBox())!.y;
  expect(await place('Try it')).toBeLessThan(await place('Sources'));
  await page.getByLabel('Load lifted').fill('0');
  await page.getByLabel(/Whole repetitions/).fill('1001');
  await expect(page.getByRole('heading', { name: 'The example gives' })).toHaveCount(0);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('alert').first().getByRole('link')).toHaveText([
    /“Load lifted”: 0\.001 to 1000\. Type a number/,
    /“Whole repetitions .*”: 1 to 1000\. Type a number/,
  ]);
  await expectAccessible(page, 'a calculation with two faults');
  await page.getByLabel('Load lifted').fill('40');
  await page.getByLabel(/Whole repetitions/).fill('9');
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { name: 'Result' })).toBeVisible();
  await expect(page.getByText('51.4 kg')).toBeVisible();
  await page.getByText('Unrounded').press('Enter');
  await expect(page.getByText(/51\.428\d+ kg/)).toBeVisible();
  expect(troubles).toEqual([]);
  await context.close();
});

test('a rule is found in German, says first what the patient reads, and its address leads to it', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({ viewport: desk, baseURL });
  await signedIn(context, baseURL!, 'clinician');
  const page = await context.newPage();
  const troubles = watched(page);
  await page.goto('/rules#P5');
  const rule = page.locator('#P5');
  await expect(rule).toBeInViewport();
  await expect(rule).toContainText(/The patient reads: .*sorer than usual/);
  await page.getByLabel('Search the rules').fill('Schwellung');
  await expect(page.locator('#W2')).toBeVisible();
  await expect(rule).toHaveCount(0);
  await expectAccessible(page, 'rules found');
  expect(troubles).toEqual([]);
  await context.close();
});
