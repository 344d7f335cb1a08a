/** Facts stored before version 2 of the rules, made whole: none of what it brought is read as a symptom. */
import { describe, expect, it } from 'vitest';
import { wholeFacts } from '#core/decision/facts/facts.ts';
import { baseFacts } from '../base-facts.ts';

const {
  painLaterMorning: _later,
  twoOverBefore: _two,
  morningsOverTop: _row,
  usualPainProvisional: _told,
  usualPainRise: _rise,
  ...ofVersion1
} = baseFacts;
const absent = {
  painLaterMorning: 'not-applicable',
  twoOverBefore: false,
  morningsOverTop: 0,
  usualPainProvisional: false,
  usualPainRise: null,
};

describe('facts of an earlier version', () => {
  it('become whole with nothing that could fire a rule', () => {
    expect(wholeFacts(ofVersion1)).toEqual({ ...ofVersion1, ...absent });
  });

  it('keep what they have where only some is absent', () => {
    const some = { ...ofVersion1, twoOverBefore: true, morningsOverTop: 3 };
    expect(wholeFacts(some)).toEqual({
      ...some,
      painLaterMorning: 'not-applicable',
      usualPainProvisional: false,
      usualPainRise: null,
    });
  });

  it('are handed back as they are where they are whole', () => {
    const whole = { ...baseFacts, twoOverBefore: true };
    expect(wholeFacts(whole)).toBe(whole);
  });
});
