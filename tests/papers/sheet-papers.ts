/** Papers of parts for tests, put together by hand: nothing here comes from a record. */
import type { FlareNotePaper } from '#papers/flare-note/flare-note-paper.ts';
import type { HandoverPaper } from '#papers/handover/handover-paper.ts';
import { lowLoadDose } from '#tests/support/clinic.ts';

export const clinic = {
  name: 'Ward Street Clinic',
  phone: '020 913 0140',
  emergencyNumber: '112',
  urgentNumber: '116 117',
} as const;

const inForce: HandoverPaper['inForce'][number] = {
  title: 'Seated knee extension',
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
  cautions: ['Knee: swelling the next morning counts as an answer.'],
  ...over,
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
  medicines: [{ label: 'Arthritis medicines', said: 'yes; Biologic', day: '2026-03-16' }],
  relief: { more: 3, usual: 30, unanswered: 2 },
  events: [
    { day: '2026-04-02', kind: 'medicine-change', joint: null, remark: 'skipped two weeks', medicine: null },
  ],
  signs: [{ on: '2026-04-18', joint: 'right-wrist', flags: ['unexplained-fever'] }],
  signed: [{ on: '2026-04-16', title: 'Seated knee extension', dose: lowLoadDose }],
  eased: [{ joint: 'right-wrist', decision: 'ease-back', first: '2026-04-16', last: '2026-04-20', days: 5 }],
  inForce: [{ ...inForce, today: 'bad-day' }],
  cautions: ['Knee: swelling the next morning counts as an answer.'],
  ...over,
});
