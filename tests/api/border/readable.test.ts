/** Every text that comes in can be kept as it was typed, or is refused: none is cut, none breaks the audit. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Problem } from '#api/errors.ts';
import { procedureLines } from '#api/procedures.ts';
import { flushReads } from '#data/audit/audit.ts';
import { verifyChain } from '#data/audit/verify-chain.ts';
import type { Store } from '#data/database/store.ts';
import { patientMessagesOf } from '#data/messages/patient-messages.ts';
import { phoneEntriesKey } from '#server/phone-entries.ts';
import type { Runtime } from '#server/runtime.ts';
import { asAdministrator, asClinician, asPatient, asPerson, asProgram } from '#tests/support/callers.ts';
import {
  accessOf,
  auditKey,
  morningEntry,
  type Setting,
  signedExercise,
  twoClinics,
} from '#tests/support/clinic.ts';
import { account, type Browser, browser, testPassphrase, testRuntime } from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';
import { encryptEntry } from '#ui/on-device/encrypt-entry.ts';
import { POST as signInPost } from '../../../src/app/api/auth/[...all]/route.ts';
import { POST as entriesPost } from '../../../src/app/api/entries/route.ts';

let store: Store;
let setting: Setting;
let at: Runtime;
beforeEach(async () => {
  store = freshStore();
  setting = await twoClinics(store);
  await signedExercise(setting.clinician, setting.patientId);
  at = testRuntime(store, { DEMO: '1' });
});
afterEach(() => store.close());

const patient = () => asPatient(accessOf(store, 'a', 'patient-user'), setting.patientId);

const problemOf = async (call: Promise<unknown>): Promise<Problem> => {
  const error = await call.then(
    () => null,
    (thrown: unknown) => thrown,
  );
  if (error === null) throw new Error('It was taken.');
  return error as Problem;
};

const cannotBeKept = ['\0', '\u0001', '\u0008', '\u000b', '\u000c', '\u000e', '\u001f', '\ud800', '\udfff'];

/** A message as a phone sends it. */
const written = (text: string) => ({
  kind: 'message' as const,
  entry: { entryId: '6f1c4f0e-2f65-4b7c-9a50-0d6f8f1f6d21', text },
});

describe('a text', () => {
  it.each(
    cannotBeKept.map((character) => [
      `U+${character.charCodeAt(0).toString(16).padStart(4, '0')}`,
      character,
    ]),
  )(
    'with %s in it is refused, with the field and what to do, and nothing of it is stored',
    async (_, character) => {
      const problem = await problemOf(
        patient().patient.entries.send(written(`my knee ${character} swelled`)),
      );
      expect(problem).toMatchObject({ problem: 'refused', refusals: [{ field: 'input.entry.text' }] });
      expect(problem.text).toMatchObject({
        en: expect.stringMatching(/Type the text/),
        de: expect.stringMatching(/Tippen/),
      });
      expect(await patientMessagesOf(setting.clinician, setting.patientId)).toEqual([]);
    },
  );

  it('with a tab, line ends, accents, other scripts or a whole emoji is read back as it was typed', async () => {
    const text = 'one\ttwo\nthree\r\nfour é ß Ж 膝 😀 \u0080\u009f\u007f end';
    await patient().patient.entries.send(written(text));
    const [message] = await patientMessagesOf(setting.clinician, setting.patientId);
    expect(message?.text).toBe(text);
  });

  it('is looked at by every procedure there is, before anything else is done with it', async () => {
    const callers = {
      clinician: asClinician(setting.clinician),
      administrator: asAdministrator(setting.clinician),
      reception: asPerson(setting.clinician, { role: 'reception' }),
      patient: patient(),
      program: asProgram(setting.clinician),
    };
    const looked: Record<string, string> = {};
    for (const { path, roles } of procedureLines()) {
      const role = roles[0] ?? 'clinician';
      const procedure = path
        .split('.')
        .reduce<unknown>((step, part) => (step as Record<string, unknown>)[part], callers[role]);
      const sent = { patientId: setting.patientId, deep: [{ typed: 'a\0b' }] };
      const problem = await problemOf((procedure as (value: unknown) => Promise<unknown>)(sent));
      looked[path] = problem.refusals?.[0]?.field ?? 'not looked at';
    }
    expect(Object.keys(looked).length).toBeGreaterThan(60);
    expect([...new Set(Object.values(looked))]).toEqual(['input.deep[0].typed']);
  });

  it('is looked at where it stands as a name, and that name is not repeated', async () => {
    const typed = { 'a\0b': 'x' };
    const sent = { patientId: setting.patientId, form: 'first-visit-reason' as const, typed };
    const problem = await problemOf(asClinician(setting.clinician).clinician.drafts.save(sent));
    expect(problem.refusals).toMatchObject([{ field: 'input.typed' }]);
  });

  it('is looked at however deep it is nested', async () => {
    let entry: unknown = 'a\0b';
    for (let depth = 0; depth < 100_000; depth += 1) entry = [entry];
    const problem = await problemOf(patient().patient.entries.send({ kind: 'morning', entry }));
    expect(problem.problem).toBe('refused');
    expect(problem.refusals[0]?.field).toMatch(/^input\.entry(\[0\]){20,80}$/);
  });
});

