/** The patient's pages beside the session, in German: with reasons, a question answered, and refusals; accessible. */
import { expect, type Page, test } from '@playwright/test';
import { phoneOf } from '#commands/team/phone-sequences/sequence.ts';
import { pages as german } from '#messages/de/pages.ts';
import { cookieNames } from '#ui/patient/preferences/chosen.ts';
import { expectNoEnglish } from './english-left.ts';
import { expectAccessible, watched } from './support.ts';

const inGerman = (page: Page, baseURL: string) =>
  page.context().addCookies([{ name: cookieNames.language, value: 'de', url: baseURL }]);

const look = async (page: Page, name: string) => {
  await expectNoEnglish(page, name);
  await expectAccessible(page, `${name} in German`);
};

test('in German: reasons of decisions, the handout, a question before a visit and a refused passphrase', async ({
  browser,
  baseURL,
}) => {
  const context = await phoneOf(browser, baseURL!, 'patient-2');
  const page = await context.newPage();
  const troubles = watched(page);
  await inGerman(page, baseURL!);
  await page.goto('/history');
  // In German the page is made anew; what was opened before that would be closed again.
  await expect(page.getByRole('heading', { level: 1, name: 'Wie es ging' })).toBeVisible();
  const weeks = page.locator('main details');
  await weeks.evaluateAll((all) => {
    for (const week of all) week.setAttribute('open', '');
  });
  await expect(page.getByText(/beim jetzigen Plan/).first()).toBeVisible();
  await look(page, 'how it went');
  await page.goto('/handout');
  await look(page, 'the handout');
  await page.goto('/pre-visit');
  await page.getByRole('button', { name: german['visit.begin'] }).click();
  await page.getByLabel(german['ask.yes'], { exact: true }).check();
  await look(page, 'a question before a visit');
  await page.goto('/account');
  await page.getByRole('button', { name: german['account.change'] }).click();
  await expect(page.locator('.error-summary')).toContainText(german['account.no-passphrase']);
  await look(page, 'the own sign-in with what is wrong');
  await expect(page).toHaveTitle(new RegExp(german['frame.account']));
  expect(troubles).toEqual([]);
  await context.close();
});

test('in German: setting up a phone and signing in say what was refused', async ({ page, baseURL }) => {
  await inGerman(page, baseURL!);
  await page.goto('/enrol');
  await page.getByLabel(german['join.code'], { exact: true }).fill('4KQ7M-X2D9T');
  await page.getByRole('button', { name: german['join.go'] }).click();
  await expect(page.locator('.error-summary')).toContainText('Dieser Code gilt nicht mehr');
  await look(page, 'a code that is not open');
  await page.goto('/sign-in');
  await page.getByRole('button', { name: german['sign-in.go'], exact: true }).click();
  await expect(page.locator('.error-summary')).toContainText(german['sign-in.no-email']);
});
