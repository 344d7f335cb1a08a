/**
 * How large a patient's pages are written, chosen on this phone; without a choice as large as its browser
 * writes. Kept in a cookie and set by a line in the head, before anything is painted: a page kept for days
 * without signal was written before the last choice.
 */
export const textSizes = ['as-browser', 'larger', 'larger-still', 'largest'] as const;
export type TextSize = (typeof textSizes)[number];

export const textSizeCookie = 'loadgate-text-size';

/** The same name as in base.css. */
const attribute = 'data-text-size';

const chosen = textSizes.filter((size) => size !== 'as-browser');

/** Runs in the head of every page. */
export const textSizeScript = `{const found=/(?:^|; )${textSizeCookie}=(${chosen.join('|')})(?:;|$)/.exec(document.cookie);if(found)document.documentElement.setAttribute('${attribute}',found[1])}`;

/** What the page is written in, as the line in the head or the last choice left it. */
export const writtenIn = (): TextSize =>
  textSizes.find((size) => size === document.documentElement.getAttribute(attribute)) ?? 'as-browser';

/** At once on the page that is shown. */
export const writeIn = (size: TextSize): void => {
  if (size === 'as-browser') document.documentElement.removeAttribute(attribute);
  else document.documentElement.setAttribute(attribute, size);
};
