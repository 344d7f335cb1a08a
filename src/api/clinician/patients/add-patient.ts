/** A new patient. Whoever looks the same is asked about first, and the answer names them. */
import type { NewPatient } from '#core/record/patient-details.ts';
import type { Access } from '#data/access.ts';
import { auditWrite } from '#data/audit/audit.ts';
import { setTeamMember } from '#data/patients/care-team.ts';
import { addPatient } from '#data/patients/people.ts';
import { type SamePatient, samePatients } from '#data/patients/same-patients.ts';

export type AddedPatient =
  | { readonly answer: 'added'; readonly patientId: string }
  | { readonly answer: 'possible-duplicate'; readonly found: readonly SamePatient[] };

/** `otherThan`: ids the caller was shown and says are other people. Reception adds nobody to its own care. */
export const addNewPatient = (
  access: Access,
  row: NewPatient,
  otherThan: readonly string[],
  isClinician = true,
): Promise<AddedPatient> =>
  access.store.write(async (tx) => {
    const found = await samePatients(access, row);
    if (found.some(({ patientId }) => !otherThan.includes(patientId)))
      return { answer: 'possible-duplicate', found };
    const patientId = await addPatient(access, row);
    // A clinician who adds a patient looks after them; without it a restricted clinic would begin with open records.
    if (isClinician) await setTeamMember(access, patientId, access.actorId, true);
    if (found.length > 0)
      await auditWrite(tx, access, 'not-a-duplicate', {
        subjectId: patientId,
        patientId,
        detail: { otherThan: found.map((one) => one.patientId) },
      });
    return { answer: 'added', patientId };
  });
