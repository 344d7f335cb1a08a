/** Which sentence tells a reason to the patient where a rule has more than one: none says what was not so. */
import { describe, expect, it } from 'vitest';
import type { Reason } from '#core/decision/answers.ts';
import { ruleSentence } from '#core/decision/patient-sentence.ts';

const said = (observed: object, effect: object = {}) =>
  ({ observed, effect }) as unknown as Pick<Reason, 'observed' | 'effect'>;

describe('the sentence of a reason', () => {
  it.each([
    ['it came twice', { twoOverBefore: true, painLaterMorning: 7 }, 'P5'],
    [
      'once, on a morning that spoke for one left out',
      { twoOverBefore: false, painLaterMorning: 7 },
      'P5-later',
    ],
    ['once, on the next morning', { twoOverBefore: false, painLaterMorning: 'not-applicable' }, 'P5-once'],
    ['once, as version 1 found it', { previousMorningOverTop: true }, 'P5-once'],
  ])('of P5: %s', (_, observed, sentence) => {
    expect(ruleSentence('P5', said(observed))).toBe(sentence);
  });

  it.each([
    ['P5h', { painLaterMorning: 4 }, {}, 'P5h-later'],
    ['P5h', { painLaterMorning: 'not-applicable' }, {}, 'P5h'],
    ['P1', {}, { contact: 'routine' }, 'P1-near-usual'],
    ['P1', {}, {}, 'P1'],
    ['F1', {}, { today: 'rest-this-joint' }, 'F1-rest'],
    ['F1', {}, { today: 'bad-day' }, 'F1'],
    ['P2', {}, { today: 'bad-day' }, 'P2'],
  ] as const)('of %s with %j and %j', (rule, observed, effect, sentence) => {
    expect(ruleSentence(rule, said(observed, effect))).toBe(sentence);
  });
});
