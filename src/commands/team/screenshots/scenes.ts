/** What each picture of the README shows, and how a person gets there. */
import type { Browser, Page, ViewportSize } from 'playwright-core';
import { signInAs } from '../open-browser.ts';
import { phoneOf, untilReady } from '../phone-sequences/sequence.ts';
import { answerOne, headingOf } from '../phone-sequences/walk.ts';

export interface Scene {
  /** The file's name without its ending. */
  readonly name: string;
  /** Brings the page to where the picture is taken, and closes nothing. */
  readonly open: (browser: Browser, address: string) => Promise<Page>;
}

const deskOf = async (browser: Browser, address: string, size: ViewportSize): Promise<Page> => {
  const context = await browser.newContext({ viewport: size, baseURL: address });
  await signInAs(context, address, 'clinician');
  return context.newPage();
};

/** The heading to the top of the window, under a bar that stays in sight. */
const toTop = (page: Page, heading: string): Promise<void> =>
  page.getByRole('heading', { name: heading, exact: true }).evaluate((node) => node.scrollIntoView());

const worklist: Scene = {
  name: 'worklist',
  open: async (browser, address) => {
    const page = await deskOf(browser, address, { width: 1000, height: 700 });
    await page.goto('/worklist');
    return page;
  },
};

const summary: Scene = {
  name: 'summary',
  open: async (browser, address) => {
    const page = await deskOf(browser, address, { width: 1280, height: 800 });
    await page.goto('/patients/steady-progress');
    return page;
  },
};

const review: Scene = {
  name: 'review',
  open: async (browser, address) => {
    const page = await deskOf(browser, address, { width: 1280, height: 800 });
    await page.goto('/patients/steady-progress/review');
    await page.locator('svg.recharts-surface').first().waitFor();
    return page;
  },
};

const outcomes: Scene = {
  name: 'outcomes',
  open: async (browser, address) => {
    const page = await deskOf(browser, address, { width: 1280, height: 800 });
    await page.goto('/patients/steady-progress/outcomes');
    return page;
  },
};

/** Occlusion stands closed with its reasons; a low load is asked for and proposed. */
const prescribe: Scene = {
  name: 'prescribe',
  open: async (browser, address) => {
    const page = await deskOf(browser, address, { width: 1200, height: 840 });
    await page.goto('/patients/occlusion-not-cleared/prescribe?method=low-load');
    await page.getByRole('link', { name: /^Low load, right\s*: Seated knee extension$/ }).click();
    await page.getByRole('button', { name: 'Propose a dose' }).click();
    await page.getByRole('region', { name: 'Proposed dose' }).waitFor();
    await toTop(page, 'Exercise');
    return page;
  },
};

const today: Scene = {
  name: 'today',
  open: async (browser, address) => {
    const page = await (await phoneOf(browser, address, 'patient-1')).newPage();
    await page.goto('/today');
    await untilReady(page);
    return page;
  },
};

/** The first question answered on a scale from 0 to 10. */
const question: Scene = {
  name: 'question',
  open: async (browser, address) => {
    const page = await (await phoneOf(browser, address, 'patient-1')).newPage();
    await page.goto('/today');
    await untilReady(page);
    await page.getByRole('button', { name: 'Start the session' }).click();
    while ((await page.locator('.scores').count()) === 0) {
      const heading = await headingOf(page);
      if ((await answerOne(page)) === null) throw new Error(`No question of a score before “${heading}”.`);
    }
    return page;
  },
};

/** The chart with the line above it that says whose figures these are, and the table below. */
const inventedPeople: Scene = {
  name: 'invented-people',
  open: async (browser, address) => {
    const page = await deskOf(browser, address, { width: 1000, height: 1040 });
    await page.goto('/rules');
    await page.locator('.trial-box svg.recharts-surface').waitFor();
    await toTop(page, 'Invented people');
    return page;
  },
};

export const scenes: readonly Scene[] = [
  worklist,
  summary,
  review,
  prescribe,
  outcomes,
  today,
  question,
  inventedPeople,
];
