import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { isFresh, requireFresh } from '#api/fresh-sign-in.ts';
import type { Store } from '#data/database/store.ts';
import type { Runtime } from '#server/runtime.ts';
import { personOf } from '#server/sign-in/person.ts';
import { asPerson } from '#tests/support/callers.ts';
import { accessOf, clinicNamed } from '#tests/support/clinic.ts';
import { account, browser, testPassphrase, testRuntime } from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';
import { POST } from '../../src/app/api/auth/[...all]/route.ts';

const minute = 60_000;

describe('a fresh sign-in', () => {
  it('is one of the last ten minutes, by the system clock', () => {
    const now = Date.parse('2026-03-02T09:00:00Z');
    expect(isFresh({ provedAt: now - 10 * minute + 1 }, now)).toBe(true);
    expect(isFresh({ provedAt: now - 10 * minute }, now)).toBe(true);
    expect(isFresh({ provedAt: now - 10 * minute - 1 }, now)).toBe(false);
  });

  it('is asked for in a plain sentence', () => {
    const person = { role: 'clinician', provedAt: 0 } as Parameters<typeof requireFresh>[0];
    expect(() => requireFresh(person, 11 * minute)).toThrow(/Enter your passphrase again to do this/);
  });
});

describe('the own sign-in', () => {
  let store: Store;
  let at: Runtime;
  let networks = 0;
  beforeEach(async () => {
    store = freshStore();
    await clinicNamed(store, 'a');
    at = testRuntime(store, { DEMO: '1' });
    await account(at, { email: 'c@test.invalid' });
  });
  afterEach(() => store.close());

  const signedIn = async () => {
    networks += 1;
    const from = browser(`198.18.2.${networks}`);
    await from.post(POST, '/api/auth/sign-in/email', { email: 'c@test.invalid', password: testPassphrase });
    const person = (await personOf(at, from.headers()))!;
    return { from, person, self: asPerson(accessOf(store, 'a', person.userId), person).account };
  };

  const anHourAgo = (sessionId: string) =>
    store.writer.client
      .prepare('UPDATE auth_session SET created_at = ? WHERE id = ?')
      .run(Date.now() - 60 * minute, sessionId);

  it('the passphrase given again makes this session fresh, and no other one', async () => {
    const desk = await signedIn();
    const other = await signedIn();
    for (const { person } of [desk, other]) anHourAgo(person.sessionId);
    const isFreshNow = async ({ from }: typeof desk) =>
      isFresh((await personOf(at, from.headers()))!, Date.now());
    expect([await isFreshNow(desk), await isFreshNow(other)]).toEqual([false, false]);
    await expect(desk.self.prove({ passphrase: 'not the passphrase' })).rejects.toThrow(
      /not your passphrase/,
    );
    expect(await isFreshNow(desk)).toBe(false);
    await desk.self.prove({ passphrase: testPassphrase });
    expect([await isFreshNow(desk), await isFreshNow(other)]).toEqual([true, false]);
  });

  it('after five wrong tries at an open desk the sixth waits, the right one too', async () => {
    const { self } = await signedIn();
    for (let tried = 0; tried < 5; tried += 1) {
      await expect(self.prove({ passphrase: `guess ${tried}` })).rejects.toMatchObject({
        problem: 'refused',
      });
    }
    await expect(self.prove({ passphrase: testPassphrase })).rejects.toMatchObject({ problem: 'too-often' });
  });

  it.each([
    ['eleven ch..', /at least 12 characters/],
    [testPassphrase, /differs from the one you have now/],
    ['I am c@test.invalid', /without your name or address/],
    ['aaaaaaaaaaaaaa', /same again and again/],
    ['abcabcabcabcabc', /same again and again/],
    ['lala lala lala lala', /same again and again/],
    ['123456789012', /row of keys/],
    ['Qwertyuiop123', /row of keys/],
    ['abcdefghijklmnop', /row of keys/],
    ['zyxwvu-987654', /row of keys/],
    ['Password2026!', /well-known word/],
    ['Physiotherapy-1', /well-known word/],
    ['xx Test Clinician xx', /without your name or address/],
  ])('%s is not taken as a new passphrase', async (next, reason) => {
    const { self } = await signedIn();
    await expect(self.changePassphrase({ current: testPassphrase, next })).rejects.toThrow(reason);
  });

  it.each([
    'quite another four words',
    'rain on tin roofs',
    '7 herons at the weir',
    'correct horse qwerty staple',
  ])('%s is taken', async (next) => {
    const { self } = await signedIn();
    await expect(self.changePassphrase({ current: testPassphrase, next })).resolves.toBeUndefined();
  });

  it('a new passphrase counts at once, ends every other session and keeps this one', async () => {
    const desk = await signedIn();
    const other = await signedIn();
    const next = 'quite another four words';
    await desk.self.changePassphrase({ current: testPassphrase, next });
    expect(await personOf(at, desk.from.headers())).not.toBeNull();
    expect(await personOf(at, other.from.headers())).toBeNull();
    const again = browser('198.18.3.1');
    const signIn = (password: string) =>
      again.post(POST, '/api/auth/sign-in/email', { email: 'c@test.invalid', password });
    expect([(await signIn(testPassphrase)).status, (await signIn(next)).status]).toEqual([401, 200]);
  });

  it('one session of several is ended from the list; somebody else’s cannot be', async () => {
    const desk = await signedIn();
    const other = await signedIn();
    expect((await desk.self.sessions()).map((one) => one.id).sort()).toEqual(
      [desk.person.sessionId, other.person.sessionId].sort(),
    );
    await desk.self.endSession({ sessionId: other.person.sessionId });
    expect(await personOf(at, other.from.headers())).toBeNull();
    const stranger = asPerson(accessOf(store, 'a', 'somebody-else'), {}).account;
    await expect(stranger.endSession({ sessionId: desk.person.sessionId })).rejects.toMatchObject({
      problem: 'conflict',
    });
    expect(await personOf(at, desk.from.headers())).not.toBeNull();
  });

  it('signing out everywhere ends the one that asks as well, and is a row of the audit', async () => {
    const desk = await signedIn();
    const other = await signedIn();
    expect(await desk.self.endEverywhere()).toBe(2);
    expect(await personOf(at, desk.from.headers())).toBeNull();
    expect(await personOf(at, other.from.headers())).toBeNull();
    const [last] = store.reader.client
      .prepare("SELECT act, subject FROM audit WHERE clinic_id = 'a' ORDER BY sequence DESC LIMIT 1")
      .all();
    expect(last).toEqual({ act: 'sign-in', subject: 'signed-out-everywhere' });
  });

  it('each sign-in gets a token of its own; one brought along from before opens nothing', async () => {
    const { from } = await signedIn();
    const first = from.cookies.get('loadgate.session_token');
    await from.post(POST, '/api/auth/sign-in/email', { email: 'c@test.invalid', password: testPassphrase });
    expect(from.cookies.get('loadgate.session_token')).not.toBe(first);
    const planted = browser('198.18.3.2');
    planted.cookies.set('loadgate.session_token', 'chosen-by-somebody-else');
    expect(await personOf(at, planted.headers())).toBeNull();
    await planted.post(POST, '/api/auth/sign-in/email', {
      email: 'c@test.invalid',
      password: testPassphrase,
    });
    expect(planted.cookies.get('loadgate.session_token')).not.toContain('chosen-by-somebody-else');
    expect(await personOf(at, planted.headers())).not.toBeNull();
  });

  it('a session ends twelve hours after its last use, and a day after it began however much it was used', async () => {
    const { from, person } = await signedIn();
    const begun = store.reader.client
      .prepare(
        'SELECT created_at AS at, updated_at AS used, expires_at AS ends FROM auth_session WHERE id = ?',
      )
      .get(person.sessionId) as { at: number; used: number; ends: number };
    expect(Math.round((begun.ends - begun.used) / minute)).toBe(12 * 60);
    const in24Hours = begun.at + 24 * 60 * minute;
    store.writer.client.exec(`UPDATE auth_session SET expires_at = ${in24Hours + 60 * minute}`);
    vi.useFakeTimers({ now: in24Hours - 1, toFake: ['Date'] });
    expect(await personOf(at, from.headers())).not.toBeNull();
    vi.setSystemTime(in24Hours);
    expect(await personOf(at, from.headers())).toBeNull();
    vi.useRealTimers();
  });
});
