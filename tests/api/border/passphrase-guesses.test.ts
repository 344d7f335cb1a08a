/** Whatever asks for the passphrase inside an open session lets it be guessed a few times, not at leisure. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { personOf } from '#server/sign-in/person.ts';
import { endpoints } from '#server/sign-in/sign-in-handler.ts';
import { clinicNamed } from '#tests/support/clinic.ts';
import { account, type Browser, browser, testPassphrase, testRuntime } from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';
import { POST as signInPost } from '../../../src/app/api/auth/[...all]/route.ts';
import { POST as trpcPost } from '../../../src/app/api/trpc/[trpc]/route.ts';

let store: Store;
let at: ReturnType<typeof testRuntime>;
let desk: Browser;
let networks = 0;

const signIn = async (): Promise<Browser> => {
  networks += 1;
  const from = browser(`198.18.9.${networks}`);
  await from.post(signInPost, '/api/auth/sign-in/email', {
    email: 'c@test.invalid',
    password: testPassphrase,
  });
  return from;
};

beforeEach(async () => {
  store = freshStore();
  await clinicNamed(store, 'a');
  at = testRuntime(store, { DEMO: '1' });
  await account(at, { email: 'c@test.invalid' });
  desk = await signIn();
});
afterEach(() => {
  vi.useRealTimers();
  store.close();
});

/** Every way to have a passphrase looked at inside a session. */
const ways: Readonly<Record<string, (from: Browser, passphrase: string) => Promise<{ status: number }>>> = {
  ...Object.fromEntries(
    ['/two-factor/enable', '/two-factor/disable', '/two-factor/generate-backup-codes'].map((path) => [
      path,
      (from: Browser, password: string) => from.post(signInPost, `/api/auth${path}`, { password }),
    ]),
  ),
  'account.prove': (from, passphrase) => from.post(trpcPost, '/api/trpc/account.prove', { passphrase }),
  'account.changePassphrase': (from, current) =>
    from.post(trpcPost, '/api/trpc/account.changePassphrase', {
      current,
      next: 'quite another row of words',
    }),
};

const statuses = (from: Browser, way: string, count: number) =>
  Promise.all(
    Array.from({ length: count }, async (_, turn) => (await ways[way]!(from, `wrong guess ${turn}`)).status),
  );

describe('guessing the passphrase in an open session', () => {
  it('is tried below in every way the door has', () => {
    const asking = Object.keys(endpoints).filter((path) => endpoints[path]!.includes('password'));
    expect(asking.filter((path) => !(path in ways))).toEqual(['/sign-in/email']);
  });

  it.each(Object.keys(ways))(
    '%s looks at five wrong ones of sixty sent at once, answers the rest 429, and the right one too',
    async (way) => {
      const sorted = (await statuses(desk, way, 60)).sort();
      expect(sorted).toEqual([...Array(5).fill(400), ...Array(55).fill(429)]);
      expect((await ways[way]!(desk, testPassphrase)).status).toBe(429);
      expect(await personOf(at, desk.headers())).toMatchObject({ email: 'c@test.invalid' });
    },
  );

  it('counts together, whichever way is taken', async () => {
    const taken = [];
    for (const way of [...Object.keys(ways), 'account.prove']) taken.push(...(await statuses(desk, way, 1)));
    expect(taken).toEqual([400, 400, 400, 400, 400, 429]);
  });

  it('never makes the owner wait in another session', async () => {
    await statuses(desk, '/two-factor/enable', 6);
    const other = await signIn();
    expect((await ways['/two-factor/enable']!(other, testPassphrase)).status).toBe(200);
  });

  it('ends by itself: after fifteen seconds the right one is taken, a moment earlier not', async () => {
    vi.useFakeTimers({ now: Date.now(), toFake: ['Date'] });
    await statuses(desk, '/two-factor/enable', 6);
    vi.setSystemTime(Date.now() + 14_000);
    expect((await ways['/two-factor/enable']!(desk, testPassphrase)).status).toBe(429);
    vi.setSystemTime(Date.now() + 1000);
    expect((await ways['/two-factor/enable']!(desk, testPassphrase)).status).toBe(200);
  });

  it('four wrong ones and then the right one begin anew', async () => {
    await statuses(desk, '/two-factor/enable', 4);
    expect((await ways['account.prove']!(desk, testPassphrase)).status).toBe(200);
    expect(await statuses(desk, '/two-factor/enable', 5)).toEqual(Array(5).fill(400));
  });

  it('asks nobody who is not signed in: the library refuses before it looks', async () => {
    const stranger = browser('198.18.9.200');
    expect(await statuses(stranger, '/two-factor/enable', 1)).toEqual([401]);
  });
});
