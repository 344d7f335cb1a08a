/** Screening, clearances, measurements, baselines and prescriptions: append-only versions. */
import { sql } from 'drizzle-orm';
import type { Measurement } from '#core/assessment/measurements/measurement.ts';
import { careEventKinds, courseForms } from '#core/episode/care-event.ts';
import { movements } from '#core/exercises/movements.ts';
import type { Caution } from '#core/prescribing/cautions/caution.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import { methods } from '#core/prescribing/methods.ts';
import type { ProgrammeItem } from '#core/prescribing/programme/planned-sessions.ts';
import { effusions } from '#core/record/record.ts';
import type { ScreeningItemAnswer } from '#core/screening/screening.ts';
import { dayShape, kit, wholeWithin, words } from './kit.ts';
import { clinic, patient } from './people.ts';
import { homeAnswers } from './questionnaires.ts';
import { visit } from './visits.ts';

/** Columns every clinical row carries. */
const owned = () => ({
  id: kit.id('id').primaryKey(),
  clinicId: kit.id('clinic_id').references(() => clinic.id),
  patientId: kit.id('patient_id').references(() => patient.id),
  recordedAt: kit.instant('recorded_at'),
  recordedBy: kit.id('recorded_by'),
});

export const screening = kit.appendOnly(
  'screening',
  {
    ...owned(),
    version: kit.whole('version'),
    sheetVersion: kit.text('sheet_version'),
    day: kit.day('day'),
    answers: kit.json<readonly ScreeningItemAnswer[]>('answers'),
  },
  (t) => [
    kit.unique('screening_version').on(t.patientId, t.version),
    kit.check('screening_day', sql`${t.day} GLOB ${sql.raw(`'${dayShape}'`)}`),
  ],
);

export const clearance = kit.appendOnly(
  'clearance',
  {
    ...owned(),
    day: kit.day('day'),
    method: kit.word('method', methods),
    limb: kit.wordOrNull('limb', ['arm', 'leg']),
    side: kit.wordOrNull('side', ['left', 'right']),
    findings: kit.json<readonly string[]>('findings'),
    reason: kit.text('reason'),
    byName: kit.text('by_name'),
  },
  (t) => [
    kit.index('clearance_by_patient').on(t.patientId, t.recordedAt),
    kit.check('clearance_method', sql`${t.method} IN (${words(methods)})`),
    kit.check('clearance_limb', sql`${t.limb} IS NULL OR ${t.limb} IN ('arm', 'leg')`),
    kit.check('clearance_side', sql`${t.side} IS NULL OR ${t.side} IN ('left', 'right')`),
    kit.check('clearance_reason', sql`length(trim(${t.reason})) > 0`),
  ],
);

export const measurement = kit.appendOnly(
  'measurement',
  {
    ...owned(),
    day: kit.day('day'),
    kind: kit.text('kind'),
    /** The whole measurement as the core describes it; bounds are the registry's, checked before writing. */
    value: kit.json<Measurement>('value'),
    /** The figure that outlier checks and lists use, in the unit of the kind. */
    figure: kit.real('figure'),
    /** A figure far from the last one was confirmed by the person entering it. */
    confirmed: kit.yes('confirmed'),
    /** Answers given at home that it was read from; null = taken by a clinician. */
    homeAnswersId: kit.idOrNull('home_answers_id').references(() => homeAnswers.id),
    /** The appointment in which it was taken; null = nobody has begun one. */
    visitId: kit.idOrNull('visit_id').references(() => visit.id),
  },
  (t) => [
    kit.index('measurement_by_patient_kind').on(t.patientId, t.kind, t.day),
    kit.index('measurement_of_home_answers').on(t.homeAnswersId).where(sql`${t.homeAnswersId} IS NOT NULL`),
    kit.index('measurement_of_visit').on(t.visitId).where(sql`${t.visitId} IS NOT NULL`),
    kit.check('measurement_figure', sql`${t.figure} >= 0`),
    kit.check('measurement_day', sql`${t.day} GLOB ${sql.raw(`'${dayShape}'`)}`),
    kit.check(
      'measurement_limb',
      sql`json_extract(${t.value}, '$.limb') IS NULL OR json_extract(${t.value}, '$.limb') IN ('arm', 'leg')`,
    ),
    kit.check(
      'measurement_pressure_pair',
      sql`${t.kind} <> 'blood-pressure' OR json_extract(${t.value}, '$.diastolicMmhg') < json_extract(${t.value}, '$.systolicMmhg')`,
    ),
  ],
);

