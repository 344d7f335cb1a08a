/** Marked values in every field of every procedure: none of them may reach a log line or an error answer. */
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { procedureLines } from '#api/procedures.ts';
import type { Store } from '#data/database/store.ts';
import { type Setting, signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { markedNumber, markedText, type Planting, planted } from '#tests/support/planted.ts';
import {
  account,
  type Browser,
  browser,
  logLines,
  testOrigin,
  testPassphrase,
  testRuntime,
} from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';
import { POST as signInPost } from '../../src/app/api/auth/[...all]/route.ts';
import { POST as entriesPost } from '../../src/app/api/entries/route.ts';
import { GET as trpcGet, POST as trpcPost } from '../../src/app/api/trpc/[trpc]/route.ts';

const isMarked = (text: string): boolean =>
  text.includes(markedText) ||
  text.toLowerCase().includes(markedText.toLowerCase()) ||
  text.includes(String(markedNumber));

let store: Store;
let setting: Setting;
const people = new Map<string, Browser>();

const signedIn = async (email: string, network: string): Promise<Browser> => {
  const from = browser(network);
  await from.post(signInPost, '/api/auth/sign-in/email', { email, password: testPassphrase });
  return from;
};

beforeAll(async () => {
  store = freshStore();
  setting = await twoClinics(store);
  await signedExercise(setting.clinician, setting.patientId);
  const at = testRuntime(store, { DEMO: '1' });
  await account(at, { email: 'c@test.invalid', name: markedText });
  await account(at, { email: 'm@test.invalid', role: 'administrator' });
  await account(at, { email: 'p@test.invalid', role: 'patient', patientId: setting.patientId });
  people.set('clinician', await signedIn('c@test.invalid', '198.18.1.1'));
  people.set('administrator', await signedIn('m@test.invalid', '198.18.1.2'));
  people.set('patient', await signedIn('p@test.invalid', '198.18.1.3'));
});
afterAll(() => store.close());

const ask = async (from: Browser, path: string, kind: string, input: unknown) => {
  if (kind === 'mutation') {
    const { status, json } = await from.post(trpcPost, `/api/trpc/${path}`, input);
    return { status, text: JSON.stringify(json) };
  }
  const query = encodeURIComponent(JSON.stringify(input));
  const request = new Request(`${testOrigin}/api/trpc/${path}?input=${query}`, { headers: from.headers() });
  const response = await trpcGet(request);
  return { status: response.status, text: await response.text() };
};

/** These end the session that asks; they are asked by nobody else here. */
const ending = new Set(['account.endEverywhere', 'account.changePassphrase']);
const lines = procedureLines().filter((line) => !ending.has(line.path));

const plantedBy = (role: string, path: string, how: Planting) =>
  planted(
    path,
    how,
    path.startsWith('clinician.') && role !== 'patient' ? { patientId: setting.patientId } : {},
  );

describe('what people type stays out of logs and error answers', () => {
  it.each(lines)('$path, whoever asks and whatever is typed', async ({ path, kind }) => {
    for (const [role, from] of people) {
      for (const how of ['taken', 'refused'] as const) {
        const { status, text } = await ask(from, path, kind, plantedBy(role, path, how));
        if (status >= 400) expect([role, how, text, isMarked(text)]).toEqual([role, how, text, false]);
        expect([role, how, status < 500]).toEqual([role, how, true]);
      }
    }
    expect(logLines.filter(isMarked)).toEqual([]);
  });

  it('some of the marked values were taken and are in the file, so that the test sees what it claims', () => {
    const rows = JSON.stringify([
      store.reader.client.prepare('SELECT text FROM message').all(),
      store.reader.client.prepare('SELECT given_name FROM patient_identity').all(),
      store.reader.client.prepare('SELECT diagnosis FROM care_profile').all(),
    ]);
    expect(rows.split(markedText).length).toBeGreaterThan(3);
    expect(logLines.length).toBeGreaterThan(lines.length * 4);
  });

  it('entries from a phone: refused or unreadable, nothing of them is answered or logged', async () => {
    for (const body of [
      { kind: markedText, entry: markedText },
      { kind: 'session', entry: { [markedText]: markedNumber } },
      markedText,
    ]) {
      const { status, json } = await people.get('patient')!.post(entriesPost, '/api/entries', body);
      expect(status).toBe(400);
      expect(isMarked(JSON.stringify(json))).toBe(false);
    }
    expect(logLines.filter(isMarked)).toEqual([]);
  });

  it('wrong addresses, passphrases, codes and PINs are neither answered nor logged', async () => {
    const from = browser('198.18.1.9');
    const bodies = [
      ['sign-in/email', { email: `${markedText}@test.invalid`, password: markedText }],
      ['phone/accept', { code: `${markedText}0` }],
      ['phone/sign-in', { pin: markedText }],
      ['two-factor/verify-totp', { code: markedText }],
      [markedText, { [markedText]: markedText }],
    ] as const;
    for (const [path, body] of bodies) {
      const { status, json } = await from.post(signInPost, `/api/auth/${path}`, body);
      expect([path, status >= 400, isMarked(JSON.stringify(json))]).toEqual([path, true, false]);
    }
    expect(logLines.filter(isMarked)).toEqual([]);
  });

  it('a fault of ours answers without its words and is logged by kind and place only', async () => {
    store.writer.client.exec('ALTER TABLE message RENAME TO message_away');
    const { status, text } = await ask(people.get('clinician')!, 'clinician.review.write', 'mutation', {
      patientId: setting.patientId,
      text: `${markedText} in a message`,
    });
    store.writer.client.exec('ALTER TABLE message_away RENAME TO message');
    expect(status).toBe(500);
    expect(text).toContain('Something went wrong on our side');
    expect(text).not.toMatch(/message_away|no such table|insert|sqlite|node_modules|\.ts/i);
    const faults = logLines.filter((line) => line.includes('"fault"'));
    expect(faults).toHaveLength(1);
    expect(faults[0]).toMatch(/"kind":"\w+"/);
    expect(faults[0]).toContain('"requestId"');
    expect(faults[0]).not.toMatch(/insert into|values \(/i);
    expect(logLines.filter(isMarked)).toEqual([]);
  });
});
