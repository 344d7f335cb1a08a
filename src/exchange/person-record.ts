/** All that an export of one person is made from, read once. */
import type { Access } from '#data/access.ts';
import { type Clinic, clinicOf, type Patient, patientOf } from '#data/patients/people.ts';
import { type AuditedRow, auditedOf, type SignsIn, signInsOf } from '#data/patients/record-people.ts';
import { type RecordRows, recordTablesOf } from '#data/patients/record-tables.ts';

export interface PersonRecord {
  readonly clinic: Clinic;
  readonly patient: Patient;
  readonly rows: RecordRows;
  readonly signIns: ReadonlyMap<string, SignsIn>;
  readonly audited: readonly AuditedRow[];
  /** Epoch milliseconds. */
  readonly madeAt: number;
}

/** null when the person is not of this clinic. */
export const personRecordOf = async (access: Access, patientId: string): Promise<PersonRecord | null> => {
  const clinic = await clinicOf(access.store, access.clinicId);
  const patient = await patientOf(access, patientId);
  if (!clinic || !patient) return null;
  return {
    clinic,
    patient,
    rows: await recordTablesOf(access, patientId),
    signIns: new Map((await signInsOf(access)).map((one) => [one.id, one])),
    audited: await auditedOf(access, patientId),
    madeAt: access.now,
  };
};