describe('an id', () => {
  it.each(['a b', 'a\0b', 'a/b', 'a:b', "a'b", 'é', 'a\nb', '\ud800'])(
    'is letters, figures, dot, line and underscore only: %j is refused',
    async (entryId) => {
      const entry = morningEntry({ entryId });
      const problem = await problemOf(patient().patient.entries.send({ kind: 'morning', entry }));
      expect(problem).toMatchObject({ problem: 'refused', refusals: [{ field: 'input.entry.entryId' }] });
    },
  );

  it.each([
    ['', 'refused'],
    ['a', 'stored'],
    ['A.b_c-9', 'stored'],
    ['x'.repeat(64), 'stored'],
    ['x'.repeat(65), 'refused'],
  ])('has 1 to 64 characters: %j is %s', async (entryId, outcome) => {
    const sent = patient().patient.entries.send({ kind: 'morning', entry: morningEntry({ entryId }) });
    const answer = await sent.then(
      ({ stored }) => stored,
      (error: Problem) => error.problem,
    );
    expect(answer).toBe(outcome);
  });
});

describe('an entry of a phone', () => {
  let phone: Browser;
  beforeEach(async () => {
    await account(at, { email: 'p@test.invalid', role: 'patient', patientId: setting.patientId });
    phone = browser('198.18.8.1');
    await phone.post(signInPost, '/api/auth/sign-in/email', {
      email: 'p@test.invalid',
      password: testPassphrase,
    });
  });

  const inTheClear = (entry: object) => ({ kind: 'morning', entry });
  const encrypted = async (entry: { readonly entryId: string }) => ({
    kind: 'morning',
    entryId: entry.entryId,
    sentAt: at.clock.now(),
    encrypted: await encryptEntry(phoneEntriesKey(at.keys, 'a'), setting.patientId, entry),
  });
  const send = async (body: unknown) => (await phone.post(entriesPost, '/api/entries', body)).status;

  it.each([
    ['in the clear', inTheClear],
    ['encrypted', encrypted],
  ])('whose id cannot be kept is refused %s, and the audit holds however often it comes', async (_, wrap) => {
    for (const entryId of ['x\0y', 'half \ud800']) {
      for (const fatigue of [1, 2]) {
        const entry = morningEntry({ entryId, fatigue, fatigueState: 'asked' });
        expect(await send(await wrap(entry))).toBe(400);
      }
    }
    const known = (fatigue: number) => morningEntry({ entryId: 'known', fatigue, fatigueState: 'asked' });
    expect([await send(await wrap(known(1))), await send(await wrap(known(2)))]).toEqual([200, 200]);
    await flushReads(store);
    expect(await verifyChain(store, auditKey, 'a')).toMatchObject({ ok: true });
    const conflicts = store.reader.client.prepare('SELECT entry_id AS entryId FROM entry_conflict').all();
    expect(conflicts).toEqual([{ entryId: 'known' }]);
  });
});

describe('signing in', () => {
  it.each(cannotBeKept)(
    'with a field that cannot be kept is refused before it is looked up (%j)',
    async (character) => {
      const fields = { email: `c${character}@test.invalid`, password: testPassphrase };
      const answer = await browser('198.18.8.2').post(signInPost, '/api/auth/sign-in/email', fields);
      expect(answer.status).toBe(400);
    },
  );
});
