/** What is left of English on a page told in German: sentences of the dictionaries, and words no German has. */
import { expect, type Page } from '@playwright/test';
import { demoClinic } from '#demo/clinic.ts';
import { everyLanguage } from '#messages/every-language.ts';
import type { LanguageTag } from '#messages/languages.ts';
import { everyRow } from '#messages/sentence-rows.ts';

const textsIn = (tag: LanguageTag) => new Set(everyRow(everyLanguage[tag]).map(({ text }) => text));
/** "Name" and the like are both. */
const germanToo = textsIn('de');
const english = [...textsIn('en')].filter((one) => !germanToo.has(one));

const slot = /\{[a-z-]+(?::[a-z-]+)?\}/g;
const isSentence = (one: string) => one.replace(slot, '').split(/\s+/).length >= 4;

/** A sentence wherever it stands; a word or two only as a line of its own. */
const signs = english
  .filter((one) => /\p{L}{3}/u.test(one.replace(slot, '')))
  .map((one) => {
    const shape = one.replace(/[.*+?^$()|[\]\\]/g, '\\$&').replace(slot, '.+?');
    return new RegExp(isSentence(one) ? shape : `^${shape}$`);
  });

const englishWords =
  /\b(the|you|your|is|are|of|and|with|until|again|not|do|before|stop|we|it|this|that|to|or|left|right|sets?|today|ring|instead|less|more|pain|joint|there|side|from|for|on|at|by|a)\b/i;

/** What people typed stays as it was typed: the clinic's name, and its messages. */
const typed = [demoClinic.name];

/** Every line of the page as it is seen, with all that can be opened open. */
const linesOn = async (page: Page): Promise<readonly string[]> => {
  await page.evaluate(() => {
    for (const one of document.querySelectorAll('details')) one.open = true;
  });
  const messages = await page.locator('.message p').allInnerTexts();
  const [text = ''] = await page.locator('body').allInnerTexts();
  const own = [...typed, ...messages].reduce((rest, one) => rest.replaceAll(one, ''), text);
  return own.split('\n').map((line) => line.replace(/\s+/g, ' ').trim());
};

export const expectNoEnglish = async (page: Page, name: string): Promise<void> => {
  await expect(page.locator('html')).toHaveAttribute('lang', 'de');
  await expect(page.locator('main h1, main legend').first()).toBeVisible();
  const lines = await linesOn(page);
  expect(lines.join('').length).toBeGreaterThan(40);
  const left = lines.filter((line) => englishWords.test(line) || signs.some((sign) => sign.test(line)));
  expect([name, left]).toEqual([name, []]);
};
