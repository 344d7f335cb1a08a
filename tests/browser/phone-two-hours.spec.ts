/** Two hours after a session, where the clinic has it asked: by keyboard, without signal, there once. */
import path from 'node:path';
import { type Browser, expect, test } from '@playwright/test';
import { openWithWorker, phoneOf, untilReady } from '#commands/team/phone-sequences/sequence.ts';
import { sessionsOf, storedTwice } from '#commands/team/phone-sequences/stored.ts';
import { answerAll, headingOf } from '#commands/team/phone-sequences/walk.ts';
import { lookAt } from './looks/phone-looks.ts';
import { twoHoursOf } from './stored-answers.ts';
import { clockOff, moveClock, press, signedIn, watched } from './support.ts';

const file = path.join(process.env.BROWSER_TEST_FOLDER ?? '', 'clinic.sqlite');
const who = 'patient-5';

/** As whoever administers the clinic sets it, all other numbers as they stand. */
const askTwoHours = async (browser: Browser, baseURL: string) => {
  const context = await browser.newContext({ baseURL });
  await signedIn(context, baseURL, 'admin');
  const saved = await context.request.post('/api/trpc/admin.clinicSettings.save', {
    data: {
      values: { 'ask-two-hours': 1 },
      seen: { 'ask-two-hours': 0 },
      reason: 'Pain two hours later is wanted.',
    },
    headers: { origin: baseURL },
  });
  expect(saved.status()).toBe(200);
  await context.close();
};

test('the pain two hours later is asked, answered by keyboard without signal, and reaches the clinic once', async ({
  browser,
  baseURL,
}) => {
  test.setTimeout(240_000);
  await askTwoHours(browser, baseURL!);
  const context = await phoneOf(browser, baseURL!, who);
  // A day with a session planned, whatever day the others left it at.
  await moveClock(context, '2026-04-22T08:30:00+01:00');
  const page = await openWithWorker(context);
  const troubles = watched(page);
  await press(page, 'Start the session');
  await answerAll(page);
  await expect(page.getByText('In two hours we ask about your pain again.')).toBeVisible();
  await expect(page.getByText('Your clinic has your answers.')).toBeVisible({ timeout: 20_000 });
  await press(page, 'Back to today');
  await expect(page.getByRole('button', { name: 'Answer it now' })).toHaveCount(0);
  await context.setOffline(true);
  await clockOff(page, 2 * 3_600_000 + 60_000);
  await page.reload();
  await untilReady(page);
  await page.getByRole('button', { name: 'Answer it now' }).focus();
  await page.keyboard.press('Enter');
  const given: number[] = [];
  while (/^How much does|^How is the pain/.test(await headingOf(page))) {
    await lookAt(page, `two hours, asked ${given.length}`);
    await page.locator('.scores button[value="3"]').focus();
    await page.keyboard.press('Enter');
    given.push(3);
  }
  expect(given.length).toBeGreaterThan(0);
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Thank you. That was all.');
  await lookAt(page, 'two hours, done');
  await page.getByRole('button', { name: 'Back to today' }).focus();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: 'Answer it now' })).toHaveCount(0);
  expect(twoHoursOf(file, who)).toEqual([]);
  await context.setOffline(false);
  await expect.poll(() => twoHoursOf(file, who).length, { timeout: 20_000 }).toBe(given.length);
  await page.reload();
  await expect(page.getByText('All your answers have reached the clinic.')).toBeVisible();
  const session = sessionsOf(file, who).at(-1)?.id;
  expect(twoHoursOf(file, who).map(({ pain, session: of }) => [pain, of])).toEqual(
    given.map((pain) => [pain, session]),
  );
  expect(storedTwice(file)).toBe(0);
  expect(troubles.filter((trouble) => !/ERR_INTERNET_DISCONNECTED/.test(trouble))).toEqual([]);
  await context.close();
});
