/** Answers the patient's pages as a person would: reads what the page asks, presses what is there. */
import type { Locator, Page } from 'playwright-core';

export interface Answers {
  /** 0 to 10, given to every question of a score. */
  readonly score: number;
}

const calm: Answers = { score: 2 };

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first().click();
const isThere = async (found: Locator): Promise<boolean> => (await found.count()) > 0;

/** What stands on the page, by its most telling control, and what is done about it. First match counts. */
const ways: readonly {
  readonly sign: (page: Page) => Locator;
  readonly act: (page: Page, answers: Answers) => Promise<void>;
}[] = [
  {
    sign: (page) => page.getByLabel('None of these', { exact: true }),
    act: async (page) => {
      await page.getByLabel('None of these', { exact: true }).check();
      await press(page, 'Continue');
    },
  },
  {
    sign: (page) => page.locator('.scores'),
    act: async (page, { score }) => {
      await page.locator(`.scores input[value="${score}"]`).check();
      await press(page, 'Continue');
    },
  },
  {
    sign: (page) => page.getByRole('button', { name: 'Set done' }),
    act: async (page) => {
      await press(page, 'One more');
      await press(page, 'Set done');
    },
  },
  {
    // A cuff signed for work with a clinician present: one is.
    sign: (page) => page.getByRole('button', { name: 'Yes, go on', exact: true }),
    act: (page) => press(page, 'Yes, go on'),
  },
  {
    sign: (page) => page.getByRole('button', { name: 'It is on. Start the clock' }),
    act: (page) => press(page, 'It is on'),
  },
  {
    sign: (page) => page.getByRole('button', { name: 'It is off' }),
    act: (page) => press(page, 'It is off'),
  },
  {
    sign: (page) => page.getByLabel(/as planned$/),
    act: async (page) => {
      await page.getByLabel(/as planned$/).check();
      await press(page, /^(Start set 1|Continue)$/);
    },
  },
  {
    sign: (page) => page.getByLabel('Yes, colour and feeling are as usual'),
    act: async (page) => {
      await page.getByLabel('Yes, colour and feeling are as usual').check();
      await press(page, 'Continue');
    },
  },
  {
    sign: (page) => page.getByLabel('2 more', { exact: true }),
    act: async (page) => {
      await page.getByLabel('2 more', { exact: true }).check();
      await press(page, /^(Start set \d|Continue)$/);
    },
  },
  {
    sign: (page) => page.getByLabel('No', { exact: true }),
    act: async (page) => {
      await page.getByLabel('No', { exact: true }).check();
      await press(page, 'Continue');
    },
  },
  {
    sign: (page) => page.getByLabel('My muscles were tired'),
    act: async (page) => {
      await page.getByLabel('My muscles were tired').check();
      await press(page, /^(Leave the rest|Continue)/);
    },
  },
  {
    sign: (page) =>
      page.getByRole('button', {
        name: /^(Send to the clinic|Yes, all of this is right|Go on with this|Start set \d|Continue|Rest today and send)/,
      }),
    act: (page) =>
      press(
        page,
        /^(Send to the clinic|Yes, all of this is right|Go on with this|Start set \d|Continue|Rest today)/,
      ),
  },
];

export const headingOf = async (page: Page): Promise<string> =>
  ((await page.locator('main h1').first().textContent()) ?? '').replace(/\s+/g, ' ');

const isEnd = (heading: string): boolean => /Done|is done\.$|Hello |^Stop/.test(heading);

/** One answer; the heading it was given to, or null where the page asks nothing more. */
export const answerOne = async (page: Page, answers: Answers = calm): Promise<string | null> => {
  const heading = await headingOf(page);
  if (isEnd(heading)) return null;
  for (const { sign, act } of ways) {
    if (!(await isThere(sign(page)))) continue;
    await act(page, answers);
    return heading;
  }
  throw new Error(`Nobody knows what to answer on “${heading}”: ${await page.locator('main').textContent()}`);
};

/** Answers to the end; `onStep` sees each page before it is answered. */
export const answerAll = async (
  page: Page,
  onStep: (heading: string, place: number) => Promise<void> = async () => undefined,
  answers: Answers = calm,
): Promise<readonly string[]> => {
  const seen: string[] = [];
  for (let place = 0; place < 120; place++) {
    const heading = await headingOf(page);
    if (isEnd(heading)) return seen;
    await onStep(heading, place);
    seen.push(heading);
    await answerOne(page, answers);
  }
  throw new Error(`No end after ${seen.length} pages.`);
};
