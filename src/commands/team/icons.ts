/**
 * `npm run icons`: draws the icons a phone puts on its start screen from `src/app/icon.svg`, with Chromium.
 * Run after the mark has changed; the files are committed.
 */
import { mkdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { findBrowser } from '../browser.mjs';
import { inRoot } from '../paths.mjs';
import { CannotGoOn } from '../say.mjs';
import { openBrowser } from './open-browser.ts';

/** A maskable icon is cut to any shape within a circle of 2/5 of its side; 3/4 keeps the whole mark in it. */
const quiet = 0.75;

const icons = [
  { file: 'icons/192/icon.png', side: 192, share: 1 },
  { file: 'icons/512/icon.png', side: 512, share: 1 },
  { file: 'icons/maskable/icon.png', side: 512, share: quiet },
  { file: 'apple-icon.png', side: 180, share: 1 },
] as const;

const paperOf = (mark: string): string => {
  const found = /<rect[^>]*fill="(#[0-9a-f]{6})"/.exec(mark)?.[1];
  if (found === undefined) throw new CannotGoOn('src/app/icon.svg has no rect whose fill is its paper.');
  return found;
};

/** The mark in the middle of its own paper. */
const pageOf = (mark: string, side: number, share: number): string => {
  const source = `data:image/svg+xml;base64,${Buffer.from(mark).toString('base64')}`;
  const inner = side * share;
  return `<style>body{margin:0;background:${paperOf(mark)}}img{display:block;margin:${(side - inner) / 2}px;width:${inner}px;height:${inner}px}</style><img src="${source}">`;
};

export const run = async (args: readonly string[]): Promise<number> => {
  if (args.length > 0) throw new CannotGoOn('Use: npm run icons', 2);
  const mark = readFileSync(inRoot('src', 'app', 'icon.svg'), 'utf8');
  const browser = await openBrowser(findBrowser);
  try {
    for (const { file, side, share } of icons) {
      const page = await browser.newPage({ viewport: { width: side, height: side } });
      await page.setContent(pageOf(mark, side, share), { waitUntil: 'load' });
      const target = inRoot('src', 'app', file);
      mkdirSync(path.dirname(target), { recursive: true });
      await page.screenshot({ path: target });
      await page.close();
      console.log(`${path.relative(inRoot(), target)}  ${side} × ${side}`);
    }
    return 0;
  } finally {
    await browser.close();
  }
};
