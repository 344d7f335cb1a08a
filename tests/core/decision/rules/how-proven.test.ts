/** How far a rule rests on what was published is read from its citations, and what is missing is said of every rule. */
import { describe, expect, it } from 'vitest';
import { notProvenOf, restsOnWhat } from '#core/decision/rules/how-proven.ts';
import type { Rule } from '#core/decision/rules/rule.ts';
import { rulesOf } from '#core/decision/rules/table.ts';

type Support = Rule['citations'][number];
const cited = (number: Support['number'], mark: Support['mark'] = 'seen', studied = 'people') =>
  ({ source: 'alghadir-2018', locator: 'x', number, mark, studied }) as Support;

describe('what a rule rests on', () => {
  it.each([
    [[], 'no-source'],
    [[cited('none')], 'chosen'],
    [[cited('none'), cited('near-source')], 'near-published'],
    [[cited('from-source', 'memory')], 'from-memory'],
    [[cited('from-source', 'memory'), cited('from-source', 'second-hand')], 'published'],
    [[cited('near-source'), cited('from-source')], 'published'],
  ] as const)('of %j is %s', (citations, found) => {
    expect(restsOnWhat({ citations })).toBe(found);
  });
});

describe('what is not proven', () => {
  const always = ['no-clinician', 'no-patients'];

  it('is never nothing', () => {
    for (const rule of rulesOf(2)) expect(notProvenOf(rule).slice(-2)).toEqual(always);
  });

  it.each([
    [[], ['no-source']],
    [[cited('from-source')], ['others-studied']],
    [[cited('none', 'memory')], ['figure-chosen', 'remembered', 'others-studied']],
    [[cited('from-source', 'second-hand', 'nobody: advice')], ['second-hand', 'nobody-studied']],
    [
      [cited('near-source', 'seen', 'nobody: advice'), cited('none')],
      ['figure-chosen', 'others-studied'],
    ],
  ] as const)('of %j is %j beside', (citations, found) => {
    expect(notProvenOf({ citations })).toEqual([...found, ...always]);
  });
});
