/**
 * Whose error of measuring holds for a person. The same test errs by a second in early osteoarthritis and by a
 * third of the time in people who await an arthroplasty, so an error belongs to the people it was found in. A
 * clinician names the group; nothing here reads it off a diagnosis.
 */
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
