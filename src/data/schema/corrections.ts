/** Entries marked "entered in error", and the plans seen after it. Both append-only. */
import { sql } from 'drizzle-orm';
import { correctionSubjects } from '#core/corrections/correction.ts';
import { kit, words } from './kit.ts';
import { clinic, patient } from './people.ts';

export const correction = kit.appendOnly(
  'correction',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    subject: kit.word('subject', correctionSubjects),
    /** The entry that was wrong; it stays as it was recorded. */
    subjectId: kit.id('subject_id'),
    /** Joint the entry speaks of; null where it speaks of none. */
    joint: kit.textOrNull('joint'),
    /** When the wrong entry was recorded. */
    enteredAt: kit.instant('entered_at'),
    /** When the first of entries corrected one after the other was recorded. */
    firstSaidAt: kit.instant('first_said_at'),
    reason: kit.text('reason'),
    /** null = struck out, nothing in its place. */
    replacedById: kit.idOrNull('replaced_by_id'),
    /** It may loosen the plan, so both entries count until a clinician has seen the new one. */
    waits: kit.yes('waits'),
    correctedAt: kit.instant('corrected_at'),
    correctedBy: kit.id('corrected_by'),
    correctedName: kit.text('corrected_name'),
  },
  (t) => [
    kit.unique('correction_of').on(t.subjectId),
    kit.unique('correction_by').on(t.replacedById),
    kit.index('correction_by_patient').on(t.clinicId, t.patientId, t.correctedAt),
    kit.check('correction_subject', sql`${t.subject} IN (${words(correctionSubjects)})`),
    kit.check('correction_reason', sql`length(trim(${t.reason})) BETWEEN 1 AND 300`),
    kit.check('correction_other', sql`${t.replacedById} IS NULL OR ${t.replacedById} <> ${t.subjectId}`),
  ],
);

/** A clinician has seen the plan as it is after a correction. */
export const planSeen = kit.appendOnly('plan_seen', {
  correctionId: kit
    .id('correction_id')
    .primaryKey()
    .references(() => correction.id),
  clinicId: kit.id('clinic_id').references(() => clinic.id),
  patientId: kit.id('patient_id').references(() => patient.id),
  seenAt: kit.instant('seen_at'),
  seenBy: kit.id('seen_by'),
  seenName: kit.text('seen_name'),
});
