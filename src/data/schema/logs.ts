/**
 * What patients send. Append-only: a correction is a further row that names the row it amends. A score column
 * that is null was asked and not answered; where a question was not asked at all its state column says so.
 */
import { sql } from 'drizzle-orm';
import type { SignsAsked } from '#core/danger/signs-asked.ts';
import type { LimbCheck } from '#core/prescribing/occlusion/limb-check.ts';
import { enteredAs, morningVias, type News, otherJointAnswers } from '#core/record/entry-words.ts';
import { answerFields, askedStates } from '#core/record/morning-questions.ts';
import { stopReasons } from '#core/record/record.ts';
import { answerChecks, answerColumns } from './answer-columns.ts';
import { prescription } from './clinical.ts';
import { dayShape, kit, wholeWithin, words } from './kit.ts';
import { clinic, patient } from './people.ts';

export const sessionKinds = ['full', 'bad-day', 'test'] as const;

/** Columns every entry from a phone carries. */
const entry = () => ({
  id: kit.id('id').primaryKey(),
  clinicId: kit.id('clinic_id').references(() => clinic.id),
  patientId: kit.id('patient_id').references(() => patient.id),
  /** Made by the phone; the same entry sent twice is one row. */
  entryId: kit.text('entry_id'),
  /** Digest of what was sent, to tell a repeat from a conflict. */
  digest: kit.text('digest'),
  format: kit.whole('format'),
  day: kit.day('day'),
  zone: kit.text('zone'),
  sentAt: kit.instant('sent_at'),
  arrivedAt: kit.instant('arrived_at'),
  /** The phone's clock disagrees with its arrival beyond the clinic's limit and nobody has confirmed it. */
  clockDoubtful: kit.yes('clock_doubtful'),
  /** Who typed it: the patient, or the clinic from paper or by phone. */
  enteredBy: kit.id('entered_by'),
  /** In what part, where it was not the patient; null = the patient. */
  enteredAs: kit.wordOrNull('entered_as', enteredAs),
  amends: kit.idOrNull('amends'),
  redFlags: kit.jsonOrNull<readonly string[]>('red_flags'),
  extraPainRelief: kit.yesOrNull('extra_pain_relief'),
  /** In which form signs were asked for; null = every sign listed, by an earlier release or the clinic's hand. */
  signsAsked: kit.jsonOrNull<readonly SignsAsked[]>('signs_asked'),
  /** Ticked and taken back. */
  signSlips: kit.jsonOrNull<readonly string[]>('sign_slips'),
});

export const trainingSession = kit.appendOnly(
  'training_session',
  {
    ...entry(),
    beganAt: kit.instant('began_at'),
    endedAt: kit.instant('ended_at'),
    kind: kit.word('kind', sessionKinds),
    /** Stands at yes where it was not answered: whoever reads this column alone then errs to the careful side. */
    didExtra: kit.yes('did_extra'),
    /** The question was not answered; null in rows from before a gap was distinguished. */
    didExtraUnanswered: kit.yesOrNull('did_extra_unanswered'),
    /** What is new since the last session; null = not asked or not answered. */
    news: kit.jsonOrNull<readonly News[]>('news'),
    otherJointWorse: kit.yesOrNull('other_joint_worse'),
    /** Something new was reported, or another joint is worse: a clinician looks at it. */
    reportedNew: kit.yesOrNull('reported_new'),
    stoppedByFlag: kit.yes('stopped_by_flag'),
    /** Fingers or toes after a cuff; null = no cuff, or an entry from before it was sent. */
    limbChecks: kit.jsonOrNull<readonly LimbCheck[]>('limb_checks'),
  },
  (t) => [
    kit.unique('training_session_entry').on(t.patientId, t.entryId),
    // Serves the record of one patient from a civil day on, and the review picture. It holds whatever a
    // record shows, so that a patient's sessions are read from neighbouring pages and not from one page
    // each, wherever in the file their rows came to lie among those of others.
    kit
      .index('training_session_of_patient')
      .on(
        t.patientId,
        t.day,
        t.clinicId,
        t.id,
        t.entryId,
        t.amends,
        t.beganAt,
        t.arrivedAt,
        t.kind,
        t.redFlags,
        t.extraPainRelief,
        t.didExtra,
        t.didExtraUnanswered,
        t.reportedNew,
        t.clockDoubtful,
      ),
    // Serves "since when an entry with a doubtful clock waits"; few rows ever stand in it.
    kit.index('training_session_doubtful').on(t.patientId, t.arrivedAt).where(sql`${t.clockDoubtful} = 1`),
    // Serves "since when something new waits to be looked at"; few rows ever stand in it.
    kit.index('training_session_reported_new').on(t.patientId, t.arrivedAt).where(sql`${t.reportedNew} = 1`),
    // Serves the looks at fingers or toes of one patient's sessions; only sessions with a cuff stand in it.
    kit.index('training_session_limb').on(t.patientId, t.day).where(sql`${t.limbChecks} IS NOT NULL`),
    kit.check('training_session_kind', sql`${t.kind} IN (${words(sessionKinds)})`),
    kit.check('training_session_day', sql`${t.day} GLOB ${sql.raw(`'${dayShape}'`)}`),
    kit.check('training_session_order', sql`${t.endedAt} >= ${t.beganAt}`),
  ],
);

