/** What stands on a page to be read, as words: run in the page, counted outside. */
import type { Page } from 'playwright-core';

export interface PageWords {
  /** Headings, hints, statements and signs. */
  readonly sentences: readonly string[];
  /** Of what is pressed. */
  readonly labels: readonly string[];
  readonly visible: string;
}

/** As text: what a loader adds to named functions is not known in the page. Answers echoed are not read anew. */
const read = `(() => {
  const main = document.querySelector('main');
  const shown = (one) => one.checkVisibility({ visibilityProperty: true }) && !one.closest('.visually-hidden');
  const pressed = 'button, a, summary';
  const left = (one) => one.closest('[data-echo], [role="timer"], ' + pressed) !== null;
  const own = (one) =>
    [...one.childNodes]
      .filter((node) => node.nodeType === 3 || (node.nodeType === 1 && getComputedStyle(node).display === 'inline' && !node.matches(pressed + ', .visually-hidden, .page-caption')))
      .map((node) => node.textContent)
      .join(' ')
      .trim();
  // What is said to a screen reader alone is not seen.
  const seen = (one) => {
    const copy = [...one.querySelectorAll('.visually-hidden')];
    return copy.reduce((text, hidden) => text.replace(hidden.innerText, ''), one.innerText);
  };
  const texts = [...main.querySelectorAll('h1, h2, h3, h4, p, li, dt, dd, legend, label, .choice-text')];
  return {
    sentences: texts.filter((one) => shown(one) && !left(one)).map(own).filter((text) => text !== ''),
    labels: [...main.querySelectorAll(pressed)].filter(shown).map((one) => seen(one).trim()),
    visible: seen(main),
  };
})()`;

export const wordsOn = (page: Page): Promise<PageWords> => page.evaluate(read);

/** Words have a letter; numbers, signs and clocks are no reading. */
export const countWords = (text: string): number =>
  text.split(/\s+/).filter((word) => /\p{L}/u.test(word)).length;

/** Each sentence once, whatever the number in it. */
export const onceEach = (texts: readonly string[]): readonly string[] => [
  ...new Map(texts.map((text) => [text.replace(/\d+/g, '#').replace(/\s+/g, ' '), text])).values(),
];

const sum = (texts: readonly string[]): number => texts.reduce((count, text) => count + countWords(text), 0);

export const usualDay = (pages: readonly PageWords[]) => {
  const sentences = onceEach(pages.flatMap((page) => page.sentences));
  const labels = onceEach(pages.flatMap((page) => page.labels)).filter((label) => !sentences.includes(label));
  return {
    wordsToRead: sum(sentences),
    wordsWithLabels: sum(sentences) + sum(labels),
    wordsVisible: sum(pages.map((page) => page.visible)),
  };
};
