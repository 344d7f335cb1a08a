/** The versions of one prescription item up to one of them, and what a clinician last wrote among them. */
import type { Dose } from '#core/prescribing/dose.ts';
import type { PatientRecord, PrescriptionVersion } from '#core/record/record.ts';

/** Oldest first. */
export const historyOf = (
  record: PatientRecord,
  version: PrescriptionVersion,
): readonly PrescriptionVersion[] =>
  record.prescriptions
    .filter((one) => one.itemId === version.itemId && one.version <= version.version)
    .sort((a, b) => a.version - b.version);

/** The dose a clinician last wrote for the item: the bounds of its bands and scheme. */
export const signedDose = (history: readonly PrescriptionVersion[], version: PrescriptionVersion): Dose =>
  history.filter((one) => one.origin === 'clinician').at(-1)?.dose ?? version.dose;
