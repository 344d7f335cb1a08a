import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { openStore } from '#data/open-store.ts';
import { guardCodes, guardSignIns } from '#server/sign-in/sign-in-guard.ts';
import { clinicNamed } from '#tests/support/clinic.ts';
import { account, type Browser, browser, testPassphrase, testRuntime } from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';
import { POST } from '../../src/app/api/auth/[...all]/route.ts';

const second = 1000;
const minute = 60 * second;

const stranger = (email: string, network: string) => ({ email, network, knownMark: null });

describe('wrong tries make a stranger wait, and nobody else', () => {
  it('five cost nothing, the sixth waits fifteen seconds, each further one twice as long, at most a quarter of an hour', () => {
    const guard = guardSignIns();
    const attempt = stranger('c@test.invalid', 'n1');
    const waits: number[] = [];
    let now = 0;
    for (let tried = 1; tried <= 13; tried += 1) {
      const wait = guard.wait(attempt, now);
      waits.push(wait);
      now += wait * second;
      guard.wrong(attempt, now);
    }
    expect(waits).toEqual([0, 0, 0, 0, 0, 15, 30, 60, 120, 240, 480, 900, 900]);
  });

  it('a wait ends by itself: no account is ever locked', () => {
    const guard = guardSignIns();
    const attempt = stranger('c@test.invalid', 'n1');
    for (let tried = 0; tried < 10_000; tried += 1) guard.wrong(attempt, 0);
    expect(guard.wait(attempt, 0)).toBe(900);
    expect(guard.wait(attempt, 900 * second - 1)).toBe(1);
    expect(guard.wait(attempt, 900 * second)).toBe(0);
  });

  it('a browser known to the account is let in at once while its whole network and account are under attack', () => {
    const guard = guardSignIns();
    for (let tried = 0; tried < 10_000; tried += 1) {
      guard.wrong(stranger('c@test.invalid', `n${tried % 500}`), 0);
      guard.wrong(stranger(`other-${tried}@test.invalid`, 'n1'), 0);
    }
    expect(guard.wait({ email: 'c@test.invalid', network: 'n1', knownMark: 'desk' }, 0)).toBe(0);
  });

  it('a new machine on another network waits a minute at most, however hard its account is tried elsewhere', () => {
    const guard = guardSignIns();
    for (let tried = 0; tried < 10_000; tried += 1) guard.wrong(stranger('c@test.invalid', `n${tried}`), 0);
    expect(guard.wait(stranger('c@test.invalid', 'new'), 0)).toBe(60);
  });

  it('a colleague on the attacker’s network waits for the rest of that minute at most', () => {
    const guard = guardSignIns();
    for (let tried = 0; tried < 30; tried += 1) guard.wrong(stranger(`o${tried}@test.invalid`, 'n1'), 0);
    expect(guard.wait(stranger('c@test.invalid', 'n1'), 0)).toBe(60);
    expect(guard.wait(stranger('c@test.invalid', 'n1'), minute)).toBe(0);
    expect(guard.wait(stranger('c@test.invalid', 'n2'), 0)).toBe(0);
  });

  it('the known browser waits for its own wrong tries too, five minutes at most', () => {
    const guard = guardSignIns();
    const desk = { email: 'c@test.invalid', network: 'n1', knownMark: 'desk' };
    for (let tried = 0; tried < 5; tried += 1) guard.wrong(desk, 0);
    expect(guard.wait(desk, 0)).toBe(15);
    for (let tried = 0; tried < 1000; tried += 1) guard.wrong(desk, 0);
    expect(guard.wait(desk, 0)).toBe(300);
    guard.right(desk);
    expect(guard.wait(desk, 0)).toBe(0);
  });

  it('signing in rightly a hundred times, each in a new browser, makes nobody wait', () => {
    const guard = guardSignIns();
    for (let signed = 0; signed < 100; signed += 1) {
      const attempt = stranger('c@test.invalid', `n${signed}`);
      guard.wrong(attempt, 0);
      guard.right(attempt);
    }
    expect(guard.wait(stranger('c@test.invalid', 'new'), 0)).toBe(0);
  });

  it('codes of invitations: ten wrong ones free, then a wait by network of two minutes at most', () => {
    const codes = guardCodes();
    for (let tried = 0; tried < 9; tried += 1) codes.wrong('n1', 0);
    expect(codes.wait('n1', 0)).toBe(0);
    codes.wrong('n1', 0);
    expect(codes.wait('n1', 0)).toBe(5);
    for (let tried = 0; tried < 1000; tried += 1) codes.wrong('n1', 0);
    expect([codes.wait('n1', 0), codes.wait('n2', 0)]).toEqual([120, 0]);
  });
});

