/** The worklist worked at: one action a row, done and undone in place, from the keyboard and on a phone's width. */
import { expect, type Page, test } from '@playwright/test';
import { desk, expectAccessible, heard, signedIn, watched } from '../support.ts';

const mostStops = 120;

const focused = (page: Page): Promise<string> =>
  page.evaluate(() => document.activeElement?.textContent?.trim() ?? '');

/** Goes on with one key until what has the focus says what is looked for. */
const goOnTo = async (page: Page, key: string, wanted: RegExp): Promise<void> => {
  for (let stop = 0; stop < mostStops; stop++) {
    if (wanted.test(await focused(page))) return;
    await page.keyboard.press(key);
  }
  throw new Error(`${key} does not lead to ${wanted}; the focus is on “${await focused(page)}”`);
};

test('by the keyboard alone a dose is signed and the signature withdrawn in its row, and a refused contact keeps what was typed', async ({
  browser,
  baseURL,
}) => {
  test.setTimeout(240_000);
  const context = await browser.newContext({ viewport: desk, baseURL });
  await signedIn(context, baseURL!, 'clinician');
  const page = await context.newPage();
  const troubles = watched(page);
  await page.goto('/worklist');
  await expectAccessible(page, 'worklist');
  await heard(page.locator('[data-item]').first());
  await goOnTo(page, 'Tab', /^(Record contact|Review|Sign 3|Open ).*: /);

  await goOnTo(page, 'ArrowDown', /^Sign 3 × .*Bartholomew Quillane/);
  const row = page.locator('.worklist-row', { hasText: 'Bartholomew Quillane' });
  await page.keyboard.press('Enter');
  await expect(row).toContainText('Signed: ');
  // Not on Undo: a second Enter would take back what the first one signed.
  await expect.poll(() => focused(page)).toBe('Bartholomew Quillane');
  await expectAccessible(page, 'worklist, a dose signed');
  await page.keyboard.press('z');
  await expect(row).toContainText('Undone: Signed: ');
  await expect(row.getByRole('button', { name: /^Sign 3 × / })).toBeVisible();

  await row.getByRole('button', { name: /^Sign 3 × / }).focus();
  await page.keyboard.press('m');
  await expect(page.getByRole('menuitem', { name: 'Acknowledge' })).toBeFocused();
  await expectAccessible(page, 'worklist, a menu open');
  await page.keyboard.press('Escape');
  await expect(page.getByRole('menuitem')).toHaveCount(0);
  await expect(row.getByRole('button', { name: /^More for / })).toBeFocused();

  await page
    .getByRole('button', { name: /^Record contact ?: / })
    .first()
    .focus();
  await page.keyboard.press('Enter');
  const form = page.locator('.row-opened form');
  await form.getByRole('radio', { name: 'The patient', exact: true }).focus();
  await page.keyboard.press('Space');
  await form.getByLabel('Advised').focus();
  await page.keyboard.type('Seen today at urgent care.');
  await form.getByRole('button', { name: 'Record contact' }).focus();
  await page.keyboard.press('Enter');
  await expect(form.getByRole('alert').first()).toContainText('Enter “Found”.');
  await expect(form.getByLabel('Advised')).toHaveValue('Seen today at urgent care.');
  await expectAccessible(page, 'worklist, a contact refused');
  await context.close();
  expect(troubles).toEqual([]);
});

test('on a width of 390 nothing is wider than the window, and every target is 44 px high', async ({
  browser,
  baseURL,
}) => {
  const context = await browser.newContext({ viewport: { width: 390, height: 844 }, baseURL });
  await signedIn(context, baseURL!, 'clinician');
  const page = await context.newPage();
  await page.goto('/worklist');
  await expectAccessible(page, 'worklist at 390');
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBeLessThanOrEqual(390);
  const targets = page.locator('.worklist-row :is(.row-action, .row-menu, .row-phone) :is(a, button)');
  const heights = await targets.evaluateAll((all) => all.map((one) => one.getBoundingClientRect().height));
  expect(heights.length).toBeGreaterThan(0);
  expect(Math.min(...heights)).toBeGreaterThanOrEqual(44);
  await context.close();
});
