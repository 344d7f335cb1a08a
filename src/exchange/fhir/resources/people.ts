/** Who the record is about, who wrote in it, and the clinic. */
import type { ContactPoint, Organization, Patient, Practitioner } from 'fhir/r4';
import { detailInForce, type PatientDetail } from '#core/record/patient-details.ts';
import type { Clinic } from '#data/patients/people.ts';
import type { SignsIn } from '#data/patients/record-people.ts';
import type { PersonRecord } from '../../person-record.ts';
import { clinicRef, idOf } from './parts.ts';

const telecom = (...points: readonly (readonly ['phone' | 'email', string | null | undefined])[]) => {
  const known = points.flatMap(([system, value]): ContactPoint[] => (value ? [{ system, value }] : []));
  return known.length > 0 ? { telecom: known } : {};
};

export const organizationOf = ({ id, name, phone }: Clinic): Organization => ({
  resourceType: 'Organization',
  id: idOf(id),
  name,
  ...telecom(['phone', phone]),
});

export const practitionerOf = ({ id, name }: SignsIn): Practitioner => ({
  resourceType: 'Practitioner',
  id: idOf(id),
  name: [{ text: name }],
});

const detailOf = ({ rows }: PersonRecord, detail: PatientDetail): string | null =>
  detailInForce(rows.patient_detail.filter((row) => row.detail === detail))?.value ?? null;

/**
 * Gender is written as not known, for readers that need the element: what the clinic keeps is which coefficients of
 * a formula hold, and that is not what is asked for there.
 */
export const patientResource = (record: PersonRecord): Patient => {
  const { patient } = record;
  const of = (detail: PatientDetail) => detailOf(record, detail);
  const [address, practice] = [of('address'), of('generalPractitioner')];
  const [name, phone, relation] = [of('emergencyName'), of('emergencyPhone'), of('emergencyRelation')];
  return {
    resourceType: 'Patient',
    id: idOf(patient.id),
    ...(patient.patientNumber
      ? { identifier: [{ value: patient.patientNumber, assigner: clinicRef(record) }] }
      : {}),
    name: [{ family: patient.familyName, given: [patient.givenName] }],
    ...telecom(['phone', patient.phone], ['email', of('email')]),
    gender: 'unknown',
    birthDate: patient.birthDay,
    ...(address ? { address: [{ text: address }] } : {}),
    ...(name || phone || relation
      ? {
          contact: [
            {
              ...(relation ? { relationship: [{ text: relation }] } : {}),
              ...(name ? { name: { text: name } } : {}),
              ...telecom(['phone', phone]),
            },
          ],
        }
      : {}),
    ...(practice ? { generalPractitioner: [{ display: practice }] } : {}),
    managingOrganization: clinicRef(record),
  };
};
