/** What the server says of its work, and what it hands out as a file, holds nothing of a person once erased. */
import { afterAll, beforeAll, expect, it } from 'vitest';
import { incidentKinds } from '#core/clinic/incident.ts';
import type { Store } from '#data/database/store.ts';
import { erasePerson, leaveNoTrace } from '#data/erasure/erase-person.ts';
import { addPatient } from '#data/patients/people.ts';
import { accessOf, auditKey, clinicNamed } from '#tests/support/clinic.ts';
import {
  account,
  type Browser,
  browser,
  logLines,
  testPassphrase,
  testRuntime,
} from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';
import { GET as incidentFile } from '../../../src/app/(account)/incidents/file/route.ts';
import { POST as signInPost } from '../../../src/app/api/auth/[...all]/route.ts';
import { GET as trpcGet, POST as trpcPost } from '../../../src/app/api/trpc/[trpc]/route.ts';
import { GET as paper } from '../../../src/app/papers/[kind]/route.ts';

let store: Store;
let desk: Browser;
let patientId: string;
const access = () => ({ ...accessOf(store, 'a', 'clinician-a'), auditKey });
/** Words of which each is found nowhere else. */
const words = { given: 'Zephyrine', family: 'Quillfeather', written: 'Walks with her daughter Quirina' };
const about = new RegExp(Object.values(words).join('|'), 'i');

beforeAll(async () => {
  store = freshStore();
  await clinicNamed(store, 'a');
  const at = testRuntime(store, { DEMO: '1' });
  await account(at, { email: 'c@test.invalid' });
  desk = browser('198.18.44.1');
  await desk.post(signInPost, '/api/auth/sign-in/email', {
    email: 'c@test.invalid',
    password: testPassphrase,
  });
  const person = { givenName: words.given, familyName: words.family, birthDay: '1958-06-01', phone: null };
  patientId = await addPatient(access(), person);
});
afterAll(() => store.close());

const ask = async (path: string, input?: object): Promise<string> => {
  const query = input ? encodeURIComponent(JSON.stringify(input)) : '';
  const address = `http://127.0.0.1:3000/api/trpc/${path}${query && `?input=${query}`}`;
  return (await trpcGet(new Request(address, { headers: desk.headers() }))).text();
};
const post = (path: string, input: object) => desk.post(trpcPost, `/api/trpc/${path}`, input);

const incident = {
  ...{ when: '2026-03-02', kind: incidentKinds[0], happened: words.written },
  ...{ doneAtOnce: words.written, wouldPrevent: words.written, told: words.written },
};

/** Everything the clinic can be handed as a file or a page that lists people. */
const handedOut = async (): Promise<Readonly<Record<string, string>>> => {
  const headers = desk.headers();
  const file = await incidentFile(new Request('http://127.0.0.1:3000/incidents/file', { headers }));
  const plan = await paper(
    new Request(`http://127.0.0.1:3000/papers/record?patient=${patientId}`, { headers }),
    { params: Promise.resolve({ kind: 'record' }) },
  );
  return {
    incidents: await file.text(),
    record: Buffer.from(await plan.arrayBuffer()).toString('latin1'),
    recordFile: JSON.stringify(
      await post('clinician.recordFile.make', { patientId, handedTo: 'The patient' }),
    ),
    messages: await ask('clinician.messages.list', { patientId }),
    people: await ask('clinician.people.list'),
    review: await ask('clinician.review.get', { patientId, from: '2026-02-01', to: '2026-03-01' }),
  };
};

it('is found in no file handed out and no line of the log, of before the erasing or after', async () => {
  const { status } = await post('clinician.incidents.record', { incident, patientId });
  expect(status).toBe(200);
  const before = await handedOut();
  // What this guards against is there to be found.
  expect(Object.keys(before).filter((name) => about.test(before[name]!))).toEqual(
    expect.arrayContaining(['incidents', 'record', 'people']),
  );
  await erasePerson(access(), [patientId], 'asked');
  leaveNoTrace(store);
  const after = await handedOut();
  expect(Object.keys(after).filter((name) => about.test(after[name]!))).toEqual([]);
  expect(after.incidents).toContain('(erased)');
  expect(logLines.length).toBeGreaterThan(10);
  expect(logLines.filter((line) => about.test(line))).toEqual([]);
});
