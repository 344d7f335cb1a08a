/** A morning typed in at the clinic. */
import { describe, expect, it } from 'vitest';
import { morningAnswers } from '#ui/clinician/data-entry/answers.ts';

describe('a morning typed in at the clinic', () => {
  const joints = morningAnswers('m', ['right-knee', 'left-hip'], ['left-hip'], {
    'swelling-right-knee': 'slight',
  }).joints;

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
});
