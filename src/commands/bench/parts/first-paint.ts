/** First paint of the patient's page on a slow phone and a slow line, against an empty page. */
import { type Browser, chromium } from 'playwright-core';
import { browserArguments, installedBrowser, noBrowserAdvice } from '../../browser.mjs';
import { leastPairs, pairedOf } from '../pairs.ts';
import { type Measured, type Part, rounded } from '../part.ts';
import { withPages } from './page-servers.ts';

/** A slow mobile line and a processor a quarter as fast; common practice for such tests, no standard. */
const line = { offline: false, latency: 150, downloadThroughput: 200_000, uploadThroughput: 93_750 };
const timesSlower = 4;
const phone = { viewport: { width: 390, height: 844 }, deviceScaleFactor: 2, isMobile: true, hasTouch: true };
const warmUpPairs = 2;

/** A fresh visit: nothing is cached. */
const paintOf = async (browser: Browser, address: string, cookie: string) => {
  const context = await browser.newContext(phone);
  try {
    const { hostname } = new URL(address);
    const cookies = cookie.split('; ').filter(Boolean);
    await context.addCookies(
      cookies.map((pair) => {
        const at = pair.indexOf('=');
        return { name: pair.slice(0, at), value: pair.slice(at + 1), domain: hostname, path: '/' };
      }),
    );
    const page = await context.newPage();
    const session = await context.newCDPSession(page);
    await session.send('Network.enable');
    await session.send('Network.emulateNetworkConditions', line);
    await session.send('Emulation.setCPUThrottlingRate', { rate: timesSlower });
    const answer = await page.goto(address, { waitUntil: 'load' });
    if (answer?.url() !== address) throw new Error(`${address} led to ${answer?.url()}.`);
    return await page.evaluate(
      () =>
        new Promise<number>((resolve) => {
          new PerformanceObserver((list) => {
            const [paint] = list.getEntriesByName('first-contentful-paint');
            if (paint) resolve(paint.startTime);
          }).observe({ type: 'paint', buffered: true });
        }),
    );
  } finally {
    await context.close();
  }
};

const measure = (browser: Browser, until: number): Promise<readonly Measured[]> =>
  withPages(async ({ patientPage, emptyPage, cookie }) => {
    const times: [number, number][] = [];
    for (let pair = -warmUpPairs; pair < leastPairs || performance.now() < until; pair++) {
      const patient = await paintOf(browser, patientPage, cookie);
      const empty = await paintOf(browser, emptyPage, '');
      if (pair >= 0) times.push([patient, empty]);
    }
    const paired = pairedOf(times);
    const figures = { 'patient ms': rounded(paired.firstMs), 'empty ms': rounded(paired.secondMs) };
    return [{ part: 'first-paint', title: firstPaintPart.about, bar: null, paired, figures }];
  });

export const firstPaintPart: Part = {
  name: 'first-paint',
  about: 'first paint of the patient’s page on a throttled phone ÷ of an empty page',
  run: async (settings): Promise<readonly Measured[]> => {
    const executablePath = installedBrowser();
    const { about: title } = firstPaintPart;
    if (!executablePath) {
      return [{ part: 'first-paint', title, bar: null, paired: null, figures: {}, skipped: noBrowserAdvice }];
    }
    const browser = await chromium.launch({ executablePath, args: browserArguments });
    try {
      return await measure(browser, settings.until);
    } finally {
      await browser.close();
    }
  },
};
