/** The parts of `npm test`, in the order of their lanes, and how each is run and counted. */
import { existsSync, mkdirSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { createServer } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { noBrowserAdvice } from '../browser.mjs';
import { inRoot } from '../paths.mjs';
import { failuresOfBrowser, failuresOfVitest } from './test-failures.mjs';

/**
 * @typedef {object} Counts
 * @property {number} passed
 * @property {number} failed
 * @property {number} skipped
 * @property {string[]} [failures] each with where, title and what was said
 * @property {string} [note]
 * @property {boolean} [toolMissing]
 */

/** @typedef {(file: string, args: string[], env?: Record<string, string>) => Promise<number>} Start */

const program = (...parts) => inRoot('node_modules', ...parts);
const outputFile = (part) => {
  mkdirSync(inRoot('tests', 'output'), { recursive: true });
  const file = inRoot('tests', 'output', `${part}.json`);
  rmSync(file, { force: true });
  return file;
};

const holds = (folder, pattern) =>
  existsSync(inRoot(folder)) &&
  readdirSync(inRoot(folder), { recursive: true }).some((name) => pattern.test(name));

const hasTests = (folder) => holds(folder, /\.test\.tsx?$/);
const hasPages = () => holds('src/app', /page\.tsx$/);
const hasBrowserTests = () => holds('tests/browser', /\.(spec|test)\.ts$/);

/** A single yes-or-no check counts as one. */
const asOne = (code, note) => ({ passed: code === 0 ? 1 : 0, failed: code === 0 ? 0 : 1, skipped: 0, note });

const sum = (all) =>
  all.reduce(
    (total, one) => ({
      passed: total.passed + one.passed,
      failed: total.failed + one.failed,
      skipped: total.skipped + one.skipped,
      failures: [...total.failures, ...(one.failures ?? [])],
    }),
    { passed: 0, failed: 0, skipped: 0, failures: [] },
  );

/** A file that could not be loaded holds no failed test of its own, so it is counted as one. */
const vitestCounts = (file, code) => {
  if (!existsSync(file)) return { passed: 0, failed: 1, skipped: 0 };
  const report = JSON.parse(readFileSync(file, 'utf8'));
  const broken = report.testResults.filter(
    (suite) => suite.status === 'failed' && !suite.assertionResults.some((test) => test.status === 'failed'),
  ).length;
  const failed = report.numFailedTests + broken;
  return {
    passed: report.numPassedTests,
    failed: code !== 0 && failed === 0 ? 1 : failed,
    skipped: report.numPendingTests + report.numTodoTests,
    failures: failuresOfVitest(report),
  };
};

const vitest = async (start, part, folders) => {
  const file = outputFile(part);
  const code = await start(program('vitest', 'vitest.mjs'), [
    'run',
    ...['--config', 'tests/vitest.config.ts', '--reporter=default', '--reporter=json'],
    `--outputFile.json=${file}`,
    ...folders.map((folder) => `${folder}/`),
  ]);
  return vitestCounts(file, code);
};

const checks = async (start, { types }) => {
  const counts = [];
  const next = program('next', 'dist', 'bin', 'next');
  if (hasPages()) counts.push(asOne(await start(next, ['typegen'])));
  counts.push(asOne(await start(program('typescript', 'bin', 'tsc'), ['--noEmit'])));
  types.done();
  const biome = program('@biomejs', 'biome', 'bin', 'biome');
  counts.push(
    asOne(await start(biome, ['ci', '--config-path', 'tests/lint.json', '--error-on-warnings', '.'])),
  );
  if (existsSync(inRoot('drizzle', 'config.ts'))) {
    const kit = program('drizzle-kit', 'bin.cjs');
    counts.push(asOne(await start(kit, ['check', '--config', 'drizzle/config.ts'])));
  }
  if (hasTests('tests/architecture'))
    counts.push(await vitest(start, 'architecture', ['tests/architecture']));
  return sum(counts);
};

const freePort = () =>
  new Promise((resolve, reject) => {
    const probe = createServer();
    probe.once('error', reject);
    probe.listen(0, '127.0.0.1', () => {
      const { port } = probe.address();
      probe.close(() => resolve(port));
    });
  });

const browserTests = async (start, { browser, isBuilt }) => {
  if (!browser) return { passed: 0, failed: 0, skipped: 1, note: noBrowserAdvice, toolMissing: true };
  if (!isBuilt) return { passed: 0, failed: 1, skipped: 0, note: 'not run: the build failed' };
  const file = outputFile('browser');
  const folder = mkdtempSync(path.join(tmpdir(), 'loadgate-browser-'));
  const config = ['--config', 'tests/browser/playwright.config.ts'];
  const code = await start(program('@playwright', 'test', 'cli.js'), ['test', ...config], {
    BROWSER_TEST_PORT: String(await freePort()),
    BROWSER_TEST_FOLDER: folder,
    BROWSER_TEST_REPORT: file,
    CHROMIUM_PATH: browser,
  });
  rmSync(folder, { recursive: true, force: true });
  if (!existsSync(file)) return { passed: 0, failed: 1, skipped: 0 };
  const report = JSON.parse(readFileSync(file, 'utf8'));
  const { expected, unexpected, flaky, skipped } = report.stats;
  const failed = unexpected + flaky;
  const failures = failuresOfBrowser(report);
  return { passed: expected, failed: code !== 0 && failed === 0 ? 1 : failed, skipped, failures };
};

const vitestPart = (name, folders) => ({
  name,
  exists: () => folders.some(hasTests),
  run: (start) => vitest(start, name, folders.filter(hasTests)),
});

/** Every folder of tests belongs to one part; a house test sees to it. */
export const foldersOfParts = {
  checks: ['tests/architecture'],
  core: ['tests/core', 'tests/exchange', 'tests/messages', 'tests/papers', 'tests/simulation'],
  records: ['tests/data', 'tests/api', 'tests/demo', 'tests/ui', 'tests/commands', 'tests/speed'],
  batch: ['tests/batch'],
  browser: ['tests/browser'],
};

/** Two lanes side by side: one thinks, the other builds and then drives a browser. */
export const lanes = [
  [
    { name: 'checks', exists: () => true, run: checks },
    vitestPart('core', foldersOfParts.core),
    vitestPart('records', foldersOfParts.records),
    vitestPart('batch', foldersOfParts.batch),
  ],
  [
    {
      name: 'build',
      exists: hasPages,
      run: async (start, state) => {
        // A build clears the types of the routes and writes them anew; whoever reads them then finds none.
        await state.types.read;
        const code = await start(path.join('src', 'commands', 'build.mjs'), []);
        state.isBuilt = code === 0;
        return asOne(code);
      },
    },
    { name: 'browser', exists: () => hasPages() && hasBrowserTests(), run: browserTests },
  ],
];