export const effusionTest = kit.appendOnly(
  'effusion_test',
  {
    ...owned(),
    joint: kit.text('joint'),
    day: kit.day('day'),
    grade: kit.word('grade', effusions),
  },
  (t) => [
    kit.index('effusion_by_patient').on(t.patientId, t.day),
    kit.check('effusion_grade', sql`${t.grade} IN (${words(effusions)})`),
  ],
);

/** Usual values set by a clinician; the newest row of a joint counts. */
export const baseline = kit.appendOnly(
  'baseline',
  {
    ...owned(),
    joint: kit.text('joint'),
    /** null = still settling in. */
    usualPain: kit.wholeOrNull('usual_pain'),
    usualPainTop: kit.wholeOrNull('usual_pain_top'),
    acceptablePainLimit: kit.whole('acceptable_pain_limit'),
    usualStiffnessMinutes: kit.whole('usual_stiffness_minutes'),
    usualSwelling: kit.word('usual_swelling', ['none', 'slight']),
    usualEffusion: kit.word('usual_effusion', ['zero', 'trace', '1+']),
    usualFatigue: kit.wholeOrNull('usual_fatigue'),
    /** Scatter of the mornings the values were set from; null = not enough of them. */
    morningSpread: kit.jsonOrNull<{ readonly standardDeviation: number; readonly values: number }>(
      'morning_spread',
    ),
    setOn: kit.day('set_on'),
    dueForReview: kit.yes('due_for_review'),
    /** Said at a first visit; no diary has shown it yet. */
    provisional: kit.yes('provisional').default(false),
    /** Day a clinician set the value that this one followed by itself to better mornings; null = set by a person. */
    tightenedFrom: kit.dayOrNull('tightened_from'),
    /** A clinician acknowledged that usual pain is higher than when the plan began. */
    riseAcknowledged: kit.yes('rise_acknowledged').default(false),
    byName: kit.text('by_name'),
    reason: kit.text('reason'),
  },
  (t) => [
    kit.index('baseline_by_patient').on(t.patientId, t.joint, t.recordedAt),
    kit.check('baseline_usual_pain', wholeWithin(t.usualPain, 0, 10)),
    kit.check(
      'baseline_top',
      sql`${t.usualPainTop} IS NULL OR (${t.usualPain} IS NOT NULL AND typeof(${t.usualPainTop}) = 'integer' AND ${t.usualPainTop} BETWEEN ${t.usualPain} AND min(10, ${t.usualPain} + 2))`,
    ),
    kit.check('baseline_pain_limit', sql`${t.acceptablePainLimit} BETWEEN 5 AND 7`),
    kit.check('baseline_stiffness', sql`${t.usualStiffnessMinutes} BETWEEN 0 AND 1440`),
    kit.check('baseline_effusion', sql`${t.usualEffusion} IN (${words(['zero', 'trace', '1+'])})`),
    kit.check('baseline_swelling', sql`${t.usualSwelling} IN (${words(['none', 'slight'])})`),
  ],
);

export const origins = ['clinician', 'progress', 'ease-back', 'return'] as const;

/** One version of one prescribed exercise. Signed by a row of its own; ended by a row of its own. */
export const prescription = kit.appendOnly(
  'prescription',
  {
    ...owned(),
    itemId: kit.id('item_id'),
    version: kit.whole('version'),
    method: kit.word('method', methods),
    exerciseId: kit.text('exercise_id'),
    dose: kit.json<Dose>('dose'),
    badDay: kit.json<Dose>('bad_day'),
    joints: kit.sharedJson<readonly string[]>('joints'),
    cautions: kit.sharedJson<readonly Caution[]>('cautions'),
    /** Number of the words in which the patient reads them. */
    cautionWording: kit.whole('caution_wording'),
    /** Lines of working shown to the clinician who signed. */
    working: kit.sharedJson<readonly string[]>('working'),
    origin: kit.word('origin', origins),
    /** The decision this version follows from; null when a clinician wrote it. */
    decisionId: kit.idOrNull('decision_id'),
  },
  (t) => [
    kit.unique('prescription_version').on(t.itemId, t.version),
    kit.index('prescription_by_patient').on(t.patientId, t.recordedAt),
    kit.check('prescription_method', sql`${t.method} IN (${words(methods)})`),
    kit.check('prescription_origin', sql`${t.origin} IN (${words(origins)})`),
    kit.check('prescription_sets', sql`json_extract(${t.dose}, '$.sets') BETWEEN 1 AND 10`),
    kit.check('prescription_cautions', sql`json_array_length(${t.cautions}) > 0`),
  ],
);

