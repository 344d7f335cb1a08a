/** What failed, said once more at the end, where the lines of the parts no longer stand between. */
import path from 'node:path';
import { stripVTControlCharacters } from 'node:util';
import { root } from '../paths.mjs';

const linesShown = 14;
const charactersALine = 240;

const told = (where, title, message) => {
  const lines = stripVTControlCharacters(message ?? '')
    .split('\n')
    .filter((line) => line.trim() !== '' && !/^\s+at /.test(line))
    .slice(0, linesShown)
    .map((line) => `    ${line.slice(0, charactersALine)}`);
  return [`${where}: ${title}`, ...lines].join('\n');
};

const fromRoot = (file) => (path.isAbsolute(file) ? path.relative(root, file) : file);

/** Of a report of vitest: each test that failed, and each file that could not be read at all. */
export const failuresOfVitest = (report) =>
  report.testResults.flatMap((suite) => {
    const failed = suite.assertionResults.filter((test) => test.status === 'failed');
    if (failed.length === 0 && suite.status === 'failed')
      return [told(fromRoot(suite.name), 'the file itself', suite.message)];
    return failed.map((test) => told(fromRoot(suite.name), test.fullName, test.failureMessages.join('\n')));
  });

const specsOf = (suite, file = suite.file) => [
  ...(suite.specs ?? []).map((spec) => ({ file: spec.file ?? file, spec })),
  ...(suite.suites ?? []).flatMap((inner) => specsOf(inner, file)),
];

/** Of a report of the browser's runner: each walk that did not end as expected. */
export const failuresOfBrowser = (report) =>
  (report.suites ?? [])
    .flatMap((suite) => specsOf(suite))
    .filter(({ spec }) => spec.tests.some((test) => ['unexpected', 'flaky'].includes(test.status)))
    .map(({ file, spec }) => {
      const errors = spec.tests.flatMap((test) => test.results.flatMap((result) => result.errors ?? []));
      return told(path.join('tests/browser', file), spec.title, errors.map((one) => one.message).join('\n'));
    });
