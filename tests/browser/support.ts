/** What every browser test needs: sign-in, the clinical clock, and an eye for accessibility and script errors. */
import AxeBuilder from '@axe-core/playwright';
import { type BrowserContext, expect, type Locator, type Page } from '@playwright/test';
import { demoPassphrase } from '#demo/clinic.ts';

export const phone = { width: 390, height: 844 };
export const desk = { width: 1280, height: 900 };

/** Its script has come: a press before that goes unheard, also by a person's finger, who then presses again. */
export const heard = async (element: Locator): Promise<Locator> => {
  await expect
    .poll(() => element.evaluate((node) => Object.keys(node).some((key) => key.startsWith('__reactProps$'))))
    .toBe(true);
  return element;
};

export const press = async (
  page: Page,
  name: string | RegExp,
  more: { readonly exact?: boolean } = {},
): Promise<void> => (await heard(page.getByRole('button', { name, ...more }).first())).click();

/** “As usual” is an answer from two minutes after release on: the phone’s clock goes past them. */
export const passTwoMinutes = async (page: Page, heading: string): Promise<void> => {
  if (!/^Do your toenails/.test(heading)) return;
  await page.clock.install();
  await page.clock.fastForward(125_000);
};

/** All there are, once the first has come. */
export const tickAll = async (boxes: Locator): Promise<void> => {
  await heard(boxes.first());
  for (const box of await boxes.all()) await box.check();
};

/** Signs in through the sign-in page, as a person would. */
export const signIn = async (page: Page, who: string): Promise<void> => {
  await page.goto('/sign-in');
  await page.getByLabel(/e-?mail/i).fill(`${who}@demo.invalid`);
  await page.getByLabel(/passphrase/i).fill(demoPassphrase);
  await page.getByRole('button', { name: /sign in/i }).click();
  await page.waitForURL((url) => !url.pathname.startsWith('/sign-in'));
};

/** Signs in without the page, for tests about something else. */
export const signedIn = async (context: BrowserContext, baseURL: string, who: string): Promise<void> => {
  const answer = await context.request.post('/api/auth/sign-in/email', {
    data: { email: `${who}@demo.invalid`, password: demoPassphrase },
    headers: { origin: baseURL },
  });
  expect(answer.status()).toBe(200);
};

/** Moves the demo's clinical clock forward. */
export const moveClock = async (context: BrowserContext, instant: string): Promise<void> => {
  const answer = await context.request.post('/demo/clock', { data: { now: instant } });
  expect([200, 409]).toContain(answer.status());
};

/** Finds no accessibility violation of WCAG 2.2 A and AA on the page as it stands; or only what a change of look can bring. */
export const expectAccessible = async (page: Page, name: string): Promise<void> => {
  // What lies half under a bar that stays in sight is whole once it is scrolled to.
  await page.evaluate(() => window.scrollTo(0, 0));
  // Run in the page itself: without it each look opens a window of its own to sum up. No page here has frames.
  // The checker is half a megabyte: a page that has it from the look before is not given it again.
  const isThere = await page.evaluate(() => 'axe' in window);
  const found = await new AxeBuilder(isThere ? { page, axeSource: ';' } : { page })
    .setLegacyMode()
    .options({ resultTypes: ['violations'] })
    .withTags(['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa', 'best-practice'])
    .analyze();
  const told = found.violations.map(
    (one) => `${name}: ${one.id} — ${one.nodes.map((node) => node.target.join(' ')).join('; ')}`,
  );
  expect(told).toEqual([]);
};

/** Collects script errors and refused resources; a page that has any fails. */
export const watched = (page: Page): readonly string[] => {
  const troubles: string[] = [];
  page.on('pageerror', (error) => troubles.push(`error: ${error.message}`));
  page.on('console', (message) => {
    if (message.type() === 'error' && !/status of 40[0139]/.test(message.text()))
      troubles.push(`console: ${message.text()}`);
  });
  return troubles;
};

/** The newest answer stands on the phone: sealing and keeping it take a moment after the tap. */
export const untilSaved = (page: Page): Promise<unknown> =>
  page.waitForSelector('html[data-draft="written"]', { state: 'attached' });

/** Pages opened from now on read a clock that is off by so much more. */
export const clockOff = (page: Page, ms: number): Promise<unknown> =>
  page.addInitScript((by) => {
    const now = Date.now.bind(Date);
    Date.now = () => now() + by;
  }, ms);

/** A day of birth in its three boxes, from YYYY-MM-DD. */
export const fillBirthDay = async (page: Page, birthDay: string): Promise<void> => {
  const group = page.getByRole('group', { name: 'Day of birth' });
  const [year = '', month = '', day = ''] = birthDay.split('-');
  for (const [label, text] of [
    ['Day', day],
    ['Month', month],
    ['Year', year],
  ] as const)
    await group.getByLabel(label, { exact: true }).fill(text);
};

/** All that this phone keeps, as text. */
export const keptOn = (page: Page): Promise<string> =>
  page.evaluate(
    () =>
      new Promise<string>((resolve) => {
        const asked = indexedDB.open('loadgate-phone');
        asked.onsuccess = () => {
          const all = asked.result.transaction('kept').objectStore('kept').getAll();
          all.onsuccess = () => resolve(JSON.stringify(all.result));
        };
      }),
  );
