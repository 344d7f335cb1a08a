/** What would have changed a decision: values and answers in a clinician's words. */
import { sayIn } from '../../../say.ts';

export const words = {
  'not-answered': 'not answered',
  'absent.treatmentChangeDays': 'none',
  'absent.morningPainMean7': 'too few answers',
  'absent.fatigueRise': 'not known',
  none: 'none',
  'or-more': '{low} or more',
  'or-less': '{high} or less',
  'either-of': '{low} or {high}',
  range: '{low} to {high}',
  'sign-also': 'also {sign}',
  'sign-alone': '{sign} alone',
  'sign-not': 'without {sign}',
  'step-load': 'a step in load',
  'step-repetitions': 'a step in repetitions only',

  'fact-was': '{fact}: {value}',
  counted: 'counted over days',
  otherwise: 'If {values}: {answers}.',
  instead: '{answer} instead of {before}',
  bolder: 'Would have let more',
  'none-bolder': 'No single other answer would have let more.',
  'more-cautious': 'Would have asked for more caution',
  'none-more-cautious': 'No single other answer would have asked for more caution.',
  note: 'Each line changes one thing and leaves all else as it was. One pain answer also counts in facts of later days, which is not followed here. What a clinician or the clinic sets is left out. It does not say what the patient should have answered.',
  'not-worked-out':
    'Not worked out: this release does not come to the same answers under the version of that time.',
  loading: 'Working it out.',
} as const;

export const say = sayIn(words);
