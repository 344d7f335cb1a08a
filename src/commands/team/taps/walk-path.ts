/** Walks one path on a phone in the browser, press by press, and counts what is pressed and read. */
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { phoneOf, untilReady } from '../phone-sequences/sequence.ts';
import { countWords, onceEach, type PageWords, wordsOn } from './words-on.ts';

/** Minutes in which nothing is pressed; the clock of the phone is moved on. */
interface Wait {
  readonly minutes: number;
}

/** The accessible name of what is pressed, one pointer press each. */
export type Press = string | RegExp | Wait;

const isWait = (press: Press): press is Wait => typeof press === 'object' && 'minutes' in press;

const waitFor = async (page: Page, { minutes }: Wait): Promise<void> => {
  await page.clock.install();
  await page.clock.fastForward(minutes * 60_000);
};

export interface Walked {
  readonly taps: number;
  readonly pages: readonly PageWords[];
  readonly headings: readonly string[];
  /** Foot of the last thing to do, or done, on today's page before the first press, in CSS pixels. */
  readonly todayPx: number;
}

const settled = async (page: Page): Promise<void> => {
  await page.waitForSelector('html[data-page="open"]', { state: 'attached' });
  await untilReady(page);
};

const headingOf = async (page: Page): Promise<string> =>
  ((await page.locator('main h1').first().textContent()) ?? '').trim();

/** Every press is a button of its exact name; more than one of them on a page is a fault of the page. */
const buttonOf = (page: Page, name: Exclude<Press, Wait>) =>
  page.locator('main').getByRole('button', { name, exact: typeof name === 'string' });

export interface Walk {
  readonly browser: Browser;
  readonly address: string;
  readonly who: string;
  readonly presses: readonly Press[];
  /** Where a picture of each press is kept. */
  readonly keep?: string;
}

export const walkPath = async ({ browser, address, who, presses, keep }: Walk): Promise<Walked> => {
  const context = await phoneOf(browser, address, who);
  const page = await context.newPage();
  const pages: PageWords[] = [];
  const headings: string[] = [];
  try {
    await page.goto('/today');
    await settled(page);
    const todayPx = await page.evaluate(() =>
      Math.max(
        ...[...document.querySelectorAll('main :is(.button-large, .score, .done-today)')].map((one) =>
          Math.round(one.getBoundingClientRect().bottom),
        ),
      ),
    );
    for (const [place, name] of presses.entries()) {
      if (isWait(name)) {
        await waitFor(page, name);
        continue;
      }
      headings.push(await headingOf(page));
      pages.push(await wordsOn(page));
      if (keep) await page.screenshot({ path: path.join(keep, `${String(place).padStart(2, '0')}.png`) });
      await buttonOf(page, name).click({ timeout: 20_000 });
      await settled(page);
    }
    await page.getByText('Your clinic has your answers.').waitFor({ timeout: 30_000 });
    headings.push(await headingOf(page));
    pages.push(await wordsOn(page));
    if (keep) await page.screenshot({ path: path.join(keep, 'end.png'), fullPage: true });
    return { taps: presses.filter((press) => !isWait(press)).length, pages, headings, todayPx };
  } catch (error) {
    const text = await page.locator('main').textContent();
    throw new Error(
      `On “${await headingOf(page)}”: ${error instanceof Error ? error.message : error}\n${text}`,
    );
  } finally {
    await context.close();
  }
};

/** Words of a path: each sentence once, labels apart. */
export const wordsOf = ({ pages }: Walked): number =>
  onceEach(pages.flatMap((page) => page.sentences)).reduce((count, text) => count + countWords(text), 0);
