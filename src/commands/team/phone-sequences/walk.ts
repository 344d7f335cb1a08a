/** Answers the patient's pages as a person would: reads what the page asks, presses what is there. */
import type { Locator, Page } from 'playwright-core';

export interface Answers {
  /** 0 to 10, given to every question of a score. */
  readonly score: number;
  /** Keys where left out: a page that is new hears them at once, a pointer half a second later. */
  readonly by?: 'pointer';
}

const calm: Answers = { score: 2 };

const give = (answer: Locator, { by }: Answers) =>
  by === 'pointer' ? answer.click() : answer.press('Enter');

/**
 * Heading and controls of a page, read in one go: asking for each by itself would take most of a session's
 * time, and the page may be another one in between.
 */
interface Seen {
  readonly heading: string;
  readonly buttons: readonly string[];
  readonly hasScores: boolean;
}

const seenOn = (page: Page): Promise<Seen> =>
  page.evaluate(() => {
    const main = document.querySelector('main');
    return {
      heading: (main?.querySelector('h1')?.textContent ?? '').replace(/\s+/g, ' '),
      buttons: [...(main?.querySelectorAll('button') ?? [])].map(
        (button) => button.getAttribute('aria-label') ?? button.textContent.trim(),
      ),
      hasScores: main?.querySelector('.scores') !== null,
    };
  });

const hasButton = (name: RegExp) => (seen: Seen) => seen.buttons.some((one) => name.test(one));

interface Way {
  readonly sign: (seen: Seen) => boolean;
  readonly act: (page: Page, answers: Answers) => Promise<void>;
}

/** Presses the answer of this name: an answer goes on by itself. */
const answer = (name: RegExp): Way => ({
  sign: hasButton(name),
  act: (page, answers) => give(page.getByRole('button', { name }).first(), answers),
});

const drawnWithinMs = 5_000;

const onward =
  /^(Send to the clinic|Yes, all of this is right|Continue like this|Start set \d|Continue|Rest today and send)/;

/** What stands on the page, by its most telling control, and what is done about it. First match counts. */
const ways: readonly Way[] = [
  answer(/^No, none of these/),
  {
    sign: ({ hasScores }) => hasScores,
    act: (page, answers) => give(page.locator(`.scores button[value="${answers.score}"]`), answers),
  },
  answer(/^Yes, as usual/),
  answer(/^As planned: /),
  // A cuff signed for work with a clinician present: one is.
  answer(/^Yes, go on$/),
  answer(/^It is on/),
  answer(/^Pump it up again/),
  answer(/^Let it down now/),
  answer(/^It is off$/),
  answer(/^2 more/),
  answer(/^Yes, all as yesterday/),
  answer(/^Not stiff/),
  answer(/^No more than usual/),
  answer(/^No, neither/),
  answer(/^No$/),
  answer(/^None of these$/),
  answer(/^I lost count$/),
  answer(/^My muscles were tired$/),
  answer(/^Leave out the rest/),
  answer(onward),
];

export const headingOf = async (page: Page): Promise<string> =>
  ((await page.locator('main h1').first().textContent()) ?? '').replace(/\s+/g, ' ');

const isEnd = (heading: string): boolean => /Done|done\.$|Hello |^Stop/.test(heading);

const wayOn = (seen: Seen): Way | undefined => ways.find(({ sign }) => sign(seen));

/** A page between two questions has nothing to press yet; one that stays so is told as it is. */
const seenOnceDrawn = async (page: Page): Promise<Seen> => {
  const until = Date.now() + drawnWithinMs;
  for (;;) {
    const seen = await seenOn(page);
    if (isEnd(seen.heading) || wayOn(seen) !== undefined || Date.now() > until) return seen;
    await page.evaluate(() => new Promise(requestAnimationFrame));
  }
};

/** One answer; the heading it was given to, or null where the page asks nothing more. */
export const answerOne = async (page: Page, answers: Answers = calm): Promise<string | null> => {
  await page.locator('main h1').first().waitFor();
  const seen = await seenOnceDrawn(page);
  if (isEnd(seen.heading)) return null;
  const way = wayOn(seen);
  if (way) {
    await way.act(page, answers);
    return seen.heading;
  }
  throw new Error(
    `Nobody knows what to answer on “${seen.heading}”: ${await page.locator('main').textContent()}`,
  );
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
