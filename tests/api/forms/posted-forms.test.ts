/** Forms that the browser sends itself: the same door, the same procedure, and nothing typed is lost. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { flushReads } from '#data/audit/audit.ts';
import type { Store } from '#data/database/store.ts';
import { addPatient } from '#data/patients/people.ts';
import { keptAnswers } from '#server/http/forms/kept-answers.ts';
import type { Runtime } from '#server/runtime.ts';
import { postForm, shownTo } from '#tests/api/forms/posted.ts';
import { accessOf, clinicNamed } from '#tests/support/clinic.ts';
import {
  account,
  type Browser,
  browser,
  testOrigin,
  testPassphrase,
  testRuntime,
} from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
let at: Runtime;
let patientId: string;
let networks = 0;
const newBrowser = () => {
  networks += 1;
  return browser(`203.0.113.${networks}`);
};

beforeEach(async () => {
  store = freshStore();
  await clinicNamed(store, 'a');
  await clinicNamed(store, 'b');
  at = testRuntime(store, { DEMO: '1' });
  const clinician = await account(at, { email: 'c@test.invalid' });
  await account(at, { email: 'other@test.invalid', clinicId: 'b' });
  patientId = await addPatient(accessOf(store, 'a', clinician), {
    givenName: 'Ana',
    familyName: 'Reis',
    birthDay: '1960-05-04',
  } as never);
});
afterEach(() => store.close());

const signIn = (from: Browser, email = 'c@test.invalid', passphrase = testPassphrase) =>
  postForm(at, from, 'sign-in', { email, passphrase });

const signedIn = async (email?: string): Promise<Browser> => {
  const from = newBrowser();
  await signIn(from, email);
  return from;
};

const weight = (fields: Readonly<Record<string, string>>) => ({
  'about.patientId': patientId,
  'about.kind': 'body-mass',
  ...fields,
});

const unsaid = { needsProof: false, done: null, step: null } as const;

const rows = (sql: string) => store.reader.client.prepare(sql).all() as readonly Record<string, unknown>[];

describe('what is let in', () => {
  it.each([
    ['another site', { origin: 'https://elsewhere.invalid' }, 403],
    ['a page that hides its origin', { origin: 'null' }, 403],
    ['a sub-domain', { 'sec-fetch-site': 'same-site' }, 403],
    ['another kind of body', { 'content-type': 'application/json' }, 415],
    ['a form with files', { 'content-type': 'multipart/form-data; boundary=x' }, 415],
  ])('is never %s', async (_, headers, status) => {
    const from = newBrowser();
    const fields = { email: 'c@test.invalid', passphrase: testPassphrase };
    expect((await postForm(at, from, 'sign-in', fields, headers)).status).toBe(status);
    expect(from.cookies.size).toBe(0);
  });

  it('is nobody who is not signed in, but for a sign-in: nothing of it is read or kept', async () => {
    const from = newBrowser();
    const posted = await postForm(at, from, 'measurement', weight({ 'body-mass-massKg': '71' }));
    expect(posted.status).toBe(401);
    expect(await shownTo(at, from)).toEqual([]);
    expect((await postForm(at, newBrowser(), 'staff', { email: '@'.repeat(5000) })).status).toBe(401);
  });

  it('is no field of more than 5,000 characters: 4,999, 5,000 and 5,001', async () => {
    const statuses = [4999, 5000, 5001].map(async (length) => {
      const fields = { email: 'x'.repeat(length), passphrase: testPassphrase };
      return (await postForm(at, newBrowser(), 'sign-in', fields)).status;
    });
    expect(await Promise.all(statuses)).toEqual([303, 303, 413]);
  });

  it('pushes out nothing that a clinician typed, however many come from outside', async () => {
    const clinician = await signedIn();
    await postForm(at, clinician, 'measurement', weight({ 'body-mass-massKg': '3' }));
    const keeper = keptAnswers(at.store);
    const answer = { form: 'pin', about: {}, typed: {}, problems: [], questions: [], ...unsaid };
    for (let count = 0; count < 2500; count++) keeper.keep(null, null, answer, Date.now());
    expect((await shownTo(at, clinician))[0]?.typed).toMatchObject({ massKg: '3' });
  });

  it('of one browser keeps no more than a page can carry; what is longer is refused without its text', () => {
    const keeper = keptAnswers(at.store);
    const long = { ...unsaid, form: 'note', about: {}, problems: [], questions: [] };
    const kept = (length: number) => {
      const mark = keeper.keep(null, 'session', { ...long, typed: { text: 'x'.repeat(length) } }, 1);
      return keeper.take(mark, 'session', 2)[0]?.typed.text?.length;
    };
    expect([kept(20_000), kept(70_000)]).toEqual([20_000, undefined]);
  });

  it('is no form that nobody wrote, and no more than one form can hold', async () => {
    expect((await postForm(at, newBrowser(), 'constructor', {})).status).toBe(404);
    const email = 'x'.repeat(256 * 1024);
    expect((await postForm(at, newBrowser(), 'sign-in', { email })).status).toBe(413);
    const many = { email: Array.from({ length: 1001 }, () => '') };
    expect((await postForm(at, newBrowser(), 'sign-in', many)).status).toBe(413);
  });

  it.each(['../x', '//elsewhere.invalid', 'a/b', '', 'a'.repeat(2002)])(
    'is never about "%s", which would become part of an address',
    async (wrong) => {
      const from = await signedIn();
      const sent = { ...weight({}), 'about.patientId': wrong };
      expect((await postForm(at, from, 'measurement', sent)).status).toBe(400);
    },
  );
});

describe('signing in', () => {
  it('opens the same sign-in as the page does, and leads to the first page', async () => {
    const from = newBrowser();
    const answer = await signIn(from);
    expect(answer).toMatchObject({ status: 303, location: `${testOrigin}/?signed-in` });
    expect([...from.cookies.keys()]).toContain('loadgate.session_token');
    await flushReads(store);
    expect(rows("SELECT subject FROM audit WHERE act = 'sign-in'").length).toBeGreaterThan(0);
  });

  it('keeps the address typed and never the passphrase, and says what is wrong', async () => {
    const from = newBrowser();
    const answer = await signIn(from, 'c@test.invalid', 'not the passphrase');
    expect(answer).toMatchObject({ status: 303, location: `${testOrigin}/sign-in?with=passphrase#posted` });
    const [shown] = await shownTo(at, from);
    expect(shown?.typed).toEqual({ email: 'c@test.invalid' });
    expect(JSON.stringify(shown)).not.toContain('not the passphrase');
    expect(shown?.problems.map(({ field }) => field)).toEqual(['passphrase']);
  });

  it('says all that is missing at once, and tries nothing', async () => {
    const from = newBrowser();
    await signIn(from, ' ', '');
    const [shown] = await shownTo(at, from);
    expect(shown?.problems.map(({ field }) => field)).toEqual(['email', 'passphrase']);
  });

  it('is held back after too many tries as on the page', async () => {
    const from = newBrowser();
    for (let tries = 0; tries < 12; tries += 1) await signIn(from, 'c@test.invalid', 'wrong');
    await signIn(from);
    const [shown] = await shownTo(at, from);
    expect(JSON.stringify(shown?.problems)).toMatch(/Wait|second/);
    expect(from.cookies.has('loadgate.session_token')).toBe(false);
  });
});

describe('a form of the clinic', () => {
  it('plans a measure to be taken again, and stops it', async () => {
    const from = await signedIn();
    const dueOn = new Date(Date.now() + 10 * 86_400_000).toISOString().slice(0, 10);
    const about = { 'about.patientId': patientId };
    const plan = { 'retest-new-measure': 'grip', 'retest-new-dueOn': dueOn, 'retest-new-everyDays': '' };
    await postForm(at, from, 'retest-plan', { ...about, 'about.of': 'new', ...plan });
    await postForm(at, from, 'retest-stop', {
      ...about,
      'about.of': 'grip',
      'retest-stop-grip-reason': 'Moved away',
    });
    expect(rows('SELECT measure, due_on, every_days, reason FROM retest_plan ORDER BY version')).toEqual([
      { measure: 'grip', due_on: dueOn, every_days: null, reason: null },
      { measure: 'grip', due_on: null, every_days: null, reason: 'Moved away' },
    ]);
  });

  it('is taken by the same procedure, kept once and said once', async () => {
    const from = await signedIn();
    const answer = await postForm(
      at,
      from,
      'measurement',
      weight({ 'body-mass-day': '2026-03-02', 'body-mass-massKg': '70' }),
      { referer: `${testOrigin}/patients/${patientId}/measurements?all=1` },
    );
    expect(answer.location).toBe(`${testOrigin}/patients/${patientId}/measurements?all=1#posted`);
    expect(await shownTo(at, from)).toMatchObject([{ done: 'Recorded.', problems: [], typed: {} }]);
    expect(await shownTo(at, from)).toEqual([]);
    expect(rows('SELECT id FROM measurement')).toHaveLength(1);
  });

  it('leads back to its own page whatever the request says it came from', async () => {
    const from = await signedIn();
    for (const referer of [
      'https://elsewhere.invalid/patients',
      `${testOrigin}//elsewhere.invalid?x=1`,
      'x',
    ]) {
      const answer = await postForm(at, from, 'measurement', weight({}), { referer });
      expect(answer.location).toBe(`${testOrigin}/patients/${patientId}/measurements#posted`);
    }
  });

  it('names all that is wrong at once by label and bound, and keeps what was typed', async () => {
    const from = await signedIn();
    const typed = { 'body-mass-day': '', 'body-mass-massKg': 'heavy' };
    await postForm(at, from, 'measurement', weight(typed));
    const [shown] = await shownTo(at, from);
    expect(shown?.typed).toMatchObject({ massKg: 'heavy' });
    expect(shown?.problems.length).toBe(2);
    expect(JSON.stringify(shown?.problems)).not.toMatch(/massKg is/);
    expect(rows('SELECT id FROM measurement')).toEqual([]);
  });

  it('is shown again to the same sign-in alone', async () => {
    const from = await signedIn();
    await postForm(at, from, 'measurement', weight({ 'body-mass-massKg': 'heavy' }));
    const other = await signedIn('other@test.invalid');
    other.cookies.set('loadgate.form', from.cookies.get('loadgate.form')!);
    expect(await shownTo(at, other)).toEqual([]);
    expect(await shownTo(at, from)).toHaveLength(1);
  });

  it('leaves nothing waiting once it was taken and led to another page', async () => {
    const from = await signedIn();
    const person = { 'new-givenName': 'Isolde', 'new-familyName': 'Venneby', 'about.desk': 'clinician' };
    await postForm(at, from, 'new-patient', person);
    const [shown] = await shownTo(at, from);
    expect(shown?.typed).toMatchObject({ givenName: 'Isolde' });
    const born = { 'new-birthDay-day': '4', 'new-birthDay-month': '5', 'new-birthDay-year': '1961' };
    const added = await postForm(at, from, 'new-patient', { ...person, ...born });
    expect(added.location).toMatch(new RegExp(`^${testOrigin}/patients/[a-z0-9-]+$`));
    expect(await shownTo(at, from)).toEqual([]);
  });

  it('asks about somebody who looks the same before a second record is made', async () => {
    const from = await signedIn();
    const same = {
      'about.desk': 'clinician',
      'new-givenName': 'Ana',
      'new-familyName': 'Reis',
      'new-birthDay-day': '4',
      'new-birthDay-month': '5',
      'new-birthDay-year': '1960',
    };
    await postForm(at, from, 'new-patient', same);
    expect((await shownTo(at, from))[0]?.questions[0]).toContain('Ana Reis');
    const added = await postForm(at, from, 'new-patient', { ...same, 'is.confirmed': 'yes' });
    expect(added.location).toMatch(/\/patients\/[a-z0-9-]+$/);
  });

  it('refuses somebody of another clinic as the page does', async () => {
    const from = await signedIn('other@test.invalid');
    const typed = { 'body-mass-day': '2026-03-02', 'body-mass-massKg': '70' };
    await postForm(at, from, 'measurement', weight(typed));
    const [shown] = await shownTo(at, from);
    expect(shown?.done).toBeNull();
    expect(shown?.problems).toHaveLength(1);
    expect(rows('SELECT id FROM measurement')).toEqual([]);
  });

  it('confirms the unlikely value that was asked about, and no other', async () => {
    const from = await signedIn();
    const typed = (massKg: string) => weight({ 'body-mass-day': '2026-03-02', 'body-mass-massKg': massKg });
    await postForm(at, from, 'measurement', typed('290'));
    expect((await shownTo(at, from))[0]?.questions.length).toBeGreaterThan(0);
    await postForm(at, from, 'measurement', { ...typed('291'), 'is.confirmed': 'yes' });
    expect(rows('SELECT id FROM measurement')).toEqual([]);
    await postForm(at, from, 'measurement', { ...typed('291'), 'is.confirmed': 'yes' });
    expect(rows('SELECT id FROM measurement')).toHaveLength(1);
  });
});
