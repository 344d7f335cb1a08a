/** What became of a signed dose before it acted, withdrawn again or sent to the phone, and what is signed for ahead. */
import { sql } from 'drizzle-orm';
import { prescription } from './clinical.ts';
import { kit } from './kit.ts';
import { clinic, patient } from './people.ts';

/** A signature taken back by whoever gave it, before the dose could reach the patient; the signature stays on record. */
export const signatureWithdrawal = kit.appendOnly('signature_withdrawal', {
  prescriptionId: kit
    .id('prescription_id')
    .primaryKey()
    .references(() => prescription.id),
  clinicId: kit.id('clinic_id').references(() => clinic.id),
  patientId: kit.id('patient_id').references(() => patient.id),
  withdrawnAt: kit.instant('withdrawn_at'),
  withdrawnBy: kit.id('withdrawn_by'),
  withdrawnName: kit.text('withdrawn_name'),
});

/** When a dose in force was first sent to the patient's phone: from then on it may have been shown. */
export const doseHandedOver = kit.appendOnly('dose_handed_over', {
  prescriptionId: kit
    .id('prescription_id')
    .primaryKey()
    .references(() => prescription.id),
  clinicId: kit.id('clinic_id').references(() => clinic.id),
  patientId: kit.id('patient_id').references(() => patient.id),
  handedAt: kit.instant('handed_at'),
});

/** Steps a clinician signed for ahead, within the bounds of the engine's rules. */
export const preApproval = kit.appendOnly(
  'pre_approval',
  {
    id: kit.id('id').primaryKey(),
    clinicId: kit.id('clinic_id').references(() => clinic.id),
    patientId: kit.id('patient_id').references(() => patient.id),
    itemId: kit.id('item_id'),
    steps: kit.whole('steps'),
    days: kit.whole('days'),
    signedAt: kit.instant('signed_at'),
    /** By the clinic's clock. */
    signedDay: kit.day('signed_day'),
    signedBy: kit.id('signed_by'),
    signedName: kit.text('signed_name'),
  },
  (t) => [
    kit.index('pre_approval_by_patient').on(t.patientId, t.signedAt),
    kit.check('pre_approval_steps', sql`${t.steps} BETWEEN 1 AND 3`),
    kit.check('pre_approval_days', sql`${t.days} BETWEEN 1 AND 28`),
  ],
);

export const preApprovalEnd = kit.appendOnly('pre_approval_end', {
  preApprovalId: kit
    .id('pre_approval_id')
    .primaryKey()
    .references(() => preApproval.id),
  clinicId: kit.id('clinic_id').references(() => clinic.id),
  patientId: kit.id('patient_id').references(() => patient.id),
  endedAt: kit.instant('ended_at'),
  endedBy: kit.id('ended_by'),
});
