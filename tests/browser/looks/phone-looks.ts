/** Looks at one page of the phone: schemes, large text, narrow windows, long words, sizes of what is pressed. */
import { expect, type Page } from '@playwright/test';
import { expectAccessible, phone } from '../support.ts';
import { expectWithin, type Look, looksTaken, phoneLooks, shownAs, small } from './looks.ts';

const leastTarget = 48;

/** Buttons, answers and links of their own that are lower or narrower than a sore finger needs; of links inside sentences see the numbers to ring. */
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

/** Numbers to ring inside sentences: lower than a target, or nearer to the next one than a finger tells apart. */
const crowdedNumbers = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    const numbers = [...document.querySelectorAll<HTMLElement>('a[href^="tel:"]:not(.button)')]
      .filter((one) => one.checkVisibility())
      .map((one) => ({ text: one.textContent.trim(), box: one.getBoundingClientRect() }));
    const low = numbers.filter(({ box }) => box.height < 44).map(({ text, box }) => `${text} ${box.height}`);
    const near = numbers.flatMap((one, place) =>
      numbers.slice(place + 1).flatMap((other) => {
        const across = Math.max(other.box.left - one.box.right, one.box.left - other.box.right);
        const down = Math.max(other.box.top - one.box.bottom, one.box.top - other.box.bottom);
        return Math.max(across, down) < 8 ? [`${one.text} and ${other.text}`] : [];
      }),
    );
    return [...low, ...near];
  });

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

/**
 * What goes on and lies below the first screen of a small phone. A list of signs to tick scrolls by nature, an
 * open field is scrolled to by its keyboard, and today's page is read down.
 */
const belowFold = (page: Page): Promise<readonly string[]> =>
  page.evaluate(() => {
    window.scrollTo(0, 0);
    if (!document.querySelector('main .step') || document.querySelector('main input')) return [];
    return [...document.querySelectorAll<HTMLElement>('main :is(.button-large, .answer, .score)')]
      .filter((one) => one.checkVisibility() && one.closest('.cuff-bar') === null)
      .map((one) => ({ one, bottom: Math.round(one.getBoundingClientRect().bottom) }))
      .filter(({ bottom }) => bottom > window.innerHeight)
      .map(({ one, bottom }) => `${one.textContent.trim()} ${bottom}`);
  });

/** What an open keyboard leaves of the window. */
const aboveKeyboard = 420;

/** 400 % of a window 1280 px wide leaves 320. */
const narrow = 320;

const large: Look = { name: '200 %', scheme: 'dark', size: phone, textSize: '200%' };

export const lookAt = async (page: Page, name: string): Promise<void> => {
  const size = page.viewportSize()!;
  expect([name, 'too small to press', await smallTargets(page)]).toEqual([name, 'too small to press', []]);
  expect([name, 'numbers to ring', await crowdedNumbers(page)]).toEqual([name, 'numbers to ring', []]);
  expect([name, 'covered', await coveredStops(page)]).toEqual([name, 'covered', []]);
  for (const look of looksTaken(phoneLooks, name)) {
    await shownAs(page, look, async () => {
      await expectAccessible(page, `${name}, ${look.name}`);
      await expectWithin(page, `${name}, ${look.name}`);
    });
  }
  await page.setViewportSize(small);
  expect([name, 'below the fold', await belowFold(page)]).toEqual([name, 'below the fold', []]);
  await page.setViewportSize({ width: narrow, height: size.height });
  await expectWithin(page, `${name}, ${narrow}`);
  await page.setViewportSize(size);
  await shownAs(page, large, async () => {
    await expectWithin(page, `${name}, 200 %`);
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
