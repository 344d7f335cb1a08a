/**
 * `npm run accessibility -- [--minutes N]`: every page the browser tests look at, in every look (light, dark,
 * 360 px, 200 % text, words half as long again), with the accessibility checker; and those that are walked in
 * German. The pages of two hours later wait for a setting of the clinic and are looked at in `npm test` alone,
 * which takes one look a page, another each day. Exit 1 when a page has a violation or is wider than its
 * window, or was not reached in the minutes given; 2 on wrong use.
 */
import { spawn } from 'node:child_process';
import { findBrowser, noBrowserAdvice } from '../browser.mjs';
import { build } from '../build.mjs';
import { inRoot, root } from '../paths.mjs';
import { CannotGoOn } from '../say.mjs';
import { readNumbers } from './check-monotonic.ts';

const walks = ['every-screen', 'care-screens', 'phone-access', 'phone-mornings', 'german-pages'];

export const run = async (args: string[]): Promise<number> => {
  const options = readNumbers(args, { minutes: 0 });
  if (!options) throw new CannotGoOn('Use: npm run accessibility -- [--minutes N]', 2);
  const browser = findBrowser();
  if (!browser) throw new CannotGoOn(noBrowserAdvice);
  await build();
  const limit = options.minutes > 0 ? ['--global-timeout', String(options.minutes * 60_000)] : [];
  const tests = spawn(
    process.execPath,
    [
      inRoot('node_modules', '@playwright', 'test', 'cli.js'),
      'test',
      ...['--config', 'tests/browser/playwright.config.ts', '--project=all'],
      ...limit,
      ...walks.map((name) => `/${name}\\.spec\\.ts$`),
    ],
    { cwd: root, stdio: 'inherit', env: { ...process.env, LOOKS: 'whole', CHROMIUM_PATH: browser } },
  );
  return new Promise((resolve, reject) => {
    tests.on('error', reject);
    tests.on('close', (code) => resolve(code ?? 1));
  });
};
