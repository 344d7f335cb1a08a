/** A patient's day for tests: one leg exercise with a weight, one without, and one with a cuff. */
import '#ui/patient/asked-words.ts';
import type { HistoryDay } from '#api/patient/history-view.ts';
import type { TodayExercise, TodayView } from '#api/patient/today-view.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { asTyped } from '#messages/text.ts';

const base = {
  side: 'right',
  sets: 3,
  restSeconds: 90,
  secondsPerRepetition: 4,
  sessionsPerWeek: 3,
} as const;

export const weightDose: Dose = {
  ...base,
  exerciseId: 'knee-extension',
  method: 'low-load',
  repetitions: { low: 15, high: 20 },
  reserve: 2,
  loadKg: 4,
  oneRepMaxKg: 10,
};

export const chairDose: Dose = {
  ...base,
  exerciseId: 'sit-to-stand-chair',
  side: 'both',
  method: 'variation',
  repetitions: { low: 8, high: 12 },
  reserve: 1,
  effectiveLoadKg: null,
  addedKg: 0,
};

export const cuffDose: Dose = {
  ...base,
  exerciseId: 'knee-extension',
  method: 'occlusion',
  limb: 'leg',
  sets: 4,
  restSeconds: 30,
  scheme: [30, 15, 15, 15],
  loadKg: 3,
  oneRepMaxKg: 10,
  cuff: {
    kind: 'pneumatic',
    widthCm: 10,
    position: 'seated',
    pressureMmhg: 100,
    percentOfLimbOcclusionPressure: 50,
    limbOcclusionPressureMmhg: 200,
    measuredOn: '2026-03-01',
  },
  inflation: 'continuous',
  capSeconds: 480,
  supervised: false,
};

export const exercise = (itemId: string, dose: Dose, more: Partial<TodayExercise> = {}): TodayExercise => ({
  prescriptionId: `prescription-${itemId}`,
  itemId,
  title: asTyped(`Exercise ${itemId}`),
  instructions: ['Sit tall.', 'Straighten the knee.'].map(asTyped),
  joints: ['right-knee'],
  dose,
  badDay:
    dose.method === 'occlusion'
      ? { ...dose, sets: 2, scheme: dose.scheme.slice(0, 2) }
      : { ...dose, sets: 2 },
  cautions: [{ id: 'breathe', text: asTyped('Keep breathing.') }],
  planned: true,
  weekdays: null,
  isNewDose: false,
  today: 'as-planned',
  signedName: 'N. Example',
  ...more,
});

export const today = (more: Partial<TodayView> = {}): TodayView => ({
  day: '2026-03-09',
  clockOffset: 0,
  givenName: 'Ana',
  clinic: {
    name: 'Test clinic',
    phone: '01 234',
    emergencyNumber: '112',
    urgentNumber: '020 913 0166',
    monitoringHours: asTyped('weekdays, 9 to 5'),
  },
  followedJoints: ['right-knee'],
  asksSwelling: true,
  asksStiffness: true,
  asksTwoHours: false,
  exercises: [exercise('weight', weightDose), exercise('chair', chairDose), exercise('cuff', cuffDose)],
  painLookups: [],
  morning: { due: false, answered: false, yesterdayOpen: false, canBeLate: true },
  urineAskedUntil: null,
  oldPageDays: 3,
  asksNothing: false,
  questionsWait: false,
  asksPregnancy: false,
  sessionSent: false,
  isStopped: false,
  danger: [],
  contact: 'none',
  changes: [],
  messages: [],
  ...more,
});

/** A joint's morning as the history shows it. */
export const answeredMorning: HistoryDay['mornings'][number]['joints'][number] = {
  joint: 'right-knee',
  pain: 2,
  stiffnessMinutes: 10,
  swelling: 'slight',
  swellingQuestion: 'more-than-usual',
  flare: false,
};
