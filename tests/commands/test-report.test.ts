/** The end of `npm test`: what is counted, and when it fails. */
import { describe, expect, it } from 'vitest';
import { failuresOfBrowser, failuresOfVitest } from '#commands/team/test-failures.mjs';
import {
  closingLine,
  exitCodeOf,
  failOnMissingTool,
  failuresText,
  tableOf,
} from '#commands/team/test-report.mjs';

const part = (name: string, passed: number, failed: number, skipped = 0) => ({
  name,
  seconds: 1.25,
  passed,
  failed,
  skipped,
});

describe('the closing line sums all runners', () => {
  it('in one line alone', () => {
    expect(closingLine([part('core', 3, 0), part('browser', 4, 1, 2)])).toBe('7 passed, 1 failed, 2 skipped');
  });
});

describe('the exit code', () => {
  it.each([
    ['all passed', [part('core', 3, 0)], 0],
    ['one failed', [part('core', 3, 0), part('desk', 9, 1)], 1],
    ['nothing ran', [part('core', 0, 0)], 1],
    ['everything skipped', [part('core', 0, 0, 5)], 1],
    ['a skip among passes', [part('core', 3, 0), part('browser', 0, 0, 1)], 0],
  ])('%s', (_, results, code) => {
    expect(exitCodeOf(results)).toBe(code);
  });

  it('a tool that is missing is a skip at home and a failure on the build server', () => {
    const missing = { ...part('browser', 0, 0, 1), toolMissing: true };
    expect(exitCodeOf([part('core', 3, 0), failOnMissingTool(missing, false)])).toBe(0);
    expect(exitCodeOf([part('core', 3, 0), failOnMissingTool(missing, true)])).toBe(1);
  });
});

describe('the table of parts', () => {
  it('sets seconds beside the budget and says when one is over', () => {
    expect(tableOf([part('core', 3, 0), part('desk', 12, 1)], { core: 60, desk: 1 })).toBe(
      [
        'part  seconds  budget  passed  failed  skipped',
        'core      1.3      60       3       0        0',
        'desk      1.3       1      12       1        0  over its budget',
      ].join('\n'),
    );
  });
});

describe('what failed stands at the end', () => {
  const test = (status: string, title: string, said: string[] = []) => ({
    status,
    fullName: title,
    failureMessages: said,
  });

  it('with file, title and what was said, without the way through the program', () => {
    const report = {
      testResults: [
        { name: 'a.test.ts', status: 'failed', assertionResults: [test('passed', 'one')], message: '' },
        {
          name: 'b.test.ts',
          status: 'failed',
          assertionResults: [test('failed', 'two', ['expected 1\n    at somewhere.ts:3'])],
        },
        { name: 'c.test.ts', status: 'passed', assertionResults: [test('passed', 'three')] },
      ],
    };
    expect(failuresOfVitest(report)).toEqual([
      'a.test.ts: the file itself',
      'b.test.ts: two\n    expected 1',
    ]);
  });

  it('for a walk in the browser, however deep its suite lies', () => {
    const spec = (title: string, status: string, message: string) => ({
      title,
      file: 'phone.spec.ts',
      tests: [{ status, results: [{ errors: [{ message }] }] }],
    });
    const inner = {
      specs: [spec('kept', 'expected', ''), spec('lost', 'unexpected', '\u001b[31mgone\u001b[39m')],
    };
    expect(failuresOfBrowser({ suites: [{ file: 'phone.spec.ts', suites: [inner] }] })).toEqual([
      'tests/browser/phone.spec.ts: lost\n    gone',
    ]);
  });

  it('and is nothing where nothing failed', () => {
    expect(failuresText([part('core', 3, 0)])).toBe('');
    expect(failuresText([{ ...part('core', 3, 1), failures: ['x: y'] }])).toBe('What failed\n\ncore | x: y');
  });
});
