/** Plans on paper for tests, put together by hand: nothing here comes from a record. */
import type { LowLoadDose, OcclusionDose } from '#core/prescribing/dose.ts';
import { cautionText } from '#messages/cautions.ts';
import { exerciseName } from '#messages/exercises.ts';
import { asTyped } from '#messages/text.ts';
import type { Look } from '#papers/look.ts';
import type { PlanPaper, PlanPaperExercise } from '#papers/plan/plan-paper.ts';
import { lowLoadDose } from '#tests/support/clinic.ts';

export const look: Look = { paper: 'a4', language: 'en', isLarge: false, printedOn: '2026-04-20' };

const cuffDose: OcclusionDose = {
  method: 'occlusion',
  exerciseId: 'knee-extension-seated',
  limb: 'leg',
  side: 'left',
  sets: 4,
  scheme: [30, 15, 15, 15],
  loadKg: 3.5,
  oneRepMaxKg: null,
  restSeconds: 30,
  secondsPerRepetition: 3,
  sessionsPerWeek: 2,
  cuff: { kind: 'elastic-wrap', tightness: 6 },
  inflation: 'continuous',
  capSeconds: 600,
  supervised: false,
};

export const cautions = [
  cautionText({ key: 'stop-signs' }),
  cautionText({ key: 'not-checked', things: ['heart-under-effort'] }),
  asTyped('Rowan said: keep the heel on the mat.'),
];

export const exercise = (over: Partial<PlanPaperExercise> = {}): PlanPaperExercise => {
  const dose: LowLoadDose = lowLoadDose;
  return {
    exerciseId: dose.exerciseId,
    title: exerciseName(dose.exerciseId),
    dose,
    easierSession: { ...dose, sets: 2, loadKg: 3 },
    today: 'as-planned',
    days: ['2026-04-20', '2026-04-22', '2026-04-24'],
    cautions,
    version: 3,
    signedName: 'Nuala Derravane',
    signedOn: '2026-04-13',
    isWithinSigned: false,
    ...over,
  };
};

export const cuffExercise = exercise({
  dose: cuffDose,
  easierSession: { ...cuffDose, sets: 3, scheme: [15, 15, 15] },
  days: ['2026-04-21'],
  version: 5,
});

export const plan = (over: Partial<PlanPaper> = {}): PlanPaper => ({
  clinic: {
    name: 'Ward Street Clinic',
    phone: '020\u00a0913\u00a00140',
    urgentNumber: '116\u00a0117',
    emergencyNumber: '112',
  },
  patient: { name: 'Maeve Tarrowby', birthDay: '1958-08-14' },
  weeks: ['2026-04-20'],
  until: null,
  isOff: false,
  danger: [],
  exercises: [exercise(), cuffExercise],
  joints: [
    { joint: 'right-knee', acceptablePainLimit: 5 },
    { joint: 'left-hip', acceptablePainLimit: null },
  ],
  ...over,
});
