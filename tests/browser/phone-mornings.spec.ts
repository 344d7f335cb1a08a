/** The morning check on the phone, and the pages beside today's. */

import path from 'node:path';
import { expect, type Page, test } from '@playwright/test';
import { openWithWorker, phoneOf } from '#commands/team/phone-sequences/sequence.ts';
import { answerAll, answerOne, headingOf } from '#commands/team/phone-sequences/walk.ts';
import { lookOnce } from './looks/phone-looks.ts';
import { morningsOf } from './stored-answers.ts';

const file = path.join(process.env.BROWSER_TEST_FOLDER ?? '', 'clinic.sqlite');
const here = async (page: Page, look: (heading: string) => Promise<void>) => look(await headingOf(page));

test('every page of the morning check is accessible in the look whose turn it is', async ({
  browser,
  baseURL,
}) => {
  test.setTimeout(240_000);
  const context = await phoneOf(browser, baseURL!, 'patient-10');
  const page = await openWithWorker(context);
  const { look, kinds } = lookOnce(page);
  await page.locator('.scores button[value="2"]').click();
  // Looked at and not sent: the check of this morning is given once.
  while (!/^Do you have any of these/.test(await headingOf(page))) {
    await here(page, look);
    await answerOne(page);
  }
  await here(page, look);
  for (const address of ['/history', '/handout', '/pre-visit', '/pre-visit/consents']) {
    await page.goto(address);
    await here(page, look);
  }
  expect(kinds.size).toBeGreaterThan(8);
  await context.close();
});

test('a phone whose clock was moved keeps its answers; the clinic is told to doubt the time', async ({
  browser,
  baseURL,
}) => {
  const context = await phoneOf(browser, baseURL!, 'patient-10');
  const page = await openWithWorker(context);
  await page.locator('.scores button[value="2"]').click();
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

test('a second press of a thumb within half a second answers nothing on the new page; a key does', async ({
  browser,
  baseURL,
}) => {
  const context = await phoneOf(browser, baseURL!, 'patient-5');
  // Looked at and not sent: other tests begin this session too.
  await context.route('**/api/entries', (route) => route.fulfill({ status: 401 }));
  const page = await openWithWorker(context);
  const box = await page.getByRole('button', { name: 'Start the session' }).boundingBox();
  const [x, y] = [box!.x + box!.width / 2, box!.y + box!.height / 2];
  // Looked at in the page itself, at once: half a second is short for a busy machine.
  await page.evaluate(() => {
    const heard = () =>
      [...document.querySelectorAll('main button, main label, main a')].filter(
        (one) => getComputedStyle(one).pointerEvents !== 'none',
      ).length;
    new MutationObserver(() => {
      const { page } = document.documentElement.dataset;
      if (page === 'new') document.documentElement.dataset.heard ??= String(heard());
    }).observe(document.documentElement, { attributeFilter: ['data-page'] });
  });
  await page.mouse.click(x, y);
  await page.waitForSelector('html[data-heard]', { state: 'attached' });
  // Wherever on the new page: nothing that points is heard while it is new.
  expect(await page.locator('html').getAttribute('data-heard')).toBe('0');
  await page.getByRole('button', { name: 'No, none of these' }).press('Enter');
  await expect(page.getByRole('group', { name: 'How much does your right knee hurt now?' })).toBeVisible();
  await page.waitForSelector('html[data-page="open"]', { state: 'attached' });
  await context.close();
});
