/**
 * Time on the main thread that one tap takes on the patient's page, on a processor slowed to a quarter.
 * The answer is a radio of the 0 to 10 question; the step is Continue, which draws the next page, writes
 * the draft to the phone and moves the focus. Counted is every task of the page from the touch until two
 * frames later, so it is more than the tap alone and never less.
 */
import type { Browser, CDPSession, Page } from 'playwright-core';
import { leastPairs, pairedOf } from '../pairs.ts';
import { type Measured, type Part, rounded } from '../part.ts';
import { withPages } from './page-servers.ts';
import { inBrowser, mostMs, phone, slowed, taskMs, untilDrawn, visitor } from './slowed-page.ts';

const warmUp = 2;

/** A touch sent to the browser itself: asking the page where its button is would count as its work. */
const tapped = async (page: Page, session: CDPSession, selector: string): Promise<number> => {
  const target = page.locator(selector).first();
  await target.scrollIntoViewIfNeeded();
  const box = await target.boundingBox();
  if (!box) throw new Error(`Nothing to tap at ${selector}.`);
  await untilDrawn(page);
  const touchPoints = [{ x: box.x + box.width / 2, y: box.y + box.height / 2 }];
  const before = await taskMs(session);
  await session.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints });
  await session.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
  await untilDrawn(page);
  return (await taskMs(session)) - before;
};

const toScore = async (page: Page, address: string): Promise<void> => {
  await page.goto(address);
  await page.locator('main button:enabled', { hasText: /^Start the session$/ }).click();
  await page.getByRole('button', { name: 'No, none of these' }).click();
  await page.locator('.scores').waitFor();
};

const measure = (browser: Browser, until: number): Promise<readonly Measured[]> =>
  withPages(async ({ patientPage, cookie }) => {
    const answers: number[] = [];
    const steps: number[] = [];
    for (let round = -warmUp; round < leastPairs || performance.now() < until; round++) {
      // A phone of its own each time: a session that was begun would be gone on with.
      const context = await visitor(browser, phone, patientPage, cookie);
      const page = await context.newPage();
      await toScore(page, patientPage);
      await page.waitForSelector('html[data-page="open"]', { state: 'attached' });
      const session = await slowed(page);
      const answer = await tapped(page, session, '.score-3');
      await page.getByText('As usual today?').waitFor();
      await page.waitForSelector('html[data-page="open"]', { state: 'attached' });
      const step = await tapped(page, session, '.answers button');
      await page.getByText(/^Exercise 1 of/).waitFor();
      await context.close();
      if (round >= 0) {
        answers.push(answer);
        steps.push(step);
      }
    }
    return [
      { title: 'a tap on a score', times: answers },
      { title: 'a tap on a statement', times: steps },
    ].map(({ title, times }) => {
      const paired = pairedOf(times.map((ms) => [ms, mostMs] as const));
      const figures = { 'median ms': rounded(paired.firstMs), 'longest ms': rounded(Math.max(...times)) };
      return { part: 'tap', title: `${title}, main thread at 4× slower ÷ 100 ms`, bar: 1, paired, figures };
    });
  });

export const tapPart: Part = {
  name: 'tap',
  about: 'main-thread time of one tap on a slowed phone ÷ 100 ms',
  run: ({ until }) =>
    inBrowser({ part: 'tap', title: tapPart.about, bar: 1 }, (browser) => measure(browser, until)),
};
