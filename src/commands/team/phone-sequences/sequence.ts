/** One session on a phone under a drawn sequence of moves; at the end it stands on the server once. */
import type { Browser, BrowserContext, Page } from 'playwright-core';
import { seeded } from '#simulation/raises/seeded.ts';
import { signInAs } from '../open-browser.ts';
import { setClockOff, withMovableClock } from './clock.ts';
import type { OwnServer } from './own-server.ts';
import { type Phone, type Trouble, troubles } from './trouble.ts';
import { answerAll, answerOne, headingOf } from './walk.ts';

export const phoneSize = { width: 390, height: 844 };

/** A phone nobody has signed in on. */
export const newPhone = (browser: Browser, baseURL: string): Promise<BrowserContext> =>
  browser.newContext({
    viewport: phoneSize,
    isMobile: true,
    hasTouch: true,
    timezoneId: 'Europe/Dublin',
    baseURL,
  });

export const phoneOf = async (browser: Browser, baseURL: string, who: string): Promise<BrowserContext> => {
  const context = await newPhone(browser, baseURL);
  await signInAs(context, baseURL, who);
  return context;
};

/** The page is opened once with signal, so that the worker holds it. */
export const openWithWorker = async (context: BrowserContext): Promise<Page> => {
  const page = await context.newPage();
  await page.goto('/today');
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    while (!(await caches.match('/today'))) await new Promise((resolve) => setTimeout(resolve, 50));
  });
  return page;
};

const moves = [
  'answer',
  'answer',
  'answer',
  'back',
  'reload',
  'offline',
  'online',
  'reopen',
  'resend',
] as const;
/** Drawn besides where the server is the sequence's own. */
const serverMoves = ['stop-server', 'start-server'] as const;
const troubleMoves = Object.keys(troubles) as readonly Trouble[];
/** They need the server: one that stands still is started first. */
const needsServer: readonly Move[] = ['second-phone', 'sign-out'];
type Move = (typeof moves)[number] | (typeof serverMoves)[number] | Trouble;

/** A server that may be stopped and started in the middle. */
export type Stoppable = Pick<OwnServer, 'start' | 'stop'>;

interface Hand {
  readonly context: BrowserContext;
  readonly server?: Stoppable;
  /** Left out where nothing befalls the phone. */
  readonly phone?: Phone;
  page: Page;
}

const befalls =
  (trouble: Trouble) =>
  async ({ phone, page, context, server }: Hand): Promise<void> => {
    if (!phone) return;
    if (needsServer.includes(trouble)) {
      await context.setOffline(false);
      await server?.start();
    }
    await troubles[trouble](phone, page);
  };

/** The session goes on where it stood, or was ended before the page was left. */
const goOn = async (page: Page): Promise<void> => {
  const resume = page.getByRole('button', { name: 'Continue your session' });
  // A page that was reloaded goes on by itself, and the button is gone again.
  if ((await resume.count()) > 0) await resume.click({ timeout: 2000 }).catch(() => undefined);
};

const acts: Readonly<Record<Move, (hand: Hand) => Promise<unknown>>> = {
  answer: async ({ page }) => {
    await goOn(page);
    return answerOne(page);
  },
  back: async ({ page }) => {
    if (!/Hello |^Done/.test(await headingOf(page))) await page.goBack();
  },
  reload: ({ page }) => page.reload(),
  offline: ({ context }) => context.setOffline(true),
  online: ({ context }) => context.setOffline(false),
  reopen: async (hand) => {
    await hand.page.close();
    hand.page = await hand.context.newPage();
    await hand.page.goto('/today');
  },
  resend: async ({ page }) => {
    const send = page.getByRole('button', { name: 'Send now' });
    if ((await send.count()) > 0) await send.click();
  },
  'stop-server': async ({ server }) => server?.stop(),
  'start-server': async ({ server }) => server?.start(),
  late: befalls('late'),
  'day-ahead': befalls('day-ahead'),
  'second-phone': befalls('second-phone'),
  'sign-out': befalls('sign-out'),
};

/** Buttons wake once the phone's store has been read; a session that was left then opens by itself. */
export const untilReady = async (page: Page): Promise<void> => {
  await page.locator('main h1').first().waitFor();
  await page.waitForFunction(() => document.querySelector('main button:disabled') === null);
  await page.evaluate(
    () => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))),
  );
};

/** As text: it runs in the page, where what a loader adds to named functions is not known. */
const draftKeysInStore = `new Promise((resolve) => {
  const asked = indexedDB.open('loadgate-phone');
  asked.onsuccess = () => {
    const names = asked.result.transaction('kept').objectStore('kept').getAllKeys();
    names.onsuccess = () => {
      asked.result.close();
      resolve(names.result.filter((name) => String(name).startsWith('draft:')).length);
    };
  };
})`;

/** The page writes after it shows, encrypted first: a page closed within those milliseconds has not begun. */
export const untilDraftStands = async (page: Page): Promise<void> => {
  for (let tries = 0; tries < 200; tries++) {
    if ((await page.evaluate(draftKeysInStore)) !== 0) return;
  }
  throw new Error('The session that was begun is not kept on the phone.');
};

export interface Sequence {
  readonly seed: number;
  readonly moves: readonly Move[];
}

export const drawSequence = (seed: number, hasServer = false): Sequence => {
  const random = seeded(seed);
  const length = 8 + random.below(10);
  const drawn: readonly Move[] = hasServer ? [...moves, ...serverMoves, ...troubleMoves] : moves;
  return { seed, moves: Array.from({ length }, () => random.pick(drawn)) };
};

/** Plays it and brings the session to its end; false where no session stands on this day. */
export const playSequence = async (
  context: BrowserContext,
  { moves: list }: Sequence,
  server?: Stoppable,
  phone?: Phone,
): Promise<boolean> => {
  await withMovableClock(context);
  const hand: Hand = { context, server, phone, page: await openWithWorker(context) };
  const start = () => hand.page.getByRole('button', { name: /^Start the (easier )?session$/ });
  await untilReady(hand.page);
  if ((await start().count()) === 0) return false;
  await start().click();
  await untilDraftStands(hand.page);
  for (const move of list) {
    await acts[move](hand);
    await untilReady(hand.page);
  }
  await context.setOffline(false);
  await server?.start();
  await setClockOff(hand.page, 0);
  await context.unroute('**/healthz');
  await hand.page.goto('/today');
  await untilReady(hand.page);
  // What was begun is still there: open, waiting to be gone on with, or ended and saved.
  if ((await start().count()) > 0) throw new Error('The session that was begun is gone.');
  await goOn(hand.page);
  await untilReady(hand.page);
  await answerAll(hand.page);
  await hand.page.goto('/today');
  await hand.page.getByText('Your clinic has today’s session').waitFor();
  return true;
};
