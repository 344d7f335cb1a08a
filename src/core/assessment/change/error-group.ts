/**
 * Whose error of measuring holds for a person. The same test errs by a second in early osteoarthritis and by a
 * third of the time in people who await an arthroplasty, so an error belongs to the people it was found in. A
 * clinician names the group; nothing here reads it off a diagnosis, and without one no change is judged.
 */
import { type OutcomeLine, unjudged } from '../course/judgement.ts';

export const errorGroups = [
  'knee-osteoarthritis-mild',
  'knee-arthroplasty-awaited',
  'hip-arthroplasty-awaited',
  'none-of-these',
] as const;
export type ErrorGroup = (typeof errorGroups)[number];

export const errorGroupWords: Readonly<Record<ErrorGroup, string>> = {
  'knee-osteoarthritis-mild': 'people with early knee osteoarthritis (radiographic grade 1 to 3)',
  'knee-arthroplasty-awaited': 'people awaiting a knee arthroplasty',
  'hip-arthroplasty-awaited': 'people awaiting a hip arthroplasty',
  'none-of-these': 'none of these groups',
};

export const awaitedJoint = (group: ErrorGroup | null): 'knee' | 'hip' | null =>
  group === 'knee-arthroplasty-awaited' ? 'knee' : group === 'hip-arthroplasty-awaited' ? 'hip' : null;

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
