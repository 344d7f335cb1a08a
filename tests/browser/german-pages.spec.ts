/** The patient's pages beside the session, in German: nothing the program says stays English, and each is accessible. */
import { expect, type Page, test } from '@playwright/test';
import { phoneOf } from '#commands/phone-sequences/sequence.ts';
import { words } from '#ui/words/every-word.ts';
import { germanSentences } from '#ui/words/german/sentences.ts';
import { german } from '#ui/words/german.ts';
import { expectAccessible, watched } from './support.ts';

/** English of the program that is long enough to be nobody's name, and is not the same in German. */
const english = [
  ...words.filter(({ key, text }) => german[key] !== text).map(({ text }) => text),
  ...Object.entries(germanSentences).flatMap(([text, told]) => (text === told ? [] : [text])),
]
  .filter((text) => !text.includes('{'))
  .filter((text) => text.length > 11);

/** All of the frame, what is folded away or only heard included; scripts stand outside it. */
const leftInEnglish = async (page: Page): Promise<readonly string[]> => {
  const shown = (await page.locator('.frame').textContent()) ?? '';
  return english.filter((text) => shown.includes(text));
};

const expectGerman = async (page: Page, name: string) => {
  await expect(page.locator('html')).toHaveAttribute('lang', 'de');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  expect(await leftInEnglish(page), name).toEqual([]);
  await expectAccessible(page, name);
};

const pages = [
  ['/today', 'Hallo'],
  ['/how-it-went', german['history.title']],
  ['/handout', german['handout.title']],
  ['/before-visit', german['visit.title']],
  ['/before-visit/agreements', german['agree.title']],
  ['/who-opened', german['opened.title']],
  ['/write', german['write.title']],
] as const;

const inGerman = async (page: Page, baseURL: string) => {
  await page.context().addCookies([{ name: 'loadgate-language', value: 'de', url: baseURL }]);
};

test('a patient reads every own page in German, with reasons, exercises, questions and agreements', async ({
  browser,
  baseURL,
}) => {
  const context = await phoneOf(browser, baseURL!, 'patient-2');
  const page = await context.newPage();
  const troubles = watched(page);
  await inGerman(page, baseURL!);
  for (const [path, title] of pages) {
    await page.goto(path);
    await expect(page.getByRole('heading', { level: 1 })).toContainText(title);
    await expectGerman(page, path);
  }
  await page.goto('/before-visit');
  await page.getByRole('button', { name: german['visit.begin'] }).click();
  await page.getByLabel(german['ask.yes'], { exact: true }).check();
  await expectGerman(page, 'a question before a visit');
  await page.goto('/account');
  await page.getByRole('button', { name: german['account.change'] }).click();
  await expect(page.getByRole('alert')).toBeVisible();
  await expectGerman(page, '/account with what is wrong');
  expect(troubles).toEqual([]);
  await context.close();
});

test('setting up a phone and signing in refuse in German', async ({ page, baseURL }) => {
  await inGerman(page, baseURL!);
  await page.goto('/join');
  await page.getByLabel(german['join.code'], { exact: true }).fill('4KQ7M-X2D9T');
  await page.getByRole('button', { name: german['join.go'] }).click();
  await expect(page.getByRole('alert')).toContainText('Dieser Code gilt nicht mehr');
  await expectGerman(page, '/join with a code that is not open');
  await page.goto('/sign-in');
  await page.getByRole('button', { name: german['sign-in.go'], exact: true }).click();
  await expect(page.getByRole('alert')).toContainText(german['sign-in.no-email']);
  await expectGerman(page, '/sign-in with nothing typed');
});
