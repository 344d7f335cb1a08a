/** Letters for tests, put together by hand: nothing here comes from a record. */
import { outcomeLines } from '#core/assessment/course/lines.ts';
import type { Caution } from '#core/prescribing/cautions/caution.ts';
import type { LetterPaper } from '#papers/letter/letter-paper.ts';
import { lowLoadDose } from '#tests/support/clinic.ts';

export const kneeCaution: Caution = {
  id: 'knee',
  text: 'Knee: swelling the next morning counts as an answer.',
  patient: { key: 'stop-signs' },
  from: 'knee',
  support: 'common-practice',
};

const stands = (day: string, count: number) => ({
  kind: 'chair-stand-30s' as const,
  day,
  stands: count,
  recordedBy: 'Nuala Derravane',
});
const walked = (day: string, seconds: number) => ({
  kind: 'timed-up-and-go' as const,
  day,
  seconds,
  recordedBy: 'Nuala Derravane',
});

export const letter = (over: Partial<LetterPaper> = {}): LetterPaper => ({
  clinic: { name: 'Ward Street Clinic', phone: '020 913 0140' },
  patient: { name: 'Maeve Tarrowby', birthDay: '1958-08-14', patientNumber: '4711' },
  referrer: 'Dr Invented',
  diagnoses: ['Knee osteoarthritis, right'],
  followed: ['right-knee'],
  since: '2026-01-19',
  log: {
    careDays: 92,
    sessions: 39,
    easierSessions: 2,
    testSessions: 0,
    plannedDays: 40,
    plannedDaysWithout: 1,
    mornings: 91,
    daysWithoutMorning: 1,
  },
  outcomes: outcomeLines(
    [
      stands('2026-01-19', 9),
      stands('2026-04-06', 12),
      walked('2026-01-19', 11.8),
      walked('2026-04-06', 10.9),
    ],
    [],
    { sex: 'female', birthDay: '1958-08-14', errorGroup: 'knee-osteoarthritis-mild' },
  ),
  exercises: [
    {
      first: { dose: lowLoadDose, signedOn: '2026-01-19' },
      now: {
        dose: { ...lowLoadDose, loadKg: 5 },
        signedOn: '2026-04-20',
        signedName: 'Nuala Derravane',
        isWithinSigned: false,
      },
      today: 'as-planned',
      cautions: [kneeCaution],
    },
  ],
  painLimits: [{ joint: 'right-knee', limit: 5 }],
  mornings: [{ joint: 'right-knee', first: { low: 2, high: 3 }, last: { low: 1, high: 1 } }],
  advised: { eased: 1, paused: 2 },
  decisions: [{ joint: 'right-knee', decision: 'hold', setAnewOn: null }],
  openSigns: [],
  isPaused: false,
  closed: [],
  cleared: [],
  overUsual: [],
  limits: [],
  goals: [],
  nextVisit: null,
  checks: {
    screening: { day: '2026-04-06', yes: [], notKnown: ['Osteoporosis'], notAsked: [], no: 37 },
    measured: [],
    notMeasured: ['Grip strength'],
  },
  notes: [],
  ...over,
});
