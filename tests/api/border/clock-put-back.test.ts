/** A machine whose clock is put back: nobody waits for days, and no open session counts as fresh for days. */
import { afterEach, describe, expect, it, vi } from 'vitest';
import { attemptLimiter } from '#api/attempt-limiter.ts';
import { isFresh } from '#api/fresh-sign-in.ts';
import type { Store } from '#data/database/store.ts';
import { countMinutes } from '#server/http/rate.ts';
import { personOf } from '#server/sign-in/person.ts';
import { clinicNamed } from '#tests/support/clinic.ts';
import { account, browser, testPassphrase, testRuntime } from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';
import { POST as signInPost } from '../../../src/app/api/auth/[...all]/route.ts';

const hour = 3_600_000;
const twoDays = 48 * hour;
const minute = 60_000;

describe('a clock put back by two days', () => {
  it('makes who tried wrongly wait as long as before, counted from now, and then no more', () => {
    const tries = attemptLimiter({ free: 2, firstWaitSeconds: 15, longestWaitSeconds: 300 });
    const now = Date.parse('2026-03-02T09:00:00Z');
    for (let tried = 0; tried < 3; tried += 1) tries.wrong('desk', now);
    expect(tries.wait('desk', now)).toBe(30);
    const back = now - twoDays;
    expect(tries.wait('desk', back)).toBe(30);
    expect(tries.wait('desk', back + 29_000)).toBe(1);
    expect(tries.wait('desk', back + 30_000)).toBe(0);
  });

  it('begins a new minute of calls instead of making the old one last', () => {
    const calls = countMinutes(2);
    calls.add('session', twoDays, 2);
    expect(calls.wait('session', twoDays)).toBe(60);
    expect(calls.wait('session', 0)).toBe(0);
    calls.add('session', 0, 2);
    expect([calls.wait('session', 0), calls.wait('session', minute)]).toEqual([60, 0]);
  });

  it.each([
    [0, true],
    [minute, true],
    [minute + 1, false],
    [twoDays, false],
  ])('proof given %i ms from now is fresh: %s', (ahead, fresh) => {
    expect(isFresh({ provedAt: twoDays + ahead }, twoDays)).toBe(fresh);
  });
});

describe('a session', () => {
  let store: Store;
  afterEach(() => {
    vi.useRealTimers();
    store.close();
  });

  it('begun a day or more from now is none; a moment less and it is', async () => {
    store = freshStore();
    await clinicNamed(store, 'a');
    const at = testRuntime(store, { DEMO: '1' });
    await account(at, { email: 'c@test.invalid' });
    const desk = browser('198.18.11.1');
    await desk.post(signInPost, '/api/auth/sign-in/email', {
      email: 'c@test.invalid',
      password: testPassphrase,
    });
    const begun = Date.now();
    vi.useFakeTimers({ now: begun - 23 * hour, toFake: ['Date'] });
    expect(await personOf(at, desk.headers())).toMatchObject({ email: 'c@test.invalid' });
    vi.setSystemTime(begun - 25 * hour);
    expect(await personOf(at, desk.headers())).toBeNull();
  });

  it('stands in its cookie alone: no answer of signing in repeats its token', async () => {
    store = freshStore();
    await clinicNamed(store, 'a');
    await account(testRuntime(store, { DEMO: '1' }), { email: 'c@test.invalid' });
    const desk = browser('198.18.11.2');
    const sent = { email: 'c@test.invalid', password: testPassphrase };
    const { status, json } = await desk.post(signInPost, '/api/auth/sign-in/email', sent);
    const { token } = store.reader.client.prepare('SELECT token FROM auth_session').get() as {
      token: string;
    };
    expect([status, json.user]).toMatchObject([200, { email: 'c@test.invalid' }]);
    expect(JSON.stringify(json)).not.toContain(token);
    expect([...desk.cookies.values()].some((value) => value.includes(token))).toBe(true);
  });
});
