/**
 * The browser tests start a server of their own on what was built, on a port and a database
 * file of their own, and leave nothing running.
 */
import { mkdtempSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { defineConfig } from '@playwright/test';
import { browserArguments, installedBrowser } from '#commands/browser.mjs';

const root = fileURLToPath(new URL('../..', import.meta.url));
const port = Number(process.env.BROWSER_TEST_PORT ?? 3187);
const address = `http://127.0.0.1:${port}`;

/** The one walk of a minute and more; begun last, it would leave the other worker idle. */
const longest = '**/whole-path.spec.ts';

const settingsChanged = ['**/phone-two-hours.spec.ts', '**/administration/settings.spec.ts'];

// Each worker loads this file again; the folder is made once and handed on.
process.env.BROWSER_TEST_FOLDER ??= mkdtempSync(path.join(tmpdir(), 'loadgate-browser-'));

export default defineConfig({
  testDir: '.',
  outputDir: path.join(root, 'tests', 'output', 'browser'),
  retries: 0,
  workers: 2,
  forbidOnly: true,
  // Two cores may be busy with the other lane of the check.
  timeout: 120_000,
  expect: { timeout: 20_000 },
  reporter: [
    ['list'],
    [
      'json',
      { outputFile: process.env.BROWSER_TEST_REPORT ?? path.join(root, 'tests', 'output', 'browser.json') },
    ],
  ],
  // A setting of the clinic reaches everybody in it, so what changes one waits for all the others.
  projects: [
    { name: 'the longest first', testMatch: longest },
    { name: 'all', testIgnore: [longest, ...settingsChanged] },
    {
      name: 'with a setting changed',
      testMatch: settingsChanged,
      // One after the other: what a change would have done is looked at anew when another was saved between.
      workers: 1,
      dependencies: ['the longest first', 'all'],
    },
  ],
  use: {
    baseURL: address,
    browserName: 'chromium',
    // A trace takes time on every page; a page that fails is told with what stood on it.
    trace: process.env.BROWSER_TEST_TRACE ? 'retain-on-failure' : 'off',
    launchOptions: { executablePath: installedBrowser() ?? undefined, args: browserArguments },
  },
  webServer: {
    command: `"${process.execPath}" src/commands/serve.mjs`,
    cwd: root,
    url: `${address}/healthz`,
    reuseExistingServer: false,
    timeout: 120_000,
    gracefulShutdown: { signal: 'SIGTERM', timeout: 10_000 },
    env: {
      PORT: String(port),
      HOST: '127.0.0.1',
      DEMO: '1',
      DATABASE_FILE: path.join(process.env.BROWSER_TEST_FOLDER, 'clinic.sqlite'),
    },
  },
});
