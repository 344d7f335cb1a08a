/** The patient's part of the path, on a phone: today with its cautions, the session, the next morning. */
import { type Browser, type BrowserContext, expect, type Page } from '@playwright/test';
import { phoneSize, untilReady } from '#commands/phone-sequences/sequence.ts';
import { answerAll, answerOne } from '#commands/phone-sequences/walk.ts';
import { expectAccessible, signIn } from './support.ts';

/** One page of each kind is looked at; the others differ by their words only. */
const kindOf = (heading: string): string => heading.replace(/\d+/g, 'n').split(' ').slice(0, 3).join(' ');

const answerAccessibly = async (page: Page, about: string, score: number) => {
  const looked = new Set<string>();
  const pages = await answerAll(
    page,
    async (heading) => {
      if (looked.has(kindOf(heading))) return;
      looked.add(kindOf(heading));
      await expectAccessible(page, `${about}: ${heading}`);
    },
    { score },
  );
  await expectAccessible(page, `${about}: the end`);
  return pages;
};

export const patientOnPhone = async (
  browser: Browser,
  baseURL: string,
): Promise<readonly [BrowserContext, Page]> => {
  const context = await browser.newContext({
    viewport: phoneSize,
    isMobile: true,
    hasTouch: true,
    timezoneId: 'Europe/Dublin',
    baseURL,
  });
  const page = await context.newPage();
  await signIn(page, 'patient-10');
  await untilReady(page);
  return [context, page];
};

const sent = (page: Page) =>
  expect(page.getByText('Your clinic has your answers.')).toBeVisible({ timeout: 20_000 });

/** The pain before, during and after, the muscle's burn and the cuff's discomfort are asked apart. */
const asked = [
  /^How is the pain in your right knee right now/,
  /^What was the worst pain in your right knee in the session/,
  /^How is the pain in your right knee now/,
  /^How much did the muscles burn/,
  /^How much did the cuff or wrap bother you/,
];

export const session = async (page: Page) => {
  await expect(page.getByText(/3\.5 kg/).first()).toBeVisible();
  await expect(page.getByText(/Cuff at 108 mmHg/)).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Keep in mind' })).toBeVisible();
  await expect(page.getByText('Measure your blood pressure before you start.')).toBeVisible();
  await expectAccessible(page, 'today');
  await page.getByRole('button', { name: 'Start the session' }).click();
  const headings = await answerAccessibly(page, 'session', 3);
  for (const question of asked) expect(headings.filter((heading) => question.test(heading))).toHaveLength(1);
  expect(headings.filter((heading) => /Set \d of \d/.test(heading)).length).toBeGreaterThanOrEqual(10);
  await sent(page);
};

const choose = async (page: Page, answer: string, about: string) => {
  await page.getByLabel(answer, { exact: true }).check();
  await expectAccessible(page, about);
  await page.getByRole('button', { name: 'Continue' }).click();
};

/** A worse morning: 6 of 10, stiff for a quarter of an hour, a little swollen. */
export const morning = async (page: Page) => {
  await page.goto('/today');
  await untilReady(page);
  await page.getByRole('button', { name: 'Morning check' }).click();
  await answerOne(page);
  expect(await answerOne(page, { score: 6 })).toMatch(/^How is the pain in your right knee this morning/);
  await page.getByRole('button', { name: 'No, or I am not sure' }).click();
  expect(await answerOne(page)).toMatch(/Do you have any of these/);
  await choose(page, '15 minutes', 'morning stiffness');
  await choose(page, 'A little. I can just see or feel it', 'morning swelling');
  await answerAccessibly(page, 'morning', 6);
  await sent(page);
};

/** What was taken back holds at once, and the patient is told. */
export const readWhatChanged = async (page: Page) => {
  await page.goto('/today');
  await untilReady(page);
  await expect(page.getByText(/11–18 repetitions instead of 15–25/)).toBeVisible();
  await expectAccessible(page, 'today, after the decision');
};
