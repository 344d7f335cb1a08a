/** What was done about the disease, and the days after an injection. */
import { sayIn } from '../../../say.ts';

export const words = {
  title: 'Treatment',
  before: 'Treatment before this episode of care',
  earlier: {
    by: 'count',
    one: '{count} entry before this episode of care',
    other: '{count} entries before this episode of care',
  },
  none: 'No change of medicine, missed dose, course of steroid or injection is recorded.',
  'none-named': 'none named',
  'entered-in-error': '(entered in error; counts until the new plan is seen)',
  'after-injection': {
    by: 'count',
    one: 'After an injection the exercises that load the joint are the easier session for {count} more day (clinic setting).',
    other:
      'After an injection the exercises that load the joint are the easier session for {count} more days (clinic setting).',
  },
  sources: 'What the sources say, and where they disagree',
  lately: 'Treatment in eight weeks',
} as const;

export const say = sayIn(words);
