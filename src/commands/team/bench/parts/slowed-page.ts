/** What the parts that measure in a browser share: the browser, a visitor, a slowed processor. */
import {
  type Browser,
  type BrowserContextOptions,
  type CDPSession,
  chromium,
  type Page,
} from 'playwright-core';
import { browserArguments, installedBrowser, noBrowserAdvice } from '#commands/browser.mjs';
import type { Measured } from '../part.ts';

export const timesSlower = 4;
/** The bar: under this an answer feels as if it came at once (common figure, no standard). */
export const mostMs = 100;

export const taskMs = async (session: CDPSession): Promise<number> => {
  const { metrics } = await session.send('Performance.getMetrics');
  return (metrics.find(({ name }) => name === 'TaskDuration')?.value ?? Number.NaN) * 1000;
};

/** Until what was done has been drawn. */
export const untilDrawn = (page: Page): Promise<unknown> =>
  page.evaluate(() => new Promise((resolve) => requestAnimationFrame(() => requestAnimationFrame(resolve))));

/** A session whose times are the thread's own: what other programs take of the processor is not the page's. */
export const slowed = async (page: Page): Promise<CDPSession> => {
  const session = await page.context().newCDPSession(page);
  await session.send('Performance.enable', { timeDomain: 'threadTicks' });
  await session.send('Emulation.setCPUThrottlingRate', { rate: timesSlower });
  return session;
};

/** The least the browser tells of; what took less is counted as this. */
const leastToldMs = 16;

/** From the event to the next paint, as the browser itself tells it (W3C Event Timing), in steps of 8 ms. */
export const watchEvents = (page: Page): Promise<void> =>
  page.evaluate((durationThreshold) => {
    const told: number[] = [];
    Object.assign(window, { toldEvents: told });
    new PerformanceObserver((list) => {
      for (const entry of list.getEntries()) told.push(entry.duration);
    }).observe({ type: 'event', durationThreshold } as PerformanceObserverInit);
  }, leastToldMs);

/** The longest event since it was last asked. */
export const longestEvent = (page: Page): Promise<number> =>
  page.evaluate((least) => {
    const { toldEvents } = window as unknown as { readonly toldEvents: number[] };
    return Math.max(least, ...toldEvents.splice(0));
  }, leastToldMs);

export const phone = {
  viewport: { width: 390, height: 844 },
  deviceScaleFactor: 2,
  isMobile: true,
  hasTouch: true,
};

/** Opens a browser for the work and closes it; where there is none, `skipped` stands with the reason. */
export const inBrowser = async (
  skipped: Pick<Measured, 'part' | 'title' | 'bar'>,
  work: (browser: Browser) => Promise<readonly Measured[]>,
): Promise<readonly Measured[]> => {
  const executablePath = installedBrowser();
  if (!executablePath) return [{ ...skipped, paired: null, figures: {}, skipped: noBrowserAdvice }];
  const browser = await chromium.launch({ executablePath, args: browserArguments });
  try {
    return await work(browser);
  } finally {
    await browser.close();
  }
};

/** Somebody with these cookies; with none, somebody signed out. */
export const visitor = async (
  browser: Browser,
  device: BrowserContextOptions,
  address: string,
  cookie: string,
) => {
  const context = await browser.newContext(device);
  const { hostname } = new URL(address);
  await context.addCookies(
    cookie
      .split('; ')
      .filter(Boolean)
      .map((pair) => {
        const at = pair.indexOf('=');
        return { name: pair.slice(0, at), value: pair.slice(at + 1), domain: hostname, path: '/' };
      }),
  );
  return context;
};
