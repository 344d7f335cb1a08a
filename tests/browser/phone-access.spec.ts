/** The patient's phone for everybody: eyes, keyboard, screen reader, large text, another language. */
import { expect, type Page, test } from '@playwright/test';
import { openWithWorker, phoneOf } from '#commands/phone-sequences/sequence.ts';
import { answerOne, headingOf } from '#commands/phone-sequences/walk.ts';
import { expectAccessible, watched } from './support.ts';

const press = (page: Page, name: string | RegExp) => page.getByRole('button', { name }).first().click();
const startSession = (page: Page) => press(page, 'Start the session');

test('every page of a session and its care advice is accessible in light, in dark and at 200 % text', async ({
  browser,
  baseURL,
}) => {
  test.setTimeout(120_000);
  const context = await phoneOf(browser, baseURL!, 'patient-4');
  const page = await openWithWorker(context);
  const troubles = watched(page);
  const kinds = new Set<string>();
  const look = async (heading: string) => {
    const kind = heading.replace(/\d+/g, '').slice(0, 24);
    if (kinds.has(kind)) return;
    kinds.add(kind);
    await expectAccessible(page, `${heading}, light`);
    await page.emulateMedia({ colorScheme: 'dark' });
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '200%';
    });
    await expectAccessible(page, `${heading}, dark, 200 %`);
    const over = await page.evaluate(
      () => document.documentElement.scrollWidth - document.documentElement.clientWidth,
    );
    expect([heading, over]).toEqual([heading, 0]);
    await page.emulateMedia({ colorScheme: 'light' });
    await page.evaluate(() => {
      document.documentElement.style.fontSize = '';
    });
  };
  await look('Today');
  await startSession(page);
  for (let place = 0; place < 12; place++) {
    await look(await headingOf(page));
    if ((await answerOne(page)) === null) break;
  }
  await press(page, 'Take it off now');
  await look('Take it off');
  await press(page, 'It is off');
  await look('Seated');
  await press(page, 'I feel unwell');
  await look('Unwell');
  await page.getByLabel('Pain or pressure in the chest').check();
  await press(page, 'Continue');
  await look('Care');
  expect(kinds.size).toBeGreaterThan(10);
  expect(troubles).toEqual([]);
  await context.close();
});

test('the score question can be answered by keyboard alone and says its ends to a screen reader', async ({
  browser,
  baseURL,
}) => {
  const context = await phoneOf(browser, baseURL!, 'patient-5');
  const page = await openWithWorker(context);
  await startSession(page);
  await page.getByLabel('None of these').focus();
  await page.keyboard.press('Space');
  await page.keyboard.press('Enter');
  const question = page.getByRole('group', { name: 'How is the pain in your right knee right now?' });
  await expect(question).toBeVisible();
  await expect(question.getByRole('radio')).toHaveCount(12);
  await expect(question.getByRole('radio', { name: '0 no pain', exact: true })).toBeVisible();
  await expect(question.getByRole('radio', { name: '10 the worst pain you can think of' })).toBeVisible();
  await expect(question.getByRole('radio', { name: '7', exact: true })).not.toBeChecked();
  await page.keyboard.press('Tab');
  await page.keyboard.press('Space');
  for (const _ of [1, 2, 3]) await page.keyboard.press('ArrowDown');
  await expect(question.getByRole('radio', { name: '3', exact: true })).toBeChecked();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('group', { name: 'Is another joint worse than usual today?' })).toBeVisible();
  await context.close();
});

test('another language and pounds: the whole page follows, also without signal', async ({
  browser,
  baseURL,
}) => {
  const context = await phoneOf(browser, baseURL!, 'patient-7');
  const page = await openWithWorker(context);
  await page.getByText('Language and weights').click();
  await page.getByLabel('Pounds (lb)').check();
  await page.getByText('Language and weights').click();
  await page.getByLabel('Deutsch').check();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Hallo');
  await expect(page.locator('html')).toHaveAttribute('lang', 'de');
  await expectAccessible(page, 'today in German');
  await context.setOffline(true);
  await page.reload();
  await expect(page.getByRole('heading', { level: 1 })).toContainText('Hallo');
  await context.close();
});
