/** A letter without any script of its pages: begun, summed up, signed and voided by forms alone. */
import { afterEach, beforeEach, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { letterOf, lettersOf } from '#data/episode/letters.ts';
import { addPatient } from '#data/patients/people.ts';
import type { Runtime } from '#server/runtime.ts';
import { postForm, shownTo } from '#tests/api/forms/posted.ts';
import { asClinician } from '#tests/support/callers.ts';
import { accessOf, clinicNamed } from '#tests/support/clinic.ts';
import { account, browser, testPassphrase, testRuntime } from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
let at: Runtime;
let patientId: string;
let clinicianId: string;
beforeEach(async () => {
  store = freshStore();
  await clinicNamed(store, 'a');
  at = testRuntime(store, { DEMO: '1' });
  clinicianId = await account(at, { email: 'c@test.invalid' });
  patientId = await addPatient(accessOf(store, 'a', clinicianId), {
    givenName: 'Ana',
    familyName: 'Reis',
    birthDay: '1960-05-04',
  } as never);
});
afterEach(() => store.close());

const access = () => accessOf(store, 'a', clinicianId);

it('is begun, refused with what was typed kept, written, signed as it was read, and voided', async () => {
  const from = browser('203.0.113.7');
  await postForm(at, from, 'sign-in', { email: 'c@test.invalid', passphrase: testPassphrase });
  const about = { 'about.patientId': patientId };
  const to = {
    'letter-name': 'Dr Ada Verrin',
    'letter-toPatient': 'no',
    'letter-language': 'de',
    'letter-organisation': 'Hill Practice',
  };
  const page = `/patients/${patientId}/care/letters`;
  const refused = await postForm(at, from, 'letter', {
    ...about,
    'about.notes': 'none',
    ...to,
    'letter-name': '',
  });
  expect(new URL(refused.location!, 'http://x').pathname).toBe(page);
  expect((await shownTo(at, from))[0]?.typed).toMatchObject({ organisation: 'Hill Practice' });

  const begun = await postForm(at, from, 'letter', { ...about, 'about.notes': 'none', ...to });
  const [letter] = await lettersOf(access(), patientId);
  const letterId = letter!.letterId;
  expect(new URL(begun.location!, 'http://x').pathname).toBe(`${page}/${letterId}`);

  const seen = (version: number) => ({ ...about, 'about.letterId': letterId, 'about.seen': String(version) });
  await postForm(at, from, 'letter-summary', { ...seen(1), 'summary-now': 'Geht wieder zum Markt.' });
  const { letters } = asClinician(access()).clinician;
  const { digest } = await letters.get({ patientId, letterId });
  const signing = { ...seen(2), 'about.digest': digest, 'sign-role': 'Physiotherapeutin' };
  await postForm(at, from, 'letter-sign', signing);
  // Nobody has agreed to sharing: that is asked about first.
  expect((await letterOf(access(), patientId, letterId))?.signature).toBeNull();
  expect((await shownTo(at, from)).at(-1)?.questions.join()).toMatch(/has not agreed/);
  await postForm(at, from, 'letter-sign', { ...signing, 'is.confirmed': 'yes' });
  const signed = await letterOf(access(), patientId, letterId);
  expect(signed?.signature).toMatchObject({ role: 'Physiotherapeutin', registration: null });
  expect(JSON.stringify(signed?.signature?.words)).toContain('Geht wieder zum Markt. *');

  await postForm(at, from, 'letter-void', {
    ...about,
    'about.letterId': letterId,
    'void-reason': 'Falsche Praxis.',
  });
  expect((await letterOf(access(), patientId, letterId))?.voided?.reason).toBe('Falsche Praxis.');
});
