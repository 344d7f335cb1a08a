/** Decisions of the engine, proposals that follow, what clinicians answered, messages. */
import { sql } from 'drizzle-orm';
import { contacts, decisions as decisionWords, type Reason, steps, todays } from '#core/decision/answers.ts';
import type { WorklistReason } from '#core/decision/dose/proposal.ts';
import type { FactsOfAnyVersion } from '#core/decision/facts/facts.ts';
import type { Caution } from '#core/prescribing/cautions/caution.ts';
import type { Dose } from '#core/prescribing/dose.ts';
import type { DoseChangeForPatient } from '#core/prescribing/dose-change-for-patient.ts';
import type { SettingValues } from '#core/sources/clinic-setting.ts';
import { prescription } from './clinical.ts';
import { dayShape, kit, words } from './kit.ts';
import { clinic, patient } from './people.ts';

/**
 * The settings that decisions were made under, each set once for a clinic: thousands of decisions rest on the same.
 * Its id is a digest of what it holds, so that equal settings are one row.
 */
export const decisionSettings = kit.appendOnly(
  'decision_settings',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    settings: kit.sharedJson<SettingValues>('settings'),
  },
  (t) => [kit.index('decision_settings_by_clinic').on(t.clinicId)],
);

/** One evaluation of one joint, with everything needed to replay it. */
export const decision = kit.appendOnly(
  'decision',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    joint: kit.text('joint'),
    /** Session judged; null when a danger was answered before any session. */
    sessionId: kit.idOrNull('session_id'),
    morningId: kit.idOrNull('morning_id'),
    /** The entry that made the engine look: a session, a morning, an amendment. */
    cause: kit.word('cause', ['session', 'morning', 'amendment', 'clinician']),
    evaluatedAt: kit.instant('evaluated_at'),
    day: kit.day('day'),
    facts: kit.json<FactsOfAnyVersion>('facts'),
    settingsId: kit.id('settings_id').references(() => decisionSettings.id),
    engineVersion: kit.text('engine_version'),
    decision: kit.word('decision', decisionWords),
    largestStep: kit.wordOrNull('largest_step', steps),
    today: kit.word('today', todays),
    contact: kit.word('contact', contacts),
    reasons: kit.sharedJson<readonly Reason[]>('reasons'),
  },
  (t) => [
    // Serves "the last decision of each joint".
    kit.index('decision_by_patient').on(t.patientId, t.joint, t.evaluatedAt),
    // Serves a patient's decisions in order of time: review, today's page, what stands. The clinic leads,
    // because a query names it too and an index by clinic and time alone was read in full instead.
    kit.index('decision_by_settings').on(t.settingsId),
    kit.index('decision_by_patient_time').on(t.clinicId, t.patientId, t.evaluatedAt),
    // Holds what followed an amendment alone; such decisions are few and are always asked for.
    kit
      .index('decision_amended')
      .on(t.patientId, t.joint, t.evaluatedAt)
      .where(sql`${t.cause} = 'amendment'`),
    kit.check('decision_word', sql`${t.decision} IN (${words(decisionWords)})`),
    kit.check('decision_today', sql`${t.today} IN (${words(todays)})`),
    kit.check('decision_contact', sql`${t.contact} IN (${words(contacts)})`),
    kit.check('decision_step', sql`(${t.decision} = 'progress') = (${t.largestStep} IS NOT NULL)`),
    kit.check('decision_day', sql`${t.day} GLOB ${sql.raw(`'${dayShape}'`)}`),
  ],
);

export const proposalKinds = ['same', 'step', 'ease-back', 'return', 'stop'] as const;
export const proposalEffects = ['acts-at-once', 'awaits-signature', 'repeat'] as const;

