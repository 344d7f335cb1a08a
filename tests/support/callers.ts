/** Procedures called as somebody, without a browser or a sign-in. */

import type { ApiContext } from '#api/context.ts';
import type { Person } from '#api/person.ts';
import { createCaller } from '#api/root.ts';
import { type TokenScope, tokenScopes } from '#core/clinic/token-scopes.ts';
import type { Access } from '#data/access.ts';

/** Signed in a moment ago, fully set up. */
const settled = () =>
  ({ administers: false, sessionId: 'session', provedAt: Date.now(), setUp: 'done' }) as const;

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
      ...settled(),
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
      ...settled(),
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
      ...settled(),
      administers: true,
    }),
  );

/** As whoever the access names, with what differs from a clinician who signed in a moment ago. */
export const asPerson = (access: Access, person: Partial<Person>) =>
  createCaller(
    context(access, {
      userId: access.actorId,
      name: access.actorName,
      email: 's@test.invalid',
      clinicId: access.clinicId,
      role: 'clinician',
      patientId: null,
      ...settled(),
      ...person,
    }),
  );

/** As a program with a token that names what it may read. */
export const asProgram = (access: Access, scopes: readonly TokenScope[] = tokenScopes) =>
  createCaller({
    person: null,
    access,
    clockOffset: 0,
    token: { id: access.actorId, clinicId: access.clinicId, name: 'Program', scopes, expiresAt: Infinity },
  });

export const signedOut = () => createCaller({ person: null, access: null, clockOffset: 0 });
