/** Whose hours are shown before anybody signs in: those of the phone's clinic, or of the only one; never a guess. */
import { expect, it } from 'vitest';
import { clinicBeforeSignIn } from '#data/accounts/phones.ts';
import { createClinic } from '#data/patients/people.ts';
import { asClinician } from '#tests/support/callers.ts';
import { twoClinics } from '#tests/support/clinic.ts';
import { browser, testRuntime } from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';
import { POST } from '../../../src/app/api/auth/[...all]/route.ts';

it('an enrolled phone shows its own clinic’s hours; an unknown phone in a file of two clinics shows none', async () => {
  const store = freshStore();
  const { clinician, patientId } = await twoClinics(store);
  testRuntime(store);
  const phone = browser('192.0.2.77');
  const { code } = await asClinician(clinician).clinician.phones.invite({ patientId });
  await phone.post(POST, '/api/auth/phone/accept', { code });
  const cookie = /\.phone=([^;]+)/.exec(phone.headers().get('cookie') ?? '')?.[1] ?? null;
  expect((await clinicBeforeSignIn(store, cookie))?.id).toBe('a');
  expect(await clinicBeforeSignIn(store, null)).toBeNull();
  expect(await clinicBeforeSignIn(store, 'somebody.else')).toBeNull();
  store.close();
});

it('a file of one clinic shows that clinic’s hours to everybody', async () => {
  const store = freshStore();
  const hours = [{ days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri'], from: '09:00', to: '17:00' }] as const;
  const only = {
    id: 'only',
    name: 'Only',
    zone: 'Europe/Dublin',
    phone: '1',
    emergencyNumber: '112',
    urgentNumber: null,
  };
  await createClinic(store, { ...only, monitoringHours: hours }, 0);
  expect((await clinicBeforeSignIn(store, null))?.monitoringHours).toEqual(hours);
  store.close();
});
