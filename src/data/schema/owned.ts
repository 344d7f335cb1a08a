/** Columns of a row about one patient: whose it is, when it was recorded and by whom. */
import { kit } from './kit.ts';
import { clinic, patient } from './people.ts';

export const owned = () => ({
  id: kit.id('id').primaryKey(),
  clinicId: kit.id('clinic_id').references(() => clinic.id),
  patientId: kit.id('patient_id').references(() => patient.id),
  recordedAt: kit.instant('recorded_at'),
  recordedBy: kit.id('recorded_by'),
  byName: kit.text('by_name'),
});
