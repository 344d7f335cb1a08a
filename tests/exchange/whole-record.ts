/** A record with something in every table that an export reads, so that each kind of resource is made. */
import type { PersonRecord } from '#exchange/person-record.ts';
import { around } from './rows/around.ts';
import { at, by } from './rows/begin.ts';
import { care } from './rows/care.ts';
import { imported } from './rows/imported.ts';
import { measured } from './rows/measured.ts';
import { work } from './rows/work.ts';

export const wholeRecord = (): PersonRecord => {
  const filled = { ...care, ...measured, ...work, ...around, ...imported };
  const rows = new Proxy(filled, { get: (tables, name) => Reflect.get(tables, name) ?? [] });
  return {
    clinic: {
      ...{ id: 'clinic-1', name: 'Clinic', zone: 'Europe/Lisbon', phone: '210 000 000' },
      ...{ emergencyNumber: '112', urgentNumber: null, monitoringHours: [] },
    },
    patient: {
      ...{ id: 'patient-1', givenName: 'Test', familyName: 'Person', birthDay: '1958-06-01', phone: '1' },
      ...{ patientNumber: 'A-7', profile: null },
    },
    rows: rows as unknown as PersonRecord['rows'],
    signIns: new Map([
      [by, { id: by, name: 'Ada Quill', role: 'clinician' as const, patientId: null }],
      [
        'sign-in-of-patient',
        { id: 'sign-in-of-patient', name: 'Test Person', role: 'patient' as const, patientId: 'patient-1' },
      ],
    ]),
    audited: [
      { sequence: 1, at, actorId: by, act: 'write', subject: 'screening' },
      { sequence: 2, at, actorId: 'export', act: 'read', subject: 'export.fhir' },
    ],
    madeAt: at,
  };
};