export const setLog = kit.appendOnly(
  'set_log',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    sessionId: kit.id('session_id').references(() => trainingSession.id),
    prescriptionId: kit.id('prescription_id').references(() => prescription.id),
    itemId: kit.id('item_id'),
    setNumber: kit.whole('set_number'),
    repetitions: kit.wholeOrNull('repetitions'),
    loadKg: kit.realOrNull('load_kg'),
    reserve: kit.wholeOrNull('reserve'),
    stopReason: kit.word('stop_reason', stopReasons),
    /** Done as the easier session; null where the phone did not say it for each set. */
    easier: kit.yesOrNull('easier'),
  },
  (t) => [
    // Serves the sets of a patient's sessions, from neighbouring pages as the sessions themselves.
    kit
      .index('set_log_of_session')
      .on(
        t.patientId,
        t.sessionId,
        t.itemId,
        t.setNumber,
        t.prescriptionId,
        t.repetitions,
        t.loadKg,
        t.reserve,
        t.stopReason,
        t.easier,
      ),
    kit.index('set_log_by_session').on(t.sessionId),
    kit.index('set_log_by_prescription').on(t.prescriptionId),
    kit.check('set_log_repetitions', wholeWithin(t.repetitions, 0, 500)),
    kit.check('set_log_load', sql`${t.loadKg} IS NULL OR ${t.loadKg} BETWEEN 0 AND 500`),
    kit.check('set_log_reserve', wholeWithin(t.reserve, 0, 10)),
    kit.check('set_log_number', sql`${t.setNumber} BETWEEN 1 AND 30`),
    kit.check('set_log_stop', sql`${t.stopReason} IN (${words(stopReasons)})`),
  ],
);

const score = (name: string) => kit.wholeOrNull(name);

export const sessionJoint = kit.appendOnly(
  'session_joint',
  {
    sessionId: kit.id('session_id').references(() => trainingSession.id),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    joint: kit.text('joint'),
    painBefore: score('pain_before_0_10'),
    painDuring: score('pain_during_0_10'),
    painAfter: score('pain_after_0_10'),
    painTwoHoursState: kit.word('pain_two_hours_state', askedStates),
    muscleBurn: score('muscle_burn_0_10'),
    cuffDiscomfort: score('cuff_discomfort_0_10'),
    /** Stands at yes where it was not answered, as `did_extra` does. */
    gaveWay: kit.yes('gave_way'),
    gaveWayUnanswered: kit.yesOrNull('gave_way_unanswered'),
  },
  (t) => [
    kit.key({ columns: [t.sessionId, t.joint] }),
    // Serves the answers about a patient's joints, from neighbouring pages as the sessions themselves.
    kit
      .index('session_joint_of_session')
      .on(
        t.patientId,
        t.sessionId,
        t.joint,
        t.painBefore,
        t.painDuring,
        t.painAfter,
        t.painTwoHoursState,
        t.gaveWay,
        t.gaveWayUnanswered,
      ),
    kit.check('session_joint_before', wholeWithin(t.painBefore, 0, 10)),
    kit.check('session_joint_during', wholeWithin(t.painDuring, 0, 10)),
    kit.check('session_joint_after', wholeWithin(t.painAfter, 0, 10)),
    kit.check('session_joint_burn', wholeWithin(t.muscleBurn, 0, 10)),
    kit.check('session_joint_cuff', wholeWithin(t.cuffDiscomfort, 0, 10)),
  ],
);

