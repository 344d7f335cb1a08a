/** What became of a signed dose before it acted: withdrawn again, or sent to the patient's phone. */
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
