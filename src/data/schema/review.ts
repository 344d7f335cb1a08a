/** Around the review: goals and what became of them, the next review, messages from the patient, the usual site. */
import { sql } from 'drizzle-orm';
import { retestKinds } from '#core/assessment/retest-plan.ts';
import { goalStates } from '#core/episode/goals.ts';
import { site } from './accounts.ts';
import { dayShape, kit, words } from './kit.ts';
import { owned } from './owned.ts';

/** A goal as it was set, or what became of it; the newest row of the same words counts. */
export const goalStep = kit.appendOnly(
  'goal_step',
  {
    ...owned(),
    goal: kit.text('goal'),
    state: kit.word('state', goalStates),
    byDay: kit.dayOrNull('by_day'),
    note: kit.textOrNull('note'),
  },
  (t) => [
    kit.index('goal_step_by_patient').on(t.patientId, t.recordedAt),
    kit.check('goal_step_goal', sql`length(trim(${t.goal})) BETWEEN 1 AND 300`),
    kit.check('goal_step_state', sql`${t.state} IN (${words(goalStates)})`),
    kit.check('goal_step_day', sql`${t.byDay} IS NULL OR ${t.byDay} GLOB ${sql.raw(`'${dayShape}'`)}`),
  ],
);

/** When a measure is to be taken again; the newest row of a measure counts, and one without a day stops it. */
export const retestPlan = kit.appendOnly(
  'retest_plan',
  {
    ...owned(),
    version: kit.whole('version'),
    measure: kit.word('measure', retestKinds),
    /** First civil day on which what is measured may be the re-test. */
    setOn: kit.day('set_on'),
    dueOn: kit.dayOrNull('due_on'),
    /** null = once. */
    everyDays: kit.wholeOrNull('every_days'),
    /** Why it was stopped. */
    reason: kit.textOrNull('reason'),
  },
  (t) => [
    kit.unique('retest_plan_version').on(t.patientId, t.version),
    kit.index('retest_plan_by_patient').on(t.clinicId, t.patientId, t.version),
    kit.check('retest_plan_measure', sql`${t.measure} IN (${words(retestKinds)})`),
    kit.check('retest_plan_set', sql`${t.setOn} GLOB ${sql.raw(`'${dayShape}'`)}`),
    kit.check('retest_plan_due', sql`${t.dueOn} IS NULL OR ${t.dueOn} GLOB ${sql.raw(`'${dayShape}'`)}`),
    kit.check('retest_plan_every', sql`${t.everyDays} IS NULL OR ${t.everyDays} BETWEEN 14 AND 365`),
    kit.check('retest_plan_stopped', sql`(${t.dueOn} IS NULL) = (${t.reason} IS NOT NULL)`),
  ],
);

/** The next review as booked; the newest row counts, and one without a day takes the booking back. */
export const reviewBooking = kit.appendOnly(
  'review_booking',
  {
    ...owned(),
    day: kit.dayOrNull('day'),
    time: kit.textOrNull('time'),
    place: kit.textOrNull('place'),
  },
  (t) => [
    kit.index('review_booking_by_patient').on(t.patientId, t.recordedAt),
    kit.check('review_booking_day', sql`${t.day} IS NULL OR ${t.day} GLOB ${sql.raw(`'${dayShape}'`)}`),
    kit.check('review_booking_time', sql`${t.time} IS NULL OR ${t.time} GLOB '[0-2][0-9]:[0-5][0-9]'`),
  ],
);

export const patientMessage = kit.appendOnly(
  'patient_message',
  { ...owned(), text: kit.text('text') },
  (t) => [
    kit.index('patient_message_by_patient').on(t.patientId, t.recordedAt),
    kit.check('patient_message_text', sql`length(trim(${t.text})) BETWEEN 1 AND 1000`),
  ],
);

/** Where a patient usually comes; the newest row counts. */
export const patientSite = kit.appendOnly(
  'patient_site',
  { ...owned(), siteId: kit.id('site_id').references(() => site.id) },
  (t) => [kit.index('patient_site_by_patient').on(t.clinicId, t.patientId, t.recordedAt)],
);
