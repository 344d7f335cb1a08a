/** What no source fixes in the review picture. Nothing here is read by the engine. */
import type { ClinicChoice } from '../clinic-choice.ts';

export const reviewChoices = [
  {
    id: 'review-gap-days',
    title: 'Days between two sessions from which the line of load is broken',
    unit: 'd',
    min: 4,
    max: 28,
    whole: true,
    default: 8,
    why: 'A week without a session is a gap a reader must see; a shorter limit breaks the line at every rest.',
  },
] as const satisfies readonly ClinicChoice[];

/** Lengths of time offered for the picture, from two weeks to three years. */
export const reviewWindows = [
  { days: 14, title: '2 weeks' },
  { days: 28, title: '4 weeks' },
  { days: 84, title: '12 weeks' },
  { days: 182, title: '6 months' },
  { days: 365, title: '1 year' },
  { days: 1095, title: '3 years' },
] as const;
