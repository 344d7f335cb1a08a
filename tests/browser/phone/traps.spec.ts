/** What used to trap somebody on the phone: sessions of another day, signing out, a wrong clock, a lost message. */
import { type Browser, type BrowserContext, expect, test } from '@playwright/test';
import { pin, pinPhoneOf } from '#commands/team/phone-sequences/pin-phone.ts';
import { openWithWorker, phoneOf, untilReady } from '#commands/team/phone-sequences/sequence.ts';
import { answerOne, headingOf } from '#commands/team/phone-sequences/walk.ts';
import { clockOff, expectAccessible, press, untilSaved, watched } from '../support.ts';

const hour = 3_600_000;

/** A phone whose answers stay on it: other tests begin the session of this day too. */
const unsent = async (browser: Browser, baseURL: string): Promise<BrowserContext> => {
  const context = await phoneOf(browser, baseURL, 'patient-4');
  await context.route('**/api/entries', (route) => route.abort());
  return context;
};

test('a session left open asks for warning signs again after half an hour, and two days later is sent as it stood or thrown away', async ({
  browser,
  baseURL,
}) => {
  const context = await unsent(browser, baseURL!);
  // Days pass on the phone alone: the server is not asked for the time.
  await context.route('**/healthz', (route) => route.abort());
  const page = await openWithWorker(context);
  const troubles = watched(page);
  await press(page, 'Start the session');
  await answerOne(page);
  await answerOne(page);
  const asked = await headingOf(page);
  await untilSaved(page);
  await clockOff(page, 0.6 * hour);
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('Do you have any of these today?');
  await answerOne(page);
  await answerOne(page);
  await expect(page.getByRole('heading', { level: 1 })).toHaveText(asked);
  await untilSaved(page);
  await clockOff(page, 48 * hour);
  await page.reload();
  await expect(page.getByRole('heading', { name: /^On .*: no set done$/ })).toBeVisible();
  await expect(page.getByRole('button', { name: 'Start the session' })).toHaveCount(0);
  await expectAccessible(page, 'a session of another day');
  await press(page, 'Throw it away');
  await press(page, 'No, keep it');
  await press(page, 'Send what I did');
  await expect(page.getByRole('heading', { name: /^On .*: no set done$/ })).toHaveCount(0);
  expect(troubles.filter((one) => !/ERR_FAILED/.test(one))).toEqual([]);
  await context.close();
});

test('a phone a day ahead goes by the right day and says how to put it right, until it is', async ({
  browser,
  baseURL,
}) => {
  const context = await unsent(browser, baseURL!);
  const page = await context.newPage();
  await page.goto('/today');
  await untilReady(page);
  const day = await page.locator('main .page-caption').first().textContent();
  const ahead = await context.newPage();
  await clockOff(ahead, 24 * hour);
  await ahead.goto('/today');
  await expect(ahead.getByText(/^Your phone’s clock is wrong/)).toBeVisible();
  await expect(ahead.getByText(/Settings, Date and time, Automatic/)).toBeVisible();
  expect(await ahead.locator('main .page-caption').first().textContent()).toBe(day);
  await expectAccessible(ahead, 'a wrong clock');
  await ahead.close();
  await page.reload();
  await untilReady(page);
  await expect(page.getByText(/^Your phone’s clock is wrong/)).toHaveCount(0);
  await context.close();
});

test('plan, history and messages open without signal; a message typed there survives a reload and goes by itself', async ({
  browser,
  baseURL,
}) => {
  const context = await phoneOf(browser, baseURL!, 'patient-7');
  const page = await openWithWorker(context);
  await page.evaluate(async () => {
    for (const kept of ['/history', '/handout', '/messages'])
      while (!(await caches.match(kept))) await new Promise((resolve) => setTimeout(resolve, 50));
  });
  await context.setOffline(true);
  for (const [path, heading] of [
    ['/history', 'How it went'],
    ['/handout', 'My plan'],
    ['/messages', 'Write to your clinic'],
  ] as const) {
    await page.goto(path);
    await expect(page.getByRole('heading', { level: 1 })).toContainText(heading);
  }
  const field = page.getByLabel('Your message');
  await field.fill('May I swim on Sundays?');
  await untilSaved(page);
  await page.reload();
  await expect(field).toHaveValue('May I swim on Sundays?');
  await press(page, 'Send');
  await expect(page.getByText(/^Kept on this phone\. It goes/)).toBeVisible();
  await expectAccessible(page, 'a message that waits');
  await page.reload();
  await expect(page.getByText('1 message on this phone has not been sent yet.')).toBeVisible();
  await expect(field).toHaveValue('');
  await context.setOffline(false);
  await page.reload();
  await expect(page.getByText('May I swim on Sundays?')).toBeVisible();
  await context.close();
});

test('signing out asks where something is unfinished, and without signal locks the phone until its PIN is given', async ({
  browser,
  baseURL,
}) => {
  const context = await pinPhoneOf(browser, baseURL!, 'occlusion-cleared');
  const page = await openWithWorker(context);
  await expect(page.getByRole('navigation').getByRole('button', { name: 'Sign out' })).toHaveCount(0);
  await untilReady(page);
  await press(page, 'Start the session');
  await untilSaved(page);
  await context.setOffline(true);
  await press(page, 'Back');
  await press(page, 'Sign out');
  await expect(page.getByRole('heading', { name: 'Something you began is not finished' })).toBeVisible();
  await expectAccessible(page, 'signing out');
  await press(page, 'Stay signed in');
  await press(page, 'Sign out');
  await press(page, 'Lock, and keep what I began');
  await expect(page.getByRole('heading', { name: 'This phone is locked' })).toBeVisible();
  await page.goto('/history');
  await expect(page.getByRole('heading', { name: 'This phone is locked' })).toBeVisible();
  await context.setOffline(false);
  await page.goto('/today');
  await page.waitForURL('**/pin');
  // Address and passphrase are asked only where somebody asks for them.
  await page.goto('/sign-in');
  await page.waitForURL('**/pin');
  await page.getByLabel('PIN').fill(pin);
  await press(page, 'Open');
  await page.waitForURL('**/today');
  await expect(page.getByRole('button', { name: 'Continue your session' })).toBeVisible();
  await context.close();
});

test('a browser that asks for German starts in German, with the choice at the top of signing in', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({ baseURL: baseURL!, locale: 'de-AT' });
  const page = await context.newPage();
  await page.goto('/sign-in');
  await expect(page.locator('html')).toHaveAttribute('lang', 'de');
  const first = page.locator('main').getByRole('button').first();
  await expect(first).toHaveText('English');
  await expectAccessible(page, 'signing in, in German');
  await first.click();
  await expect(page.locator('html')).toHaveAttribute('lang', 'en');
  await context.close();
});
