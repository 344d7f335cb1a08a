/** A morning typed in at the clinic. */
import { describe, expect, it } from 'vitest';
import { morningAnswers } from '#ui/clinician/data-entry/morning-answers.ts';

describe('a morning typed in at the clinic', () => {
  const asked = { swellingNotAsked: ['left-hip'], asksFatigue: true, asksOtherJoint: true } as const;
  const typed = (answers: Readonly<Record<string, string>>) =>
    morningAnswers('m', ['right-knee', 'left-hip'], asked, answers);
  const { joints } = typed({ 'swelling-right-knee': 'slight' });

  it('answers whether a joint is more swollen than usual, as the phone asks', () => {
    expect(joints[0]).toMatchObject({
      swelling: 'slight',
      swellingState: 'asked',
      swellingQuestion: 'more-than-usual',
    });
  });

  it('does not ask it of a joint that is left out', () => {
    expect(joints[1]).toMatchObject({ swelling: null, swellingState: 'not-applicable' });
  });

  it('says how tired the patient is and whether another joint is worse; what was left empty stays open', () => {
    expect(typed({ fatigue: '6', 'other-joint-morning': 'yes' })).toMatchObject({
      fatigue: 6,
      fatigueState: 'asked',
      otherJoint: 'worse',
    });
    expect(typed({ 'other-joint-morning': 'no' }).otherJoint).toBe('not-worse');
    expect(typed({})).toMatchObject({ fatigue: null, fatigueState: 'asked', otherJoint: 'not-answered' });
  });

  it('says that neither was asked where neither is asked', () => {
    const none = { ...asked, asksFatigue: false, asksOtherJoint: false };
    const sent = morningAnswers('m', ['right-knee'], none, { fatigue: '6', 'other-joint-morning': 'yes' });
    expect(sent).toMatchObject({ fatigue: null, fatigueState: 'not-applicable' });
    expect(sent).not.toHaveProperty('otherJoint');
  });
});
