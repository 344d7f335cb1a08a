/**
 * `npm run screenshots`: makes the screenshots of the README from the demo clinic, with a server, a database
 * file and a browser of its own, into demo-clinic/screenshots. Exit 1 when one is larger than a page that
 * is read over a slow line should carry. Look at each before it is committed.
 */
import { mkdirSync, statSync } from 'node:fs';
import path from 'node:path';
import { browserArguments, findBrowser, noBrowserAdvice } from '../browser.mjs';
import { build } from '../build.mjs';
import { inRoot } from '../paths.mjs';
import { CannotGoOn } from '../say.mjs';
import { ownServer } from './phone-sequences/own-server.ts';
import { type Scene, scenes } from './screenshots/scenes.ts';

const folder = inRoot('demo-clinic', 'screenshots');
const mostBytes = 225_000;

export const run = async (args: readonly string[]): Promise<number> => {
  if (args.length > 0) throw new CannotGoOn('Use: npm run screenshots', 2);
  const executablePath = findBrowser();
  if (!executablePath) throw new CannotGoOn(noBrowserAdvice);
  await build();
  mkdirSync(folder, { recursive: true });
  const { chromium } = await import('playwright-core');
  const server = await ownServer();
  const browser = await chromium.launch({ executablePath, args: browserArguments });
  const take = async ({ name, open }: Scene): Promise<boolean> => {
    const page = await open(browser, server.address);
    const file = path.join(folder, `${name}.png`);
    await page.screenshot({ path: file, animations: 'disabled', caret: 'hide' });
    await page.context().close();
    const bytes = statSync(file).size;
    console.log(
      `${path.relative(inRoot(), file)}  ${bytes} bytes${bytes > mostBytes ? `, over ${mostBytes}` : ''}`,
    );
    return bytes <= mostBytes;
  };
  try {
    await server.start();
    const isSmall: boolean[] = [];
    for (const scene of scenes) isSmall.push(await take(scene));
    return isSmall.every(Boolean) ? 0 : 1;
  } finally {
    await browser.close();
    await server.remove();
  }
};
