/** A phone whose clock is set back with a cuff on, and one without room. */
import { type Browser, type BrowserContext, expect, type Page, test } from '@playwright/test';
import {
  openWithWorker,
  phoneOf,
  untilDraftStands,
  untilReady,
} from '#commands/team/phone-sequences/sequence.ts';
import { answerAll, answerOne, headingOf } from '#commands/team/phone-sequences/walk.ts';
import { passTwoMinutes, press, untilSaved } from './support.ts';

/** Moves the phone's clock, and lets a time pass that no test waits for: also in pages opened after this. */
const clockMoved = async (page: Page, by: { readonly wall: number; readonly passed: number }) => {
  const move = ({ wall, passed }: typeof by) => {
    const [now, counted] = [Date.now.bind(Date), performance.now.bind(performance)];
    Date.now = () => now() + wall + passed;
    performance.now = () => counted() + passed;
  };
  await page.evaluate(move, by);
  await page.addInitScript(({ wall, passed }) => {
    const now = Date.now.bind(Date);
    Date.now = () => now() + wall + passed;
  }, by);
};

const minute = 60_000;

/** A phone whose answers stay on it: other tests begin the session of this day too. */
const unsent = async (browser: Browser, baseURL: string): Promise<BrowserContext> => {
  const context = await phoneOf(browser, baseURL, 'patient-4');
  await context.route('**/api/entries', (route) => route.abort());
  return context;
};

test('a cuff comes off by its time, also where the phone’s clock is set back by an hour and the page is reloaded', async ({
  browser,
  baseURL,
}) => {
  const context = await unsent(browser, baseURL!);
  const page = await openWithWorker(context);
  await press(page, 'Start the session');
  while (!/Set 1 of/.test(await headingOf(page))) await answerOne(page);
  await expect(page.locator('.cuff-bar-figure')).toHaveText(/^(10:00|9:\d\d)$/);
  await clockMoved(page, { wall: -60 * minute, passed: 6 * minute });
  await expect(page.locator('.cuff-bar-figure')).toHaveText(/^(4:00|3:\d\d)$/);
  await untilSaved(page);
  await page.reload();
  await expect(page.locator('.cuff-bar-figure')).toHaveText(/^(4:00|3:\d\d)$/);
  // Further back than the session is long: no way back leads from the clock of a cuff.
  for (let back = 0; back < 12; back++) {
    await page.goBack();
    await expect(page.locator('.cuff-bar-figure')).toHaveText(/^(4:00|3:\d\d)$/);
  }
  await clockMoved(page, { wall: 0, passed: 4 * minute });
  await expect(page.getByText('The time is up. Take it off now')).toBeVisible();
  await press(page, 'It is off');
  await expect(page.locator('.clock-band-figure')).toHaveText(/^(2:00|1:\d\d)$/);
  await context.close();
});

/** From now on the phone's store refuses what is kept under keys that begin so. */
const noRoomFor = (page: Page, prefix: string) =>
  page.evaluate((refused) => {
    const kept = IDBObjectStore.prototype.put;
    IDBObjectStore.prototype.put = function (...args) {
      if (String(args[1]).startsWith(refused)) throw new DOMException('No room.', 'QuotaExceededError');
      return kept.apply(this, args);
    };
  }, prefix);

test('a phone without room says so in the middle of the session, and what it could not set aside is there after a reload', async ({
  browser,
  baseURL,
}) => {
  const context = await unsent(browser, baseURL!);
  const page = await openWithWorker(context);
  const notSaved = page.getByText('This phone cannot keep your answers.');
  await press(page, 'Easier session');
  await untilDraftStands(page);
  await noRoomFor(page, 'draft:');
  await answerOne(page);
  await expect(notSaved).toBeVisible();
  await page.reload();
  await expect(notSaved).toBeHidden();
  await untilReady(page);
  // The session goes on by itself, once its pages have come: until then today stands there.
  await expect(page.locator('main h1').first()).not.toHaveText(/Hello /);
  await noRoomFor(page, 'entry:');
  await answerAll(page, (heading) => passTwoMinutes(page, heading));
  await expect(notSaved).toBeVisible();
  await page.reload();
  await expect(page.getByText('It is saved on this phone.')).toBeVisible();
  await context.close();
});
