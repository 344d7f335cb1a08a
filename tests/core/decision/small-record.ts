/** A small quiet record to vary: sessions on Mondays, Wednesdays and Fridays of three weeks, a morning each day. */
import type { Joint } from '#core/exercises/joints.ts';
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import type {
  Baseline,
  JointMorningAnswers,
  JointSessionAnswers,
  MorningRecord,
  PatientRecord,
  PrescriptionVersion,
  SessionRecord,
} from '#core/record/record.ts';
import { addDays, type Day, dayNumber } from '#core/time/day.ts';

/** A Monday. */
export const firstMonday: Day = '2026-02-02';
export const knee: Joint = 'left-knee';
export const shoulder: Joint = 'right-shoulder';

const dayMilliseconds = 86_400_000;
export const instantOn = (day: Day, hour: number): number =>
  dayNumber(day) * dayMilliseconds + hour * 3_600_000;
export const noonOf = (day: Day) => ({ instant: instantOn(day, 12), day });
export const eveningOf = (day: Day) => ({ instant: instantOn(day, 22), day });

export const kneeDose: LowLoadDose = {
  method: 'low-load',
  exerciseId: 'seated-leg-straightening',
  side: 'left',
  sets: 3,
  restSeconds: 60,
  secondsPerRepetition: 4,
  sessionsPerWeek: 3,
  repetitions: { low: 15, high: 20 },
  reserve: 2,
  loadKg: 10,
  oneRepMaxKg: 30,
};

export const version = (changed: Partial<PrescriptionVersion> = {}): PrescriptionVersion => ({
  id: 'knee-1',
  itemId: 'knee',
  version: 1,
  dose: kneeDose,
  badDay: { ...kneeDose, sets: 2, repetitions: { low: 10, high: 10 } },
  joints: [knee],
  signedAt: instantOn(addDays(firstMonday, -1), 12),
  endedAt: null,
  origin: 'clinician',
  ...changed,
});

export const shoulderVersion = version({ id: 'arm-1', itemId: 'arm', joints: [shoulder] });

export const session = (
  day: Day,
  changed: Partial<SessionRecord> = {},
  answers: Partial<JointSessionAnswers> = {},
  by: readonly PrescriptionVersion[] = [version()],
): SessionRecord => ({
  id: `session-${day}`,
  beganAt: instantOn(day, 17),
  recordedAt: instantOn(day, 18),
  day,
  kind: 'full',
  sets: by.flatMap((one) =>
    [1, 2, 3].map((set) => ({
      itemId: one.itemId,
      prescriptionId: one.id,
      set,
      repetitions: 15,
      loadKg: 10,
      reserve: 2,
      stopReason: 'none' as const,
    })),
  ),
  redFlags: [],
  extraPainRelief: false,
  didExtra: false,
  joints: [...new Set(by.flatMap((one) => one.joints))].map((joint) => ({
    joint,
    painBefore: 1,
    painDuring: 2,
    painAfter: 2,
    painTwoHours: 'not-applicable' as const,
    gaveWay: false,
    ...(joint === knee ? answers : {}),
  })),
  clockDoubtful: false,
  ...changed,
});

export const morning = (
  day: Day,
  answers: Partial<JointMorningAnswers> = {},
  changed: Partial<MorningRecord> = {},
  joints: readonly Joint[] = [knee, shoulder],
): MorningRecord => ({
  id: `morning-${day}`,
  day,
  recordedAt: instantOn(day, 8),
  joints: joints.map((joint) => ({
    joint,
    pain: 1,
    stiffnessMinutes: 10,
    swelling: 'none' as const,
    flare: false,
    ...(joint === knee ? answers : {}),
  })),
  redFlags: [],
  extraPainRelief: false,
  fatigue: 'not-applicable',
  clockDoubtful: false,
  ...changed,
});

export const baseline = (changed: Partial<Baseline> = {}): Baseline => ({
  joint: knee,
  usualPain: 1,
  usualPainTop: 1,
  acceptablePainLimit: 5,
  usualStiffnessMinutes: 10,
  usualSwelling: 'none',
  usualEffusion: 'zero',
  usualFatigue: null,
  setOn: firstMonday,
  setBy: 'clinician-1',
  dueForReview: false,
  ...changed,
});

export const trainingDays: readonly Day[] = [0, 2, 4, 7, 9, 11, 14, 16, 18].map((after) =>
  addDays(firstMonday, after),
);
export const lastSession = trainingDays.at(-1)!;
export const judgedMorning = addDays(lastSession, 1);

export const record = (changed: Partial<PatientRecord> = {}): PatientRecord => ({
  patientId: 'invented',
  followedJoints: [knee, shoulder],
  inflammatoryArthritis: false,
  prescriptions: [version(), shoulderVersion],
  sessions: trainingDays.map((day) => session(day, {}, {}, [version(), shoulderVersion])),
  mornings: Array.from({ length: 20 }, (_, place) => morning(addDays(firstMonday, place))),
  effusions: [],
  baselines: [baseline(), baseline({ joint: shoulder })],
  planned: trainingDays.map((day) => ({ day })),
  events: [],
  limits: [],
  ownedLoadsKg: [8, 9, 10, 11, 12.5],
  ...changed,
});

/** The record with one session or morning of a day written anew. */
export const withSession = (base: PatientRecord, one: SessionRecord): PatientRecord => ({
  ...base,
  sessions: [...base.sessions.filter((kept) => kept.day !== one.day), one],
});

export const withMorning = (base: PatientRecord, one: MorningRecord): PatientRecord => ({
  ...base,
  mornings: [...base.mornings.filter((kept) => kept.day !== one.day), one],
});
