/** The end of `npm test`: what is counted, and when it fails. */
import { describe, expect, it } from 'vitest';
import { closingLine, exitCodeOf, failOnMissingTool, tableOf } from '#commands/team/test-report.mjs';

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