/** Pain two hours later, sent after the session it speaks of. */
export const twoHours = kit.appendOnly(
  'two_hours',
  {
    ...entry(),
    sessionId: kit.id('session_id').references(() => trainingSession.id),
    joint: kit.text('joint'),
    pain: score('pain_0_10'),
  },
  (t) => [
    kit.unique('two_hours_entry').on(t.patientId, t.entryId),
    kit
      .index('two_hours_of_session')
      .on(t.patientId, t.sessionId, t.clockDoubtful, t.joint, t.pain, t.arrivedAt),
    kit.index('two_hours_by_session').on(t.sessionId),
    kit.check('two_hours_pain', wholeWithin(t.pain, 0, 10)),
  ],
);

/** The next-morning answers. */
export const morning = kit.appendOnly(
  'morning',
  {
    ...entry(),
    answeredAt: kit.instant('answered_at'),
    fatigue: score('fatigue_0_10'),
    fatigueState: kit.word('fatigue_state', askedStates),
    /** Of a joint that is not followed; null = not asked. */
    otherJoint: kit.wordOrNull('other_joint', otherJointAnswers),
    /** Given for an earlier day. */
    late: kit.yes('late'),
    /** How the answers after the pain were given; null = from before it was said. */
    via: kit.wordOrNull('via', morningVias),
  },
  (t) => [
    kit.unique('morning_entry').on(t.patientId, t.entryId),
    // Serves the record of one patient from a civil day on, and the day of the last answer; holds whatever
    // a record shows, as the index of the sessions does.
    kit
      .index('morning_of_patient')
      .on(
        t.patientId,
        t.day,
        t.clinicId,
        t.id,
        t.entryId,
        t.amends,
        t.zone,
        t.answeredAt,
        t.arrivedAt,
        t.redFlags,
        t.extraPainRelief,
        t.fatigue,
        t.fatigueState,
        t.otherJoint,
        t.clockDoubtful,
        t.late,
        t.via,
      ),
    // Serves "since when an entry with a doubtful clock waits"; few rows ever stand in it.
    kit.index('morning_doubtful').on(t.patientId, t.arrivedAt).where(sql`${t.clockDoubtful} = 1`),
    // Serves the newest morning that told of another joint; few rows ever stand in it.
    kit.index('morning_other_joint').on(t.patientId, t.arrivedAt).where(sql`${t.otherJoint} = 'worse'`),
    kit.check('morning_day', sql`${t.day} GLOB ${sql.raw(`'${dayShape}'`)}`),
    kit.check('morning_fatigue', wholeWithin(t.fatigue, 0, 10)),
  ],
);

export const morningJoint = kit.appendOnly(
  'morning_joint',
  {
    morningId: kit.id('morning_id').references(() => morning.id),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    joint: kit.text('joint'),
    ...answerColumns(),
  },
  (t) => [
    kit.key({ columns: [t.morningId, t.joint] }),
    // Serves the answers about a patient's joints, from neighbouring pages as the mornings themselves.
    kit
      .index('morning_joint_of_morning')
      .on(t.patientId, t.morningId, t.joint, ...answerFields.map(({ name }) => t[name])),
    ...answerChecks('morning_joint', t),
  ],
);

/** The same entry id arrived with other content: kept, never merged, shown to the clinician. */
export const entryConflict = kit.appendOnly(
  'entry_conflict',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    entryId: kit.text('entry_id'),
    digest: kit.text('digest'),
    payload: kit.json<unknown>('payload'),
    arrivedAt: kit.instant('arrived_at'),
  },
  (t) => [kit.index('entry_conflict_of_entry').on(t.patientId, t.entryId)],
);
