/**
 * What befalls a phone beside the taps on it: left for longer than half an hour, a clock a day ahead, a second
 * phone of the same person, signing out without signal. Each leaves the session as it was.
 */
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { setClockOff } from './clock.ts';
import { answerOne } from './walk.ts';

const hour = 3_600_000;
/** Longer than the half hour after which warning signs are asked again. */
const away = 0.6 * hour;

export interface Phone {
  readonly browser: Browser;
  readonly context: BrowserContext;
  /** Another phone of the same person, signed in. */
  readonly second: () => Promise<BrowserContext>;
  readonly pin: string;
}

/** Hours pass without a look at the server's clock, which would put the phone's right. */
const late = async (phone: Phone, page: Page): Promise<void> => {
  await phone.context.route('**/healthz', (route) => route.abort());
  await setClockOff(page, away);
  await page.reload();
};

const dayAhead = async (phone: Phone, page: Page): Promise<void> => {
  await phone.context.unroute('**/healthz');
  await setClockOff(page, 24 * hour);
  await page.reload();
};

/** Begins today's session on another phone, and leaves it there. */
const secondPhone = async (phone: Phone): Promise<void> => {
  const context = await phone.second();
  const other = await context.newPage();
  await other.goto('/today');
  const start = other.getByRole('button', { name: /^Start the (easier )?session$/ });
  await other.waitForFunction(() => document.querySelector('main button:disabled') === null);
  if ((await start.count()) > 0) {
    await start.click();
    await answerOne(other);
  }
  await context.close();
};

/** Locked without signal, opened again with the PIN once there is one. */
const signOut = async ({ context, pin }: Phone, page: Page): Promise<void> => {
  await page.goto('/today');
  const resume = page.getByRole('button', { name: 'Continue your session' });
  if ((await resume.count()) === 0) return;
  await context.setOffline(true);
  await page.getByRole('button', { name: 'Sign out' }).click();
  await page.getByRole('button', { name: 'Lock, and keep what I began' }).click();
  await page.getByRole('heading', { name: 'This phone is locked' }).waitFor();
  await context.setOffline(false);
  await page.goto('/today');
  await page.waitForURL('**/pin');
  await page.getByLabel('PIN').fill(pin);
  await page.getByRole('button', { name: 'Open' }).click();
  await page.waitForURL('**/today');
};

export const troubles = {
  late,
  'day-ahead': dayAhead,
  'second-phone': secondPhone,
  'sign-out': signOut,
} as const;
export type Trouble = keyof typeof troubles;
