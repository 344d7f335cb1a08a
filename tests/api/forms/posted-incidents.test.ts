/** An incident without any script of its page: written down, corrected, closed and opened again by forms alone. */
import { afterEach, beforeEach, expect, it } from 'vitest';
import { incidentsOf } from '#data/clinic/incidents.ts';
import type { Store } from '#data/database/store.ts';
import { addPatient } from '#data/patients/people.ts';
import type { Runtime } from '#server/runtime.ts';
import { postForm, shownTo } from '#tests/api/forms/posted.ts';
import { accessOf, clinicNamed } from '#tests/support/clinic.ts';
import { account, type Browser, browser, testPassphrase, testRuntime } from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
let at: Runtime;
let from: Browser;
beforeEach(async () => {
  store = freshStore();
  await clinicNamed(store, 'a');
  at = testRuntime(store, { DEMO: '1' });
  await account(at, { email: 'c@test.invalid' });
  await account(at, { email: 'm@test.invalid', role: 'administrator' });
  from = browser('203.0.113.9');
});
afterEach(() => store.close());

const signIn = (email: string) => postForm(at, from, 'sign-in', { email, passphrase: testPassphrase });
const kept = () => incidentsOf(accessOf(store, 'a', 'reader'));
const pageOf = ({ location }: { readonly location: string | null }) => {
  const { pathname, search } = new URL(location!, 'http://x');
  return `${pathname}${search}`;
};

const words = { 'incident-when': '2026-03-01', 'incident-kind': 'near-miss' };
const nobody = { 'about.patientId': 'none' };

it('is kept about nobody with what was left out left empty, by an administrator too', async () => {
  await signIn('m@test.invalid');
  const fields = {
    ...nobody,
    ...words,
    'incident-when-time': '07:45',
    'incident-happened': 'A slip was lost.',
  };
  const sent = await postForm(at, from, 'incident', fields);
  expect(pageOf(sent)).toBe('/incidents');
  expect(await kept()).toMatchObject([
    { entry: { patientId: null, when: '2026-03-01T07:45', happened: 'A slip was lost.', told: null } },
  ]);
});

it('is refused without what happened, and what was typed comes back to the page of the same patient', async () => {
  await signIn('c@test.invalid');
  const patientId = await addPatient(accessOf(store, 'a', 'c'), {
    givenName: 'Ana',
    familyName: 'Reis',
    birthDay: '1960-05-04',
  } as never);
  const fields = { 'about.patientId': patientId, ...words, 'incident-told': 'Her daughter' };
  const refused = await postForm(at, from, 'incident', fields);
  expect(pageOf(refused)).toBe(`/incidents?patient=${patientId}`);
  const [shown] = await shownTo(at, from);
  expect(shown?.typed).toMatchObject({ when: '2026-03-01', told: 'Her daughter' });
  expect(shown?.problems).toMatchObject([{ field: 'incident-happened' }]);
  expect(await kept()).toEqual([]);
  await postForm(at, from, 'incident', { ...fields, 'incident-happened': 'She slipped.' });
  expect(await kept()).toMatchObject([{ entry: { patientId, told: 'Her daughter' } }]);
});

it('is corrected about the same patient, closed with a reason, and opened again', async () => {
  await signIn('c@test.invalid');
  await postForm(at, from, 'incident', { ...nobody, ...words, 'incident-happened': 'A slip was lost.' });
  const [{ id } = { id: '' }] = await kept();
  const corrected = await postForm(at, from, 'incident-correction', {
    'about.incidentId': id,
    'about.seen': '1',
    'about.patientId': 'same',
    'correct-when': '2026-03-01',
    'correct-kind': 'no-harm',
    'correct-happened': 'A slip was lost and found.',
  });
  expect(pageOf(corrected)).toBe('/incidents');
  const about = { 'about.incidentId': id };
  await postForm(at, from, 'incident-close', { ...about, [`close-${id}-reason`]: 'Slips are numbered.' });
  expect(await kept()).toMatchObject([
    { isOpen: false, entry: { kind: 'no-harm', version: 2 }, earlier: [{ kind: 'near-miss' }] },
  ]);
  await postForm(at, from, 'incident-reopen', { ...about, [`reopen-${id}-reason`]: 'Another is lost.' });
  expect(await kept()).toMatchObject([{ isOpen: true, changes: [{}, { reason: 'Another is lost.' }] }]);
});
