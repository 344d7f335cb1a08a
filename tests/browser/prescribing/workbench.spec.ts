/** Prescribing before any script has come, and what is typed into it afterwards. */
import { expect, test } from '@playwright/test';
import { desk, press, signedIn, watched } from '../support.ts';

const page1280 = { viewport: desk };

test('an exercise is searched, chosen and shown beside the dose in force without any script', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({ ...page1280, baseURL, javaScriptEnabled: false });
  await signedIn(context, baseURL!, 'clinician');
  const page = await context.newPage();
  await page.goto('/patients/steady-progress/prescribe');
  await page.getByLabel('Name, joint or muscle').fill('seated knee ext');
  await page.getByRole('button', { name: 'Find' }).click();
  await page.getByRole('link', { name: /^Low load, right\s*: Seated knee extension$/ }).click();
  await expect(page).toHaveURL(/line=steady-progress-knee/);
  await expect(page.getByLabel('Name, joint or muscle')).toHaveValue('seated knee ext');
  const load = page.getByLabel(/^Load/);
  await expect(load).not.toHaveValue('');
  await expect(page.locator('#loadKg-now')).toContainText(await load.inputValue());
  await context.close();
});

test('a load that is not at home is said with the nearest, refused, and stays as it was typed', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({ ...page1280, baseURL });
  await signedIn(context, baseURL!, 'clinician');
  const page = await context.newPage();
  const troubles = watched(page);
  await page.goto('/patients/steady-progress/prescribe?line=steady-progress-knee');
  const load = page.getByLabel(/^Load/);
  await load.fill('2.25');
  await expect(page.locator('#loadKg-change')).toHaveText('Not at home. Nearest: 2, 2.3 kg.');
  await press(page, 'Propose a dose');
  await expect(page.getByRole('alert').first()).toContainText('2.25 kg is not among the loads at home');
  await expect(load).toHaveValue('2.25');
  await expect(page.getByRole('region', { name: 'Proposed dose' })).toHaveCount(0);
  expect(troubles).toEqual([]);
  await context.close();
});
