/** Walks one path at the desk in the browser and counts presses, fields and pages loaded. */
import path from 'node:path';
import type { Browser } from 'playwright-core';
import { signInAs } from '../open-browser.ts';
import type { DeskPath, Hand } from './desk-path.ts';

export interface DeskWalked {
  readonly taps: number;
  readonly fields: number;
  readonly pages: number;
}

export const walkDesk = async (
  browser: Browser,
  address: string,
  { walk, path: name, from = '/worklist' }: Pick<DeskPath, 'walk' | 'path' | 'from'>,
  keep: string | null,
): Promise<DeskWalked> => {
  const context = await browser.newContext({ baseURL: address, viewport: { width: 1280, height: 800 } });
  await signInAs(context, address, 'taps-clinician');
  const page = await context.newPage();
  let [taps, fields, pages] = [0, 0, 0];
  page.on('load', () => {
    pages += 1;
  });
  const picture = async () => {
    if (keep)
      await page.screenshot({ path: path.join(keep, `${name}-${String(taps).padStart(2, '0')}.png`) });
  };
  const hand: Hand = {
    press: async (what) => {
      await what.click({ timeout: 20_000 });
      taps += 1;
      await picture();
    },
    fill: async (what, text) => {
      await what.fill(text);
      fields += 1;
    },
    choose: async (what, value) => {
      await what.selectOption(value);
      fields += 1;
    },
  };
  try {
    await page.goto(from);
    await walk(page, hand);
    await picture();
    return { taps, fields, pages };
  } catch (error) {
    const text = await page.locator('main').textContent();
    throw new Error(`${error instanceof Error ? error.message : error}\n${text}`);
  } finally {
    await context.close();
  }
};
