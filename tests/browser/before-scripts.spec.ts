/** Forms where no script has run: the browser sends them itself, and nothing typed is lost. */
import { type BrowserContext, expect, test } from '@playwright/test';
import { demoPassphrase } from '#demo/clinic.ts';
import { desk } from './support.ts';

test.use({ javaScriptEnabled: false, viewport: desk, actionTimeout: 15_000 });

const signInBy = async (context: BrowserContext) => {
  const page = await context.newPage();
  await page.goto('/sign-in');
  await page.getByLabel('Email address').fill('clinician@demo.invalid');
  await page.getByLabel('Passphrase').fill('not the passphrase');
  await page.getByRole('button', { name: 'Sign in', exact: true }).click();
  await expect(page.getByRole('alert')).toContainText('passphrase');
  await expect(page.getByLabel('Email address')).toHaveValue('clinician@demo.invalid');
  await expect(page.getByLabel('Passphrase')).toHaveValue('');
  await page.getByLabel('Passphrase').fill(demoPassphrase);
  await page.getByRole('button', { name: 'Sign in', exact: true }).click();
  await expect(page).toHaveURL(/\/worklist$/);
  return page;
};

test('a clinician signs in, records a weight, books a review and is told which form waits for scripts', async ({
  context,
}) => {
  const page = await signInBy(context);

  await page.goto('/patients/kidney-lock/measurements?kind=body-mass');
  const weight = page.getByLabel(/^Weight/);
  const record = page.getByRole('button', { name: 'Record weight' });
  await weight.fill('3');
  await record.click();
  await expect(page.getByRole('alert')).toContainText('“Weight”: 25 to 350');
  await expect(weight).toHaveValue('3');
  await weight.fill('290');
  await record.click();
  await page.getByRole('button', { name: 'It is correct; save it' }).click();
  await expect(page.getByText('Recorded.')).toBeVisible();
  await expect(page.getByText(/290 kg/).first()).toBeVisible();

  await page.goto('/patients/kidney-lock/review');
  const when = page.getByRole('group', { name: 'When' });
  await page.getByText(/^Book the next review|^Change the booking/).click();
  await when.getByLabel('Time').fill('10:30');
  await page.getByRole('button', { name: /^Book/ }).click();
  await expect(page.getByRole('alert')).toContainText('“When”');
  await expect(when.getByLabel('Time')).toHaveValue('10:30');
  await when.getByLabel('Day').fill('2099-01-04');
  await page.getByRole('button', { name: /^Book/ }).click();
  await expect(page.getByRole('alert')).toContainText('one year ahead');

  await page.goto('/patients/kidney-lock/screening');
  await page.getByText('Screen again', { exact: true }).click();
  const sheet = page.locator('form', { has: page.locator('#record-screening') });
  await expect(sheet.locator('#record-screening')).toBeDisabled();
  await expect(sheet.getByText('this browser runs no scripts')).toBeVisible();
});