/** The next dose of one prescribed exercise after an evaluation. */
export const proposal = kit.appendOnly(
  'proposal',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    itemId: kit.id('item_id'),
    prescriptionId: kit.id('prescription_id').references(() => prescription.id),
    /** The decision with the most caution among the joints the exercise loads. */
    decisionId: kit.id('decision_id').references(() => decision.id),
    madeAt: kit.instant('made_at'),
    /** Session judged; null when a danger was answered before any session. */
    sessionId: kit.idOrNull('session_id'),
    decision: kit.word('decision', decisionWords),
    kind: kit.word('kind', proposalKinds),
    effect: kit.word('effect', proposalEffects),
    contact: kit.word('contact', contacts),
    /** Facts that put the patient on the worklist, such as two ease-backs in a row. */
    worklist: kit.sharedJson<readonly WorklistReason[]>('worklist'),
    /** The pre-approval that lets an increase act by itself; null otherwise. */
    preApprovalId: kit.idOrNull('pre_approval_id'),
    /** The version this proposal became; null when the last dose is repeated. */
    becameId: kit.idOrNull('became_id'),
    dose: kit.json<Dose>('dose'),
    badDay: kit.json<Dose>('bad_day'),
    cautions: kit.sharedJson<readonly Caution[]>('cautions'),
    /** What changes, one sentence each, for the clinician. */
    changes: kit.sharedJson<readonly string[]>('changes'),
    /** The same for the patient, as data: its words are found when it is read. */
    changeForPatient: kit.json<DoseChangeForPatient>('change_for_patient'),
  },
  (t) => [
    kit.index('proposal_by_patient').on(t.patientId, t.madeAt),
    kit.index('proposal_by_item').on(t.itemId, t.madeAt),
    kit.index('proposal_of_prescription').on(t.prescriptionId),
    kit.index('proposal_of_decision').on(t.decisionId),
    kit.check('proposal_effect', sql`${t.effect} IN (${words(proposalEffects)})`),
    kit.check('proposal_kind', sql`${t.kind} IN (${words(proposalKinds)})`),
    kit.check('proposal_decision', sql`${t.decision} IN (${words(decisionWords)})`),
  ],
);

export const responseKinds = ['accept', 'override'] as const;

/** A clinician's answer to a decision: a record of its own, never an edit. */
export const decisionResponse = kit.appendOnly(
  'decision_response',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    decisionId: kit.id('decision_id').references(() => decision.id),
    kind: kit.word('kind', responseKinds),
    /** What holds instead; null when accepted. */
    decision: kit.wordOrNull('decision', decisionWords),
    reason: kit.text('reason'),
    /** Last day an override holds. */
    until: kit.dayOrNull('until'),
    answeredAt: kit.instant('answered_at'),
    answeredBy: kit.id('answered_by'),
    answeredName: kit.text('answered_name'),
  },
  (t) => [
    kit.index('decision_response_by_decision').on(t.decisionId, t.answeredAt),
    kit.index('decision_response_by_patient').on(t.patientId, t.answeredAt),
    kit.check('decision_response_kind', sql`${t.kind} IN (${words(responseKinds)})`),
    kit.check(
      'decision_response_override',
      sql`${t.kind} = 'accept' OR (${t.decision} IN (${words(decisionWords)}) AND length(trim(${t.reason})) > 0 AND ${t.until} IS NOT NULL)`,
    ),
  ],
);

export const message = kit.appendOnly(
  'message',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    text: kit.text('text'),
    sentAt: kit.instant('sent_at'),
    sentBy: kit.id('sent_by'),
    sentName: kit.text('sent_name'),
  },
  (t) => [
    kit.index('message_by_patient').on(t.patientId, t.sentAt),
    kit.check('message_text', sql`length(trim(${t.text})) BETWEEN 1 AND 2000`),
  ],
);

/** A version of the clinic's own numbers; the newest one counts, old decisions keep theirs. */
export const clinicSettingsVersion = kit.appendOnly(
  'clinic_settings_version',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    version: kit.whole('version'),
    settings: kit.sharedJson<SettingValues>('settings'),
    changedAt: kit.instant('changed_at'),
    changedBy: kit.id('changed_by'),
    byName: kit.text('by_name'),
    reason: kit.text('reason'),
  },
  (t) => [kit.unique('clinic_settings_version_number').on(t.clinicId, t.version)],
);
