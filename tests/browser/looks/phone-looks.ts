/** Looks at one page of the phone: schemes, large text, narrow windows, long words, sizes of what is pressed. */
import { expect, type Page } from '@playwright/test';
import { expectAccessible, phone } from '../support.ts';
import { type Look, looksTaken, overflowOf, phoneLooks, shownAs } from './looks.ts';

const leastTarget = 48;

/** Buttons, answers and links of their own that are lower or narrower than a sore finger needs; a link inside a sentence is not one. */
const smallTargets = (page: Page): Promise<readonly string[]> =>
  page.evaluate(
    (least) =>
      [...document.querySelectorAll<HTMLElement>('main button, main a, main label, main summary')]
        .filter((one) => one.matches('button, a, summary') || one.querySelector('input') !== null)
        .filter((one) => !one.matches('a:not(.button)') || one.parentElement?.textContent === one.textContent)
        .filter((one) => one.checkVisibility())
        .map((one) => ({ one, box: one.getBoundingClientRect() }))
        .filter(({ box }) => box.height < least || box.width < least)
        .map(
          ({ one, box }) => `${one.textContent.trim()} ${Math.round(box.width)}×${Math.round(box.height)}`,
        ),
    leastTarget,
  );

/** Where a cuff is on: the button that takes it off, wherever the page is scrolled to, lies under nothing. */
const coveredStops = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const stop = document.querySelector('.cuff-bar button');
    if (!stop) return [];
    return [0, document.documentElement.scrollHeight].flatMap((top) => {
      window.scrollTo(0, top);
      const { left, right, top: high, bottom: low } = stop.getBoundingClientRect();
      const points = [left + 4, (left + right) / 2, right - 4].map((x) => [x, (high + low) / 2] as const);
      return points.every(([x, y]) => stop.contains(document.elementFromPoint(x, y)))
        ? []
        : [`scrolled to ${top}`];
    });
  });

/** What an open keyboard leaves of the window. */
const aboveKeyboard = 420;

/** 400 % of a window 1280 px wide leaves 320. */
const narrow = 320;

const large: Look = { name: '200 %', scheme: 'dark', size: phone, textSize: '200%' };

export const lookAt = async (page: Page, name: string): Promise<void> => {
  const size = page.viewportSize()!;
  expect([name, 'too small to press', await smallTargets(page)]).toEqual([name, 'too small to press', []]);
  expect([name, 'covered', await coveredStops(page)]).toEqual([name, 'covered', []]);
  for (const look of looksTaken(phoneLooks, name)) {
    await shownAs(page, look, async () => {
      await expectAccessible(page, `${name}, ${look.name}`);
      expect([name, look.name, await overflowOf(page)]).toEqual([name, look.name, 0]);
    });
  }
  await page.setViewportSize({ width: narrow, height: size.height });
  expect([name, narrow, await overflowOf(page)]).toEqual([name, narrow, 0]);
  await page.setViewportSize(size);
  await shownAs(page, large, async () => {
    expect([name, '200 %', await overflowOf(page)]).toEqual([name, '200 %', 0]);
    expect([name, 'covered at 200 %', await coveredStops(page)]).toEqual([name, 'covered at 200 %', []]);
    await page.setViewportSize({ width: size.width, height: aboveKeyboard });
    expect([name, 'covered, typing', await coveredStops(page)]).toEqual([name, 'covered, typing', []]);
  });
};

/** Looks once at each kind of page: two sets, two joints and two figures are one kind. */
export const lookOnce = (page: Page) => {
  const kinds = new Set<string>();
  const look = async (heading: string): Promise<void> => {
    const kind = heading.replace(/\d+/g, '#');
    if (kinds.has(kind)) return;
    kinds.add(kind);
    await lookAt(page, heading);
  };
  return { look, kinds };
};