export const signature = kit.appendOnly('signature', {
  prescriptionId: kit
    .id('prescription_id')
    .primaryKey()
    .references(() => prescription.id),
  clinicId: kit.id('clinic_id').references(() => clinic.id),
  patientId: kit.id('patient_id').references(() => patient.id),
  signedAt: kit.instant('signed_at'),
  signedBy: kit.id('signed_by'),
  signedName: kit.text('signed_name'),
});

export const prescriptionEnd = kit.appendOnly('prescription_end', {
  prescriptionId: kit
    .id('prescription_id')
    .primaryKey()
    .references(() => prescription.id),
  clinicId: kit.id('clinic_id').references(() => clinic.id),
  patientId: kit.id('patient_id').references(() => patient.id),
  endedAt: kit.instant('ended_at'),
  endedBy: kit.id('ended_by'),
  reason: kit.text('reason'),
});

/** Which weekdays each prescribed exercise stands on; the newest version counts from its day on. */
export const programme = kit.appendOnly(
  'programme',
  {
    ...owned(),
    version: kit.whole('version'),
    fromDay: kit.day('from_day'),
    items: kit.json<readonly ProgrammeItem[]>('items'),
  },
  (t) => [
    kit.unique('programme_version').on(t.patientId, t.version),
    kit.check('programme_day', sql`${t.fromDay} GLOB ${sql.raw(`'${dayShape}'`)}`),
  ],
);

export const limitKinds = ['weight-bearing', 'range', 'load-limit', 'no-impact', 'none'] as const;

/** A limit on a joint from a surgeon, a physician or the clinician, with its days. Lifting it is a row of its own. */
export const careLimit = kit.appendOnly(
  'care_limit',
  {
    ...owned(),
    joint: kit.text('joint'),
    kind: kit.word('kind', limitKinds),
    limitKg: kit.realOrNull('limit_kg'),
    /** Degrees a limit on range allows: all three or none. */
    movement: kit.wordOrNull('movement', movements),
    fromDegrees: kit.realOrNull('from_degrees'),
    toDegrees: kit.realOrNull('to_degrees'),
    fromDay: kit.day('from_day'),
    /** Last day it holds; null = until lifted. */
    toDay: kit.dayOrNull('to_day'),
    author: kit.text('author'),
    remark: kit.textOrNull('remark'),
  },
  (t) => [
    kit.index('care_limit_by_patient').on(t.patientId, t.fromDay),
    kit.check('care_limit_kind', sql`${t.kind} IN (${words(limitKinds)})`),
    kit.check('care_limit_load', sql`(${t.kind} = 'load-limit') = (${t.limitKg} IS NOT NULL)`),
    kit.check('care_limit_movement', sql`${t.movement} IS NULL OR ${t.movement} IN (${words(movements)})`),
    kit.check(
      'care_limit_degrees',
      sql`(${t.movement} IS NULL AND ${t.fromDegrees} IS NULL AND ${t.toDegrees} IS NULL) OR (${t.kind} = 'range' AND ${t.movement} IS NOT NULL AND ${t.fromDegrees} IS NOT NULL AND ${t.toDegrees} IS NOT NULL AND ${t.fromDegrees} <= ${t.toDegrees})`,
    ),
    kit.check('care_limit_days', sql`${t.toDay} IS NULL OR ${t.toDay} >= ${t.fromDay}`),
  ],
);

export const careLimitLift = kit.appendOnly('care_limit_lift', {
  limitId: kit
    .id('limit_id')
    .primaryKey()
    .references(() => careLimit.id),
  clinicId: kit.id('clinic_id').references(() => clinic.id),
  patientId: kit.id('patient_id').references(() => patient.id),
  liftedOn: kit.day('lifted_on'),
  liftedAt: kit.instant('lifted_at'),
  liftedBy: kit.id('lifted_by'),
  reason: kit.text('reason'),
});

/** Something that happened and may blunt a score, open a review or contraindicate a method. */
export const careEvent = kit.appendOnly(
  'care_event',
  {
    ...owned(),
    day: kit.day('day'),
    kind: kit.word('kind', careEventKinds),
    joint: kit.textOrNull('joint'),
    /** Of a course of steroid alone. */
    lastDay: kit.dayOrNull('last_day'),
    courseForm: kit.wordOrNull('course_form', courseForms),
    remark: kit.textOrNull('remark'),
  },
  (t) => [
    kit.index('care_event_by_patient').on(t.patientId, t.day),
    kit.check('care_event_kind', sql`${t.kind} IN (${words(careEventKinds)})`),
    kit.check(
      'care_event_course',
      sql`(${t.kind} = 'steroid-course') = (${t.lastDay} IS NOT NULL) AND (${t.lastDay} IS NULL) = (${t.courseForm} IS NULL)`,
    ),
  ],
);
