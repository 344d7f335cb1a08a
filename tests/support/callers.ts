/** Procedures called as somebody, without a browser or a sign-in. */
import type { Person } from '#api/person.ts';
import { createCaller } from '#api/root.ts';
import type { ApiContext } from '#api/trpc.ts';
import type { Access } from '#data/access.ts';

const context = (access: Access, person: Person): ApiContext => ({ person, access, clockOffset: 0 });

export const asClinician = (access: Access) =>
  createCaller(
    context(access, {
      userId: access.actorId,
      name: access.actorName,
      email: 'c@test.invalid',
      clinicId: access.clinicId,
      role: 'clinician',
      patientId: null,
    }),
  );

export const asPatient = (access: Access, patientId: string) =>
  createCaller(
    context(access, {
      userId: access.actorId,
      name: access.actorName,
      email: 'p@test.invalid',
      clinicId: access.clinicId,
      role: 'patient',
      patientId,
    }),
  );

export const asAdministrator = (access: Access) =>
  createCaller(
    context(access, {
      userId: access.actorId,
      name: access.actorName,
      email: 'm@test.invalid',
      clinicId: access.clinicId,
      role: 'administrator',
      patientId: null,
    }),
  );

export const signedOut = () => createCaller({ person: null, access: null, clockOffset: 0 });
