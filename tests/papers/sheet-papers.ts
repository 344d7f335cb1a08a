/** Papers of parts for tests, put together by hand: nothing here comes from a record. */
import type { FlareNotePaper } from '#papers/flare-note/flare-note-paper.ts';
import type { HandoverPaper } from '#papers/handover/handover-paper.ts';
import type { RecordPaper } from '#papers/record/record-paper.ts';
import { lowLoadDose } from '#tests/support/clinic.ts';
import { kneeCaution } from './letter-papers.ts';

const clinic = {
  name: 'Ward Street Clinic',
  phone: '020 913 0140',
  emergencyNumber: '112',
  urgentNumber: '116 117',
} as const;

const inForce: HandoverPaper['inForce'][number] = {
  dose: lowLoadDose,
  easierSession: { ...lowLoadDose, sets: 2, loadKg: 3 },
  signedName: 'Nuala Derravane',
  today: 'as-planned',
};

export const handover = (over: Partial<HandoverPaper> = {}): HandoverPaper => ({
  clinic,
  patient: { name: 'Maeve Tarrowby', birthDay: '1958-08-14' },
  episodeStatus: { state: 'not-recorded', change: null, returned: null },
  dangers: [],
  coveringClinician: { name: 'Rowan Example' },
  clinicianPauses: [],
  pauses: [],
  limits: [],
  closed: [],
  decisions: [],
  overrides: [],
  unsigned: [],
  inForce: [inForce],
  cautions: [kneeCaution],
  ...over,
});

export const record = (over: Partial<RecordPaper> = {}): RecordPaper => ({
  clinic,
  patient: {
    name: 'Maeve Tarrowby',
    birthDay: '1958-08-14',
    patientNumber: '4711',
    phone: '020 913 0151',
  },
  diagnoses: ['Knee osteoarthritis, right'],
  goals: ['Carry my shopping'],
  changes: [{ to: 'open', on: '2026-01-19', reason: 'First visit' }],
  versions: [
    {
      id: 'v1',
      dose: lowLoadDose,
      badDay: { ...lowLoadDose, sets: 2 },
      cautions: [{ id: 'c', text: 'C.', patient: { key: 'stop-signs' }, from: 'x', support: 'clinic' }],
      signedName: 'Nuala Derravane',
      signedOn: '2026-01-19',
      endedOn: '2026-02-02',
    },
  ],
  baselines: [],
  sessions: [
    {
      id: 's',
      beganAt: 0,
      recordedAt: 0,
      day: '2026-01-21',
      kind: 'full',
      sets: [
        {
          itemId: 'l',
          prescriptionId: 'v1',
          set: 1,
          repetitions: 17,
          loadKg: 4,
          reserve: 2,
          stopReason: 'none',
        },
        {
          itemId: 'l',
          prescriptionId: 'v1',
          set: 2,
          repetitions: null,
          loadKg: 4,
          reserve: null,
          stopReason: 'none',
        },
        {
          itemId: 'l',
          prescriptionId: 'v1',
          set: 3,
          repetitions: 15,
          loadKg: 3,
          reserve: 2,
          stopReason: 'none',
        },
      ],
      redFlags: [],
      extraPainRelief: false,
      didExtra: false,
      joints: [
        {
          joint: 'right-knee',
          painBefore: 0,
          painDuring: null,
          painAfter: 3,
          painTwoHours: 'not-applicable',
          gaveWay: false,
        },
      ],
      clockDoubtful: false,
    },
  ],
  mornings: [],
  decisions: [{ joint: 'right-knee', decision: 'hold', day: '2026-01-22' }],
  signs: [{ on: '2026-02-01', flags: ['chest-pain'] }],
  measured: [{ title: 'Timed up and go', readings: [{ text: '11.8 s', day: '2026-01-19' }] }],
  screenings: [{ day: '2026-01-19', answers: [{ item: 'past-clot', answer: 'not-known' }] }],
  consents: [{ kind: 'treatment', act: 'given', on: '2026-01-19' }],
  limits: [],
  events: [{ day: '2026-02-03', kind: 'fall', remark: 'on the stairs' }],
  nutrition: [
    {
      on: '2026-02-03',
      by: 'Nuala Derravane',
      advice: { proteinLowG: 90, proteinHighG: 110, meals: 4, surplusKcal: 200, words: 'Eggs count too.' },
    },
    { on: '2026-03-03', by: 'Nuala Derravane', advice: null },
  ],
  isNutritionShown: false,
  notes: [{ on: '2026-02-03', by: 'Nuala Derravane', text: 'Rang about the fall.' }],
  messages: [{ on: '2026-02-04', by: 'Maeve Tarrowby', text: 'Better today.' }],
  ...over,
});

/** A medicine that was changed, with what was noted of it. */
export const changed = (remark: string): FlareNotePaper['events'][number] => ({
  day: '2026-04-02',
  kind: 'medicine-change',
  joint: null,
  remark,
  medicine: null,
  courseForm: null,
});

export const flareNote = (over: Partial<FlareNotePaper> = {}): FlareNotePaper => ({
  clinic,
  patient: { name: 'Maeve Tarrowby', birthDay: '1958-08-14', patientNumber: '4711' },
  diagnoses: ['Rheumatoid arthritis'],
  isInflammatory: true,
  since: '2026-02-24',
  joints: [
    { joint: 'right-wrist', flare: { first: '2026-04-16', last: '2026-04-20', isOpen: true } },
    { joint: 'right-hand', flare: null },
  ],
  mornings: [
    {
      day: '2026-04-20',
      fatigue: 'not-applicable',
      joints: [
        {
          joint: 'right-wrist',
          pain: 6,
          stiffnessMinutes: 90,
          swelling: 'slight',
          swellingQuestion: 'more-than-usual',
          flare: true,
        },
        {
          joint: 'right-hand',
          pain: null,
          stiffnessMinutes: 'not-applicable',
          swelling: null,
          swellingQuestion: 'absolute',
          flare: null,
        },
      ],
    },
  ],
  jointCounts: { tender: 4, swollen: 2, day: '2026-03-16' },
  medicines: [
    {
      answer: { item: 'arthritis-medicines', answer: 'yes', details: ['biologic'] },
      day: '2026-03-16',
    },
  ],
  relief: { more: 3, usual: 30, unanswered: 2 },
  events: [changed('skipped two weeks')],
  signs: [{ on: '2026-04-18', joint: 'right-wrist', flags: ['unexplained-fever'] }],
  signed: [{ on: '2026-04-16', dose: lowLoadDose }],
  eased: [{ joint: 'right-wrist', decision: 'ease-back', first: '2026-04-16', last: '2026-04-20', days: 5 }],
  inForce: [{ ...inForce, today: 'bad-day' }],
  cautions: [kneeCaution],
  ...over,
});
