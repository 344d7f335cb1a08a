/** Looks at one page of the phone: light, dark, large text, narrow window, sizes of what is pressed. */
import { expect, type Page } from '@playwright/test';
import { expectAccessible } from './support.ts';

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

const overflowOf = (page: Page): Promise<number> =>
  page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);

const textAt = (page: Page, size: string) =>
  page.evaluate((wanted) => {
    document.documentElement.style.fontSize = wanted;
  }, size);

/** What an open keyboard leaves of the window. */
const aboveKeyboard = 420;

/** 400 % of a window 1280 px wide leaves 320. */
const narrow = 320;

export const lookAt = async (page: Page, name: string): Promise<void> => {
  const size = page.viewportSize()!;
  await expectAccessible(page, `${name}, light`);
  expect([name, 'too small to press', await smallTargets(page)]).toEqual([name, 'too small to press', []]);
  expect([name, 'covered', await coveredStops(page)]).toEqual([name, 'covered', []]);
  await page.setViewportSize({ width: narrow, height: size.height });
  expect([name, narrow, await overflowOf(page)]).toEqual([name, narrow, 0]);
  await page.setViewportSize(size);
  await page.emulateMedia({ colorScheme: 'dark' });
  await textAt(page, '200%');
  await expectAccessible(page, `${name}, dark, 200 %`);
  expect([name, '200 %', await overflowOf(page)]).toEqual([name, '200 %', 0]);
  expect([name, 'covered at 200 %', await coveredStops(page)]).toEqual([name, 'covered at 200 %', []]);
  await page.setViewportSize({ width: size.width, height: aboveKeyboard });
  expect([name, 'covered, typing', await coveredStops(page)]).toEqual([name, 'covered, typing', []]);
  await page.setViewportSize(size);
  await textAt(page, '');
  await page.emulateMedia({ colorScheme: 'light' });
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
