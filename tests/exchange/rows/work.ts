/** Rows of prescriptions, sessions, mornings and decisions. */
import { lowLoadDose } from '#tests/support/clinic.ts';
import { at, by, day, entry, own } from './begin.ts';

const caution = {
  id: 'x',
  text: 'Stop at chest pain.',
  patient: { key: 'stop-signs' },
  from: 'always',
  support: 'clinic',
};
const version = (id: string, number: number) => ({
  ...own(id),
  itemId: 'item-1',
  version: number,
  method: 'low-load',
  exerciseId: lowLoadDose.exerciseId,
  dose: lowLoadDose,
  badDay: { ...lowLoadDose, sets: 1 },
  joints: ['right-knee'],
  cautions: [caution],
  cautionWording: 1,
  working: [],
  origin: 'clinician',
  decisionId: null,
});

export const work = {
  prescription: [version('dose-1', 1), version('dose-2', 2), { ...version('dose-3', 1), itemId: 'item-2' }],
  signature: [
    { prescriptionId: 'dose-1', signedAt: at, signedBy: by, signedName: 'Ada Quill' },
    { prescriptionId: 'dose-2', signedAt: at, signedBy: by, signedName: 'Ada Quill' },
  ],
  training_session: [
    {
      ...entry('session-1'),
      beganAt: at,
      endedAt: at + 1_200_000,
      kind: 'full',
      stoppedByFlag: false,
      enteredAs: 'clinic-by-phone',
      enteredBy: by,
      clockDoubtful: true,
    },
    {
      ...entry('session-2'),
      beganAt: at,
      endedAt: at,
      kind: 'bad-day',
      stoppedByFlag: true,
      amends: 'entry-session-1',
    },
  ],
  set_log: [
    {
      id: 'set-1',
      sessionId: 'session-1',
      prescriptionId: 'dose-1',
      itemId: 'item-1',
      setNumber: 1,
      repetitions: 15,
      loadKg: 4,
      reserve: null,
      stopReason: 'none',
      easier: null,
    },
  ],
  session_joint: [
    {
      ...{ sessionId: 'session-1', joint: 'right-knee', painBefore: 2, painDuring: 0, painAfter: null },
      ...{
        painTwoHoursState: 'asked',
        muscleBurn: null,
        cuffDiscomfort: 3,
        gaveWay: false,
        gaveWayUnanswered: false,
      },
    },
  ],
  two_hours: [{ ...entry('two-1'), sessionId: 'session-1', joint: 'right-knee', pain: 1 }],
  morning: [
    {
      ...entry('morning-1'),
      answeredAt: at,
      fatigue: 4,
      fatigueState: 'asked',
      otherJoint: null,
      late: false,
    },
  ],
  morning_joint: [
    {
      ...{
        morningId: 'morning-1',
        joint: 'right-knee',
        pain: 3,
        stiffnessMinutes: 20,
        stiffnessState: 'asked',
      },
      ...{ swelling: 'slight', swellingState: 'asked', swellingQuestion: 'more-than-usual', flare: false },
    },
    {
      ...{
        morningId: 'morning-1',
        joint: 'left-knee',
        pain: null,
        stiffnessMinutes: null,
        stiffnessState: 'asked',
      },
      ...{ swelling: null, swellingState: 'asked', swellingQuestion: 'more-than-usual', flare: null },
    },
  ],
  supervised_session: [
    {
      ...own('supervised-1'),
      limb: 'leg',
      side: 'left',
      day,
      supervisedThroughout: true,
      remoteReason: null,
      remark: 'Quiet',
    },
  ],
  decision: [
    {
      id: 'decision-1',
      joint: 'right-knee',
      sessionId: 'session-1',
      morningId: null,
      cause: 'session',
      evaluatedAt: at,
      day,
      facts: {},
      settings: {},
      engineVersion: '2',
      decision: 'hold',
      largestStep: null,
      today: 'as-planned',
      contact: 'none',
      reasons: [
        {
          rule: 'P1',
          observed: { painAfter: 6 },
          threshold: 'above 5',
          support: 'clinic-choice',
          effect: { decision: 'hold' },
        },
      ],
    },
  ],
  decision_response: [
    {
      id: 'response-1',
      decisionId: 'decision-1',
      kind: 'override',
      decision: 'hold',
      reason: 'Seen today',
      until: '2026-03-09',
      answeredAt: at,
      answeredBy: by,
      answeredName: 'Ada Quill',
    },
  ],
};
