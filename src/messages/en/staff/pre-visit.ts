/** What a patient answered before a visit. */
import { sayIn } from '../../say.ts';

export const words = {
  'still-true': '{answer}. Still true since {date}?',
  confirm: 'Confirm as a new screening',
  'to-review': '{count} to review; {plain} answered “no”, taken as reported.',
  'all-answered': 'Every question needed for low load is answered.',
  missing: 'Not answered, and needed for low load: {questions}.',
  none: 'The patient has not answered any pre-visit questions. On the phone they are under “Questions before your visit”.',
  confirmed: 'Answered on {date}; a screening was recorded afterwards.',
  waiting: 'Answered on {date}; no screening recorded yet.',
} as const;

export const say = sayIn(words);
