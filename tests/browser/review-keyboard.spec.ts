/** A whole review with the keyboard alone: from the worklist to the mark, the decision and its override. */
import { expect, type Page, test } from '@playwright/test';
import { desk, expectAccessible, heard, signedIn, watched } from './support.ts';

const mostStops = 120;

/** Goes on with Tab until the focus is on what is looked for; never touches the pointer. */
const tabTo = async (page: Page, selector: string): Promise<void> => {
  for (let stop = 0; stop < mostStops; stop++) {
    const isThere = await page.evaluate(
      (wanted) => document.activeElement?.matches(wanted) ?? false,
      selector,
    );
    if (isThere) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`Tab does not reach ${selector} within ${mostStops} stops of ${page.url()}`);
};

test('worklist, patient, picture, decision and override can all be reached and done with the keyboard', async ({
  browser,
  baseURL,
}) => {
  test.setTimeout(360_000);
  const context = await browser.newContext({ viewport: desk, baseURL });
  await signedIn(context, baseURL!, 'clinician');
  const page = await context.newPage();
  const troubles = watched(page);
  await page.goto('/worklist');

  await heard(page.locator('[data-item]').first());
  await tabTo(page, '[data-item]');
  const focused = () => page.evaluate(() => document.activeElement?.textContent);
  const first = await focused();
  await page.keyboard.press('ArrowDown');
  await expect.poll(focused).not.toBe(first);
  await page.keyboard.press('ArrowUp');
  await expect.poll(focused).toBe(first);

  await tabTo(page, '.worklist-name a');
  await page.keyboard.press('Enter');
  await page.waitForURL(/\/patients\//);

  await page.goto('/patients/flare-then-hold/review');
  await heard(page.locator('.chart-marker-link').first());
  await tabTo(page, '.chart-marker-link');
  await page.keyboard.press('Home');
  const told = page.locator('.chart-detail');
  const oldest = await told.locator('strong').textContent();
  await page.keyboard.press('ArrowRight');
  await expect(told.locator('strong')).not.toHaveText(oldest!);
  await expect(told.locator('li').first()).toBeVisible();

  // Two handles bring the picture down to a range; it is never shorter than two weeks.
  await tabTo(page, 'input.range-handle[aria-label="First day shown"]');
  await page.keyboard.press('End');
  await expect(page.locator('.range-selector legend')).toContainText(/, 14 days$/);
  await tabTo(page, '.range-selector button');
  await page.keyboard.press('Enter');
  await expect(page.locator('.range-selector legend')).toContainText(/, 84 days$/);
  await tabTo(page, '.chart-detail button');
  await page.keyboard.press('Enter');
  await expect(told).toContainText('Thresholds that day');

  await page.goto('/patients/beyond-her-dumbbells/review');
  await heard(page.locator('.decision .respond textarea').first());
  await tabTo(page, '.decision > div.screen-only:last-of-type > details > summary');
  await page.keyboard.press('Enter');
  await expect(page.locator('.decision').first()).toContainText(/ould have asked for more caution/);
  await expectAccessible(page, 'what would have changed a decision');
  await page.goto('/patients/beyond-her-dumbbells/review');
  await heard(page.locator('.decision .respond textarea').first());
  await tabTo(page, '.decision .respond summary');
  await page.keyboard.press('Enter');
  await tabTo(page, '.decision .respond input[type="radio"]');
  await page.keyboard.press('Space');
  // On to "hold", as the reason says: a pause would take this day's session from the walks on her phone.
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await tabTo(page, '.decision .respond textarea');
  await page.keyboard.type('Stairs went badly; hold for a week.');
  await tabTo(page, '.decision .respond input[id$="until"]');
  // The parts come in the order of the browser’s language, here month first; the day is said back.
  await page.keyboard.type('04272026');
  await expect(page.locator('.decision .day-said')).toContainText('27 April 2026');
  await tabTo(page, '.decision .respond button[type="submit"]');
  await page.keyboard.press('Enter');
  // Her phone may have brought a newer decision meanwhile: then the form says it, and the older one stands below.
  await expect(page.locator('.decision').first()).toContainText(/Overridden( with|\.)/);
  await context.close();
  expect(troubles).toEqual([]);
});

test('review, outcomes and worklist at 400 % zoom: nothing wider than the window, no accessibility violation', async ({
  browser,
  baseURL,
}) => {
  test.setTimeout(360_000);
  // 1280 px at 400 % are 320 px.
  const context = await browser.newContext({ viewport: { width: 320, height: 256 }, baseURL });
  await signedIn(context, baseURL!, 'clinician');
  const page = await context.newPage();
  for (const screen of ['review', 'outcomes']) {
    await page.goto(`/patients/steady-progress/${screen}`);
    await expectAccessible(page, `${screen} at 400 %`);
    expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  }
  await page.goto('/worklist');
  await expectAccessible(page, 'worklist at 400 %');
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(320);
  await context.close();
});
