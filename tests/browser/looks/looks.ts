/**
 * The ways one page is looked at: schemes, widths, large text, long words. A look with the accessibility
 * checker takes seconds, so `npm test` takes one of them a page, another each day and another from page to
 * page; `npm run accessibility` takes all. LOOKS_TURN repeats the choice of a day.
 */
import { expect, type Page, test } from '@playwright/test';
import { desk, expectAccessible, phone } from '../support.ts';

export interface Look {
  readonly name: string;
  readonly scheme: 'light' | 'dark';
  readonly size: { readonly width: number; readonly height: number };
  readonly textSize?: '200%';
  readonly hasLongWords?: true;
}

/** A small phone, as many still are. */
export const small = { width: 360, height: 640 };

export const phoneLooks: readonly Look[] = [
  { name: 'light', scheme: 'light', size: phone },
  { name: 'dark', scheme: 'dark', size: phone },
  { name: '360 px', scheme: 'light', size: small },
  { name: '200 % text', scheme: 'light', size: phone, textSize: '200%' },
  { name: '200 % text, dark, 360 px', scheme: 'dark', size: small, textSize: '200%' },
  { name: 'long words', scheme: 'light', size: phone, hasLongWords: true },
];

const deskLooks: readonly Look[] = [
  { name: 'light, wide', scheme: 'light', size: desk },
  { name: 'dark, narrow', scheme: 'dark', size: phone },
  { name: 'dark, wide', scheme: 'dark', size: desk },
  { name: 'light, narrow', scheme: 'light', size: phone },
  { name: '200 % text, wide', scheme: 'light', size: desk, textSize: '200%' },
  { name: 'long words, narrow', scheme: 'light', size: phone, hasLongWords: true },
];

const dayMs = 86_400_000;
const isWhole = process.env.LOOKS === 'whole';
const turn = Number(process.env.LOOKS_TURN ?? Math.floor(Date.now() / dayMs));

/** The looks taken at this page in this run: all by command, else one. */
export const looksTaken = (looks: readonly Look[], page: string): readonly Look[] => {
  if (isWhole) {
    // All of them take longer than the walk was given.
    test.info().setTimeout(test.info().timeout + 60_000);
    return looks;
  }
  const place = [...page].reduce((sum, letter) => sum + (letter.codePointAt(0) ?? 0), turn);
  return [looks[place % looks.length]!];
};

interface Lengthened {
  lengthened?: Map<Node, { readonly before: string; readonly long: string }>;
}

/**
 * Every word of the page made half as long again, as in a language with long words: "Stayöö seatedööö"; and put back
 * where it still stands, since a page may change while it is looked at.
 */
const lengthen = async (page: Page): Promise<() => Promise<void>> => {
  await page.evaluate(() => {
    const walker = document.createTreeWalker(document.body, NodeFilter.SHOW_TEXT, (node) =>
      node.parentElement?.closest('script, style, svg') || !/\p{L}{2}/u.test(node.nodeValue ?? '')
        ? NodeFilter.FILTER_REJECT
        : NodeFilter.FILTER_ACCEPT,
    );
    const kept: NonNullable<Lengthened['lengthened']> = new Map();
    for (let node = walker.nextNode(); node; node = walker.nextNode()) {
      const before = node.nodeValue ?? '';
      const long = before.replace(/\p{L}{3,}/gu, (word) => word + 'ö'.repeat(Math.ceil(word.length / 2)));
      kept.set(node, { before, long });
      node.nodeValue = long;
    }
    (window as Lengthened).lengthened = kept;
  });
  return () =>
    page.evaluate(() => {
      for (const [node, { before, long }] of (window as Lengthened).lengthened ?? [])
        if (node.nodeValue === long) node.nodeValue = before;
    });
};

/** Shows the page that way while `look` is done, and as it was after it. */
export const shownAs = async (
  page: Page,
  { scheme, size, textSize, hasLongWords }: Look,
  look: () => Promise<void>,
): Promise<void> => {
  const before = page.viewportSize()!;
  const textAt = (wanted: string) =>
    page.evaluate((text) => {
      document.documentElement.style.fontSize = text;
    }, wanted);
  await page.emulateMedia({ colorScheme: scheme });
  await page.setViewportSize(size);
  if (textSize) await textAt(textSize);
  const putBack = hasLongWords ? await lengthen(page) : null;
  await look();
  await putBack?.();
  if (textSize) await textAt('');
  await page.setViewportSize(before);
  await page.emulateMedia({ colorScheme: 'light' });
};

/** What of the page is wider than its window. */
const overflowOf = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

/** Nothing of the page is wider than its window, once what is drawn to measure has heard of a new width. */
export const expectWithin = async (page: Page, name: string): Promise<void> => {
  await expect.poll(() => overflowOf(page), { message: `${name}: wider than its window, px` }).toBe(0);
};

/** A screen of the clinic in the looks of this run, and at both widths with nothing wider than the window. */
export const lookAtScreen = async (page: Page, address: string): Promise<void> => {
  for (const size of [desk, phone]) {
    await page.setViewportSize(size);
    await expectWithin(page, `${address}, ${size.width} px`);
  }
  for (const look of looksTaken(deskLooks, address)) {
    await shownAs(page, look, async () => {
      await expectAccessible(page, `${address}, ${look.name}`);
      await expectWithin(page, `${address}, ${look.name}`);
    });
  }
};