describe('the same through the door', () => {
  let store: Store;
  beforeEach(async () => {
    store = freshStore();
    await clinicNamed(store, 'a');
    await account(testRuntime(store, { DEMO: '1' }), { email: 'desk@test.invalid' });
  });
  afterEach(() => store.close());

  const signIn = (from: Browser, password = testPassphrase) =>
    from.post(POST, '/api/auth/sign-in/email', { email: 'desk@test.invalid', password });

  it('a clinician signs in at the own desk while a stranger on the same network is being held back', async () => {
    const desk = browser('203.0.113.7');
    expect((await signIn(desk)).status).toBe(200);
    const attacker = browser('203.0.113.7');
    const answers: number[] = [];
    for (let tried = 0; tried < 8; tried += 1)
      answers.push((await signIn(attacker, 'wrong guess no')).status);
    expect(answers).toEqual([401, 401, 401, 401, 401, 429, 429, 429]);
    const held = await signIn(attacker);
    expect(held.status).toBe(429);
    expect(Number(held.headers.get('retry-after'))).toBeGreaterThan(0);
    expect((await signIn(desk)).status).toBe(200);
  });

  it('the mark of a known browser works for its own account only and cannot be made up', async () => {
    const desk = browser('203.0.113.8');
    await signIn(desk);
    const mark = desk.cookies.get('loadgate.known')!;
    const attacker = browser('203.0.113.9');
    attacker.cookies.set(
      'loadgate.known',
      mark.replace(/.$/, (end) => (end === 'A' ? 'B' : 'A')),
    );
    const answers: number[] = [];
    for (let tried = 0; tried < 6; tried += 1)
      answers.push((await signIn(attacker, 'wrong guess no')).status);
    expect(answers.at(-1)).toBe(429);
  });

  /** The server ends and another begins on the same file. */
  const restart = () => {
    const { file } = store;
    store.close();
    store = openStore(file);
    testRuntime(store, { DEMO: '1' });
  };

  it('a restart forgives nobody, and the desk still signs in at once', async () => {
    const desk = browser('203.0.113.10');
    expect((await signIn(desk)).status).toBe(200);
    const attacker = browser('203.0.113.10');
    for (let tried = 0; tried < 5; tried += 1) await signIn(attacker, 'wrong guess no');
    restart();
    expect((await signIn(attacker)).status).toBe(429);
    expect((await signIn(desk)).status).toBe(200);
    expect((await signIn(browser('203.0.113.11'))).status).toBe(200);
  });

  it('a try is in the file before the passphrase is looked at: a crash in between gives none for nothing', async () => {
    const kept = () =>
      store.reader.client.prepare('SELECT kind, wrong FROM sign_in_attempt ORDER BY kind').all();
    const at = testRuntime(store, { DEMO: '1' });
    let seen: unknown = null;
    const handler = at.auth.handler;
    at.auth.handler = (request) => {
      seen = kept();
      return handler(request);
    };
    await signIn(browser('203.0.113.12'), 'wrong guess no');
    at.auth.handler = handler;
    expect(seen).toEqual([
      { kind: 'account', wrong: 1 },
      { kind: 'network', wrong: 1 },
    ]);
  });

  it('signing in rightly takes the own tries out of the file again', async () => {
    const from = browser('203.0.113.13');
    await signIn(from, 'wrong guess no');
    await signIn(from);
    const rows = store.reader.client.prepare('SELECT kind, wrong FROM sign_in_attempt').all();
    expect(rows).toEqual([{ kind: 'account', wrong: 1 }]);
  });

  it('neither the address that was tried nor the network stands in the file', async () => {
    await signIn(browser('203.0.113.14'), 'wrong guess no');
    const rows = JSON.stringify(store.reader.client.prepare('SELECT * FROM sign_in_attempt').all());
    expect(rows).toContain('"kind":"network"');
    expect(rows).not.toMatch(/desk|test\.invalid|203\.0/);
  });
});
