/** First paint of the patient's page on a slow phone and a slow line, against an empty page. */
import type { Browser } from 'playwright-core';
import { leastPairs, pairedOf } from '../pairs.ts';
import { type Measured, type Part, rounded } from '../part.ts';
import { withPages } from './page-servers.ts';
import { inBrowser, phone, timesSlower, visitor } from './slowed-page.ts';

/** A slow mobile line and a processor a quarter as fast; common practice for such tests, no standard. */
const line = { offline: false, latency: 150, downloadThroughput: 200_000, uploadThroughput: 93_750 };
const warmUpPairs = 2;

/** A fresh visit: nothing is cached. */
const paintOf = async (browser: Browser, address: string, cookie: string) => {
  const context = await visitor(browser, phone, address, cookie);
  try {
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
  run: ({ until }) =>
    inBrowser({ part: 'first-paint', title: firstPaintPart.about, bar: null }, (browser) =>
      measure(browser, until),
    ),
};
