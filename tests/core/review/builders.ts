/** Small histories for the review: one knee, one knee extension at home. */
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import type {
  Baseline,
  MorningRecord,
  PatientRecord,
  PrescriptionVersion,
  SessionRecord,
} from '#core/record/record.ts';
import type { ReviewDecision } from '#core/review/decision-markers.ts';
import { type ReviewWanted, reviewSeries } from '#core/review/series.ts';
import { addDays, type Day, dayNumber } from '#core/time/day.ts';

export const today = '2026-03-31';
export const since = '2026-03-01';
const noon = (day: Day): number => dayNumber(day) * 86_400_000 + 43_200_000;

export const dose: LowLoadDose = {
  method: 'low-load',
  exerciseId: 'knee-extension-cuff',
  side: 'left',
  sets: 2,
  repetitions: { low: 15, high: 25 },
  reserve: 2,
  loadKg: 4,
  oneRepMaxKg: 12,
  restSeconds: 90,
  secondsPerRepetition: 4,
  sessionsPerWeek: 3,
};

export const version = (number: number, more: Partial<PrescriptionVersion> = {}): PrescriptionVersion => ({
  id: `version-${number}`,
  itemId: 'line',
  version: number,
  dose,
  badDay: { ...dose, sets: 1 },
  joints: ['left-knee'],
  signedAt: noon('2026-02-20'),
  endedAt: null,
  origin: 'clinician',
  ...more,
});

interface SessionTraits {
  readonly kg?: number | null;
  readonly repetitions?: readonly (number | null)[];
  readonly during?: number | null;
  readonly kind?: SessionRecord['kind'];
  readonly version?: number;
  readonly clockDoubtful?: boolean;
  readonly itemId?: string;
}

export const session = (day: Day, traits: SessionTraits = {}): SessionRecord => ({
  id: `session-${day}`,
  beganAt: noon(day),
  recordedAt: noon(day),
  day,
  kind: traits.kind ?? 'full',
  sets: (traits.repetitions ?? [20, 20]).map((repetitions, place) => ({
    itemId: traits.itemId ?? 'line',
    prescriptionId: `version-${traits.version ?? 1}`,
    set: place + 1,
    repetitions,
    loadKg: traits.kg === undefined ? 4 : traits.kg,
    reserve: 2,
    stopReason: 'none',
  })),
  redFlags: [],
  extraPainRelief: false,
  didExtra: false,
  joints: [
    {
      joint: 'left-knee',
      painBefore: 2,
      painDuring: traits.during === undefined ? 3 : traits.during,
      painAfter: 2,
      painTwoHours: 'not-applicable',
      gaveWay: false,
    },
  ],
  clockDoubtful: traits.clockDoubtful ?? false,
});

export const morning = (day: Day, pain: number | null, more: { flare?: boolean } = {}): MorningRecord => ({
  id: `morning-${day}`,
  day,
  recordedAt: noon(day),
  joints: [{ joint: 'left-knee', pain, stiffnessMinutes: 15, swelling: 'none', flare: more.flare ?? false }],
  redFlags: [],
  extraPainRelief: false,
  fatigue: 'not-applicable',
  clockDoubtful: false,
});

export const baseline: Baseline = {
  joint: 'left-knee',
  usualPain: 2,
  usualPainTop: 3,
  acceptablePainLimit: 5,
  usualStiffnessMinutes: 15,
  usualSwelling: 'none',
  usualEffusion: 'zero',
  usualFatigue: null,
  setOn: '2026-02-25',
  setBy: 'R. Clinician',
  dueForReview: false,
};

export const decision = (
  day: Day,
  word: ReviewDecision['decision'],
  cause: ReviewDecision['cause'] = 'morning',
): ReviewDecision => ({
  id: `decision-${day}-${cause}`,
  joint: 'left-knee',
  day,
  evaluatedAt: noon(day) + (cause === 'session' ? 3_600_000 : 0),
  cause,
  decision: word,
  largestStep: word === 'progress' ? 'repetitions' : null,
  reasons: [],
});

export const record = (parts: Partial<PatientRecord>): PatientRecord => ({
  patientId: 'patient',
  followedJoints: ['left-knee'],
  inflammatoryArthritis: false,
  prescriptions: [version(1)],
  sessions: [],
  mornings: [],
  effusions: [],
  baselines: [],
  planned: [],
  events: [],
  limits: [],
  ownedLoadsKg: [],
  ...parts,
});

export const series = (parts: Partial<PatientRecord>, more: Partial<ReviewWanted<ReviewDecision>> = {}) =>
  reviewSeries({
    record: record(parts),
    decisions: [],
    joint: 'left-knee',
    itemId: 'line',
    measure: 'load',
    since,
    today,
    ...more,
  });

/** Sessions on these days, each answered the next morning with the given pain. */
export const answeredSessions = (days: readonly Day[], pain: number) => ({
  sessions: days.map((day) => session(day)),
  mornings: days.map((day) => morning(addDays(day, 1), pain)),
});
