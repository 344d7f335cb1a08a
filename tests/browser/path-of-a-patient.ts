/** The patient's part of the path, on a phone: today with its cautions, the session, the next morning. */
import { type Browser, type BrowserContext, expect, type Page } from '@playwright/test';
import { newPhone, untilReady } from '#commands/team/phone-sequences/sequence.ts';
import { answerAll, answerOne } from '#commands/team/phone-sequences/walk.ts';
import { expectAccessible, press, signIn } from './support.ts';

/** One page of each kind is looked at; the others differ by their words only. */
const kindOf = (heading: string): string => heading.replace(/\d+/g, 'n').split(' ').slice(0, 3).join(' ');

/** “As usual” is an answer from two minutes after release on. The time of this session counts: no clock is moved. */
const seatedForTwoMinutes = (page: Page) =>
  page.getByRole('button', { name: /^Yes, as usual/ }).waitFor({ timeout: 150_000 });

const answerAccessibly = async (page: Page, about: string, score: number) => {
  const looked = new Set<string>();
  const pages = await answerAll(
    page,
    async (heading) => {
      if (/^Do your toenails/.test(heading)) await seatedForTwoMinutes(page);
      if (looked.has(kindOf(heading))) return;
      looked.add(kindOf(heading));
      await expectAccessible(page, `${about}: ${heading}`);
    },
    { score, by: 'pointer' },
  );
  await expectAccessible(page, `${about}: the end`);
  return pages;
};

export const patientOnPhone = async (
  browser: Browser,
  baseURL: string,
): Promise<readonly [BrowserContext, Page]> => {
  const context = await newPhone(browser, baseURL);
  const page = await context.newPage();
  await signIn(page, 'patient-10');
  await untilReady(page);
  return [context, page];
};

/** What asks next may stand a moment later; answers are given to what is asked. */
const untilAsked = (page: Page, question: string | RegExp) =>
  expect(page.getByRole('heading', { level: 1 })).toHaveText(question);

const sent = (page: Page) =>
  expect(page.getByText('Your clinic has your answers.')).toBeVisible({ timeout: 20_000 });

/** The pain before and after, the highest between, the muscle's burn and the cuff's discomfort are asked apart. */
const asked = [
  /^What was the highest pain in your right knee\?/,
  /^How much did the muscles burn/,
  /^How much did the cuff or wrap bother you/,
];

export const session = async (page: Page) => {
  // Folded on most days: the doses, and the cautions once nothing is new.
  await page.getByText('Your exercises today').click();
  await expect(page.getByText(/with 4 kg/).first()).toBeVisible();
  await expect(page.getByText(/Cuff at 108 mmHg/)).toBeVisible();
  await expect(page.getByText('Measure your blood pressure before you start.')).toBeVisible();
  await expectAccessible(page, 'today');
  await press(page, /^Start the (easier )?session$/);
  await untilAsked(page, 'Do you have any of these today?');
  const headings = await answerAccessibly(page, 'session', 3);
  // Before and after, in the same words.
  expect(headings.filter((heading) => /^How much does your right knee hurt now/.test(heading))).toHaveLength(
    2,
  );
  for (const question of asked) expect(headings.filter((heading) => question.test(heading))).toHaveLength(1);
  expect(headings.filter((heading) => /Set \d of \d/.test(heading)).length).toBeGreaterThanOrEqual(10);
  await sent(page);
};

const choose = async (page: Page, answer: string, about: string) => {
  await expectAccessible(page, about);
  await page.getByRole('button', { name: answer, exact: true }).click();
};

/** A worse morning: 6 of 10, stiff for a quarter of an hour, a little more swollen than usual. */
export const morning = async (page: Page) => {
  await page.goto('/today');
  await untilReady(page);
  await expect(page.getByText(/^How much does your right knee hurt this morning/)).toBeVisible();
  await page.locator('.scores button[value="6"]').click();
  await untilAsked(page, /^Is your urine dark brown/);
  await answerOne(page);
  await untilAsked(page, /^How long was your right knee stiff/);
  await choose(page, '15 minutes', 'morning stiffness');
  await choose(page, 'A little more than usual', 'morning swelling');
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
