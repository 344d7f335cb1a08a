/**
 * What another doctor has to find in the letter about three of the people: `firstPage` where it is read in a
 * minute, `behind` from the next page on.
 */
export interface LetterFacts {
  readonly firstPage: readonly string[];
  readonly behind: readonly string[];
}

const always = [
  'Not reviewed by us.',
  'No surgeon’s or physician’s limit is recorded.',
  'No warning sign open in our record.',
  'all answered.',
  'Silent blood clots; the heart under effort;',
  '☐ Medicine changed',
  '☐ Ring me',
  '☐ No change',
  'DRAFT – not signed',
] as const;

export const steadyProgressLetter: LetterFacts = {
  firstPage: [
    ...always,
    'Nothing; for your information.',
    'Maeve Tarrowby, born 14 Aug 1958',
    'Knee osteoarthritis, right',
    'In our care since 19 Jan 2026.',
    '39 sessions, 91 mornings logged.',
    'Beyond the error of measuring: 2 better, 0 worse. Within it: 1.',
    'Morning pain, right knee: 2 to 3 of 10 at first, 1 to 2 now',
    'Right knee: the dose may go up.',
    '9 stands (19 Jan 2026)',
    '12 stands (6 Apr 2026)',
    '+3 stands',
    '−0.9 s',
    '3 sets of 17 to 25 repetitions, with 3.8 kg, right side, 3/week (since 20 Apr 2026)',
    'Pain allowed in exercise, right knee: up to 5 of 10.',
    'Next visit: 27 Apr 2026.',
    '“Kneel to plant the bulbs”: working towards it',
  ],
  behind: [
    'beyond the error of measuring 2.5 stands: a change for the better.',
    'within the error of measuring 1.1 s: not called a change.',
    'first dose, signed 19 Jan 2026: 3 sets of 15 to 25 repetitions; with 3.2 kg',
    '40 days were planned; on 1 of them no session was logged.',
  ],
};

export const flareThenHoldLetter: LetterFacts = {
  firstPage: [
    ...always,
    'Tell us whether another cause should be looked for (left knee): morning pain was over its usual (3 of 10) on 6 of 14 mornings in two weeks.',
    'Desmond Aklavi, born 30 Nov 1967',
    'Knee osteoarthritis, left',
    'In our care since 19 Jan 2026.',
    '39 sessions, 91 mornings logged.',
    'Less was advised on 7 days, a pause on 0 days.',
    'Morning pain, left knee: 2 to 3 of 10 at first, 3 to 4 now',
    'Left knee: the dose stays as it is.',
    'Nothing was measured a second time, so no change can be named.',
    '3 sets of 25 repetitions, with 4.5 kg, left side, 3/week',
    '☐ My answer to what you ask:',
    'Pain allowed in exercise, left knee: up to 5 of 10.',
    'No next visit is booked in our record.',
    'Screened 6 Apr 2026,',
  ],
  behind: [
    'first dose, signed 19 Jan 2026: 3 sets of 15 to 25 repetitions; with 4.5 kg',
    'Consent has not been asked for: cuff work with a clinician present.',
    'Never measured: Body fat',
  ],
};

export const occlusionClearedLetter: LetterFacts = {
  firstPage: [
    ...always,
    '☐ Stop the cuff',
    'Nothing; for your information.',
    'Ingrid Solvarre, born 9 Dec 1976',
    'Knee osteoarthritis after removal of the inner meniscus, left',
    'In our care since 23 Feb 2026.',
    '1 exercise is prescribed (occlusion).',
    '16 sessions, 56 mornings logged.',
    'Morning pain, left knee: 1 to 2 of 10 at first, 1 to 2 now',
    '4 sets: 30, 15, 15 and 15 repetitions, with 3.5 kg, left side, Cuff at 104 mmHg',
    'Pain allowed in exercise, left knee: up to 5 of 10.',
    'The cuff is used at home, alone.',
    'Cleared by Nuala Derravane on 2 Mar 2026: occlusion (left leg), Clotting or bleeding disorder, own or family.',
    'Not open: occlusion (left arm, right arm, right leg). Clotting or bleeding disorder in the family',
    'Screened 23 Feb 2026,',
  ],
  behind: [
    'Answered yes: Clotting or bleeding disorder, own or family.',
    'first dose, signed 2 Mar 2026: 4 sets: 30, 15, 15 and 15 repetitions; with 3 kg',
    'Cuff at 107 mmHg',
    'ankle-brachial index (none recorded)',
    'Release at once for no pulse',
  ],
};
