/** Finds a Chromium for the browser tests and the screenshots, and installs one where that can be done. */
import { spawnSync } from 'node:child_process';
import { existsSync } from 'node:fs';
import { createRequire } from 'node:module';
import { root } from './paths.mjs';
import { CannotGoOn, say } from './say.mjs';

const systemBrowsers = {
  linux: [
    '/usr/bin/chromium',
    '/usr/bin/chromium-browser',
    '/usr/bin/google-chrome',
    '/usr/bin/google-chrome-stable',
    '/snap/bin/chromium',
  ],
  darwin: [
    '/Applications/Chromium.app/Contents/MacOS/Chromium',
    '/Applications/Google Chrome.app/Contents/MacOS/Google Chrome',
  ],
  win32: [
    'C:\\Program Files\\Google\\Chrome\\Application\\chrome.exe',
    'C:\\Program Files (x86)\\Microsoft\\Edge\\Application\\msedge.exe',
  ],
};

const isRoot = () => process.getuid?.() === 0;

const answersToVersion = (file) =>
  existsSync(file) &&
  // The Windows builds open a window instead of printing; there the file's presence has to do.
  (process.platform === 'win32' || spawnSync(file, ['--version'], { timeout: 20_000 }).status === 0);

const fromEnvironment = () => {
  for (const name of ['CHROMIUM_PATH', 'CHROME_PATH']) {
    const file = process.env[name];
    if (!file) continue;
    if (!existsSync(file)) throw new CannotGoOn(`${name} names ${file}, which does not exist.`);
    return file;
  }
  return null;
};

const fromPlaywright = () => {
  const require = createRequire(import.meta.url);
  const file = require('playwright-core').chromium.executablePath();
  return file && existsSync(file) ? file : null;
};

const fromSystem = () => (systemBrowsers[process.platform] ?? []).find(answersToVersion) ?? null;

const runQuietly = (command, args) =>
  spawnSync(command, args, {
    cwd: root,
    stdio: ['ignore', 2, 2],
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
    shell: process.platform === 'win32',
  }).status === 0;

const fromDebian = () => {
  if (process.platform !== 'linux' || !isRoot() || !existsSync('/usr/bin/apt-get')) return null;
  say('installing Chromium from the system’s packages (apt-get), about half a minute …');
  runQuietly('apt-get', ['-q', 'update']);
  const packages = ['chromium', 'fonts-dejavu-core'];
  runQuietly('apt-get', ['-q', 'install', '-y', '--no-install-recommends', ...packages]);
  return fromSystem();
};

const fromPlaywrightDownload = () => {
  say('installing Chromium by Playwright …');
  runQuietly('npx', ['--no-install', 'playwright', 'install', 'chromium']);
  return fromPlaywright();
};

/** A browser that is already there, or null. Installs nothing. */
export const installedBrowser = () => fromEnvironment() ?? fromPlaywright() ?? fromSystem();

/** A browser, installed if need be; null when none could be had. */
export const findBrowser = () => installedBrowser() ?? fromDebian() ?? fromPlaywrightDownload();

export const noBrowserAdvice =
  'No Chromium was found or could be installed. Install one, or set CHROMIUM_PATH to its program file.';

/** Nothing but the pages under test may use the network; root has no sandbox to use. */
export const browserArguments = [
  ...(isRoot() ? ['--no-sandbox'] : []),
  '--disable-gpu',
  '--disable-quic',
  '--no-first-run',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
];
