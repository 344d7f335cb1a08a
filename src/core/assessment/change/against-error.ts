/** Whose error of measuring a change is held against, said with it; and what is said where none fits. */
import { type OutcomeLine, unjudged } from '../course/judgement.ts';
import { type ErrorGroup, errorGroupWords } from './error-group.ts';

/** Behind a judged change: whose error it is, and why that one was taken. */
export const whoseError = (group: ErrorGroup, source: string): string =>
  `The error is that of ${errorGroupWords[group]}: ${source}. The care profile names this group.`;

/** Why there is no error to judge by. */
export const whyNoError = (group: ErrorGroup | null): string => {
  if (group === null) return 'Whose error of measuring holds is not known: the care profile names no group.';
  return group === 'none-of-these'
    ? 'The error of measuring is not known for this person: the care profile says that no group on file fits.'
    : `The error of measuring is not known for ${errorGroupWords[group]}, the group named in the care profile.`;
};

/** A difference that no error on file fits; `more` says what else is known of the test. */
export const withoutError = (
  difference: number,
  unit: string,
  group: ErrorGroup | null,
  more = '',
): OutcomeLine['change'] => unjudged(difference, unit, [whyNoError(group), more].filter(Boolean).join(' '));
