/** The sign-ins of the demo stand in the repository for everybody to read: outside the demo they open nothing. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { readEnvironment } from '#commands/environment.mjs';
import type { Store } from '#data/database/store.ts';
import { makeFeed } from '#data/exchange/calendar-feeds.ts';
import { addPatient } from '#data/patients/people.ts';
import { demoClinic, otherClinic } from '#demo/clinic.ts';
import { calendarFeedHandler } from '#server/http/calendar-feed-handler.ts';
import { openRuntime, type Runtime } from '#server/runtime.ts';
import { personOf } from '#server/sign-in/person.ts';
import { accessOf, clinicNamed } from '#tests/support/clinic.ts';
import { account, browser, testOrigin, testPassphrase } from '#tests/support/server.ts';
import { freshFile } from '#tests/support/store.ts';
import { POST as signInPost } from '../../../src/app/api/auth/[...all]/route.ts';

let file: string;
let store: Store | null = null;
let networks = 0;
const start = (env: Record<string, string>): Runtime => {
  store?.close();
  const at = openRuntime(readEnvironment({ DATABASE_FILE: file, PUBLIC_ORIGIN: testOrigin, ...env }));
  (globalThis as { loadgateRuntime?: Runtime }).loadgateRuntime = at;
  store = at.store;
  return at;
};
const signIn = async (email: string) => {
  networks += 1;
  const desk = browser(`198.18.12.${networks}`);
  const { status } = await desk.post(signInPost, '/api/auth/sign-in/email', {
    email,
    password: testPassphrase,
  });
  return { desk, status };
};

beforeEach(async () => {
  file = freshFile();
  const at = start({ DEMO: '1' });
  for (const clinicId of [demoClinic.id, otherClinic.id, 'own']) {
    await clinicNamed(at.store, clinicId);
    await account(at, { email: `c@${clinicId}.invalid`, clinicId });
  }
});
afterEach(() => {
  store?.close();
  store = null;
});

describe('a file that holds the demo clinic beside a clinic of its own', () => {
  it('lets everybody sign in with DEMO=1', async () => {
    for (const clinicId of [demoClinic.id, otherClinic.id, 'own']) {
      expect((await signIn(`c@${clinicId}.invalid`)).status).toBe(200);
    }
  });

  it('without it opens nothing to people of the invented clinics, and everything to the others', async () => {
    const { desk } = await signIn(`c@${demoClinic.id}.invalid`);
    const at = start({});
    expect(await personOf(at, desk.headers())).toBeNull();
    for (const clinicId of [demoClinic.id, otherClinic.id]) {
      const tried = await signIn(`c@${clinicId}.invalid`);
      expect(tried.status).not.toBe(200);
      expect(await personOf(at, tried.desk.headers())).toBeNull();
    }
    const own = await signIn('c@own.invalid');
    expect(own.status).toBe(200);
    expect(await personOf(at, own.desk.headers())).toMatchObject({ clinicId: 'own' });
  });

  it('without it answers no calendar address of the invented clinics, and those of the others', async () => {
    const person = { givenName: 'Test', familyName: 'Person', birthDay: '1958-06-01', phone: null };
    const made = async (clinicId: string) => {
      const access = accessOf(store!, clinicId, 'patient-user');
      return `${await makeFeed(access, await addPatient(access, person), 'en')}.ics`;
    };
    const addresses = [await made(demoClinic.id), await made(otherClinic.id), await made('own')];
    const answered = (at: Runtime) =>
      Promise.all(
        addresses.map(async (address) => {
          const headers = { 'x-forwarded-for': '198.18.13.1' };
          return (await calendarFeedHandler(at, new Request(`${testOrigin}/calendar`, { headers }), address))
            .status;
        }),
      );
    expect(await answered(start({ DEMO: '1' }))).toEqual([200, 200, 200]);
    expect(await answered(start({}))).toEqual([404, 404, 200]);
  });
});
