/** A phone whose clock is off: every page of it reads the clock so much later, until it is put right. */
import type { BrowserContext, Page } from 'playwright-core';

const key = 'loadgate-test-clock';

/** Pages of this phone opened from now on can be set off. */
export const withMovableClock = (context: BrowserContext): Promise<unknown> =>
  context.addInitScript((name) => {
    const now = Date.now.bind(Date);
    // Read at each call: a clock that is put right is right at once.
    Date.now = () => now() + Number(window.localStorage.getItem(name) ?? 0);
  }, key);

export const setClockOff = (page: Page, ms: number): Promise<void> =>
  page.evaluate(([name, by]) => window.localStorage.setItem(name as string, String(by)), [key, ms] as const);
