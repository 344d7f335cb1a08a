/** Rows of episodes, consents, goals and questions. */
import { screeningItems } from '#core/screening/items.ts';
import { at, day, own } from './begin.ts';

export const care = {
  episode: [
    {
      ...own('episode-1'),
      diagnoses: ['Knee osteoarthritis'],
      joints: ['right-knee'],
      followedJoints: ['right-knee'],
      goals: ['Kneel'],
      referrer: null,
      contacts: [],
    },
  ],
  episode_change: [
    { ...own('ec-1'), episodeId: 'episode-1', state: 'open', on: day, reason: 'Referred', breakKind: null },
    {
      ...own('ec-2'),
      recordedAt: at + 1,
      episodeId: 'episode-1',
      state: 'active',
      on: '2026-03-03',
      reason: 'Begun',
      breakKind: null,
    },
  ],
  care_profile: [{ ...own('profile-1'), version: 1, diagnosis: 'Knee osteoarthritis, right' }],
  consent: [
    {
      ...own('consent-1'),
      kind: 'treatment',
      act: 'given',
      wordingSource: 'proposed',
      wordingVersion: 2,
      recordedVia: 'clinician',
      reason: null,
    },
  ],
  goal_step: [{ ...own('goal-1'), goal: 'Kneel', state: 'reached', byDay: '2026-05-01', note: 'Done' }],
  patient_detail: [
    {
      ...own('pd-1'),
      detail: 'address',
      version: 1,
      value: '1 Quay',
      because: 'first',
      reason: null,
      strikes: null,
    },
    {
      ...own('pd-2'),
      detail: 'emergencyName',
      version: 1,
      value: 'Jo',
      because: 'first',
      reason: null,
      strikes: null,
    },
    {
      ...own('pd-3'),
      detail: 'generalPractitioner',
      version: 1,
      value: 'Dr Lund',
      because: 'first',
      reason: null,
      strikes: null,
    },
  ],
  screening: [
    {
      ...own('screening-1'),
      version: 1,
      sheetVersion: '2',
      day,
      answers: [
        {
          item: screeningItems[0]!.id,
          answer: 'yes',
          limbs: [{ limb: 'leg', side: 'left' }],
          joints: ['left-knee'],
          details: ['unstable'],
          day,
          note: 'Seen',
          askedOn: day,
        },
        { item: screeningItems[1]!.id, answer: 'not-known' },
      ],
    },
  ],
  home_answers: [
    {
      ...own('home-1'),
      homeQuestionsId: 'hq-1',
      entryId: 'e',
      digest: 'd',
      version: null,
      day,
      answers: [
        { question: 'Stairs', answer: 4 },
        { question: 'Out of the house?', answer: true },
        { question: 'What next?', answer: 'Walk' },
        { question: 'Shopping', answer: null },
      ],
      enteredAs: null,
    },
  ],
};
