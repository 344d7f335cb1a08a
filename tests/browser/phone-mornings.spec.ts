/** The morning check on the phone, and the pages beside today's. */
import path from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { openWithWorker, phoneOf } from '#commands/team/phone-sequences/sequence.ts';
import { answerAll, answerOne, headingOf } from '#commands/team/phone-sequences/walk.ts';
import { lookOnce } from './phone-looks.ts';
import { morningsOf } from './stored-answers.ts';

const file = path.join(process.env.BROWSER_TEST_FOLDER ?? '', 'clinic.sqlite');
const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first().click();
const here = async (page: Page, look: (heading: string) => Promise<void>) => look(await headingOf(page));

test('every page of the morning check is accessible in light, in dark and at 200 % text', async ({
  browser,
  baseURL,
}) => {
  test.setTimeout(240_000);
  const context = await phoneOf(browser, baseURL!, 'patient-10');
  const page = await openWithWorker(context);
  const { look, kinds } = lookOnce(page);
  await press(page, 'Morning check');
  while (!(await page.getByRole('button', { name: 'Yes, all of this is right' }).isVisible())) {
    await here(page, look);
    await answerOne(page);
  }
  await look('all as usual');
  await press(page, 'No, ');
  // Looked at and not sent: the check of this morning is given once.
  while (!/^Check your answers/.test(await headingOf(page))) {
    await here(page, look);
    await answerOne(page);
  }
  await here(page, look);
  for (const address of ['/history', '/handout', '/pre-visit', '/pre-visit/consents']) {
    await page.goto(address);
    await here(page, look);
  }
  expect(kinds.size).toBeGreaterThan(11);
  await context.close();
});

test('a phone whose clock was moved keeps its answers; the clinic is told to doubt the time', async ({
  browser,
  baseURL,
}) => {
  const context = await phoneOf(browser, baseURL!, 'patient-10');
  const page = await openWithWorker(context);
  await press(page, 'Morning check');
  await page.evaluate(() => {
    const real = Date.now.bind(Date);
    Date.now = () => real() + 3 * 3_600_000;
  });
  await answerAll(page);
  await expect(page.getByText('Your clinic has your answers.')).toBeVisible({ timeout: 20_000 });
  const stood = morningsOf(file, 'patient-10');
  expect(stood).toHaveLength(1);
  expect(stood[0]?.isDoubtful).toBe(1);
  await context.close();
});
