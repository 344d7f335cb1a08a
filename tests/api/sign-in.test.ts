import { base32 } from '@better-auth/utils/base32';
import { createOTP } from '@better-auth/utils/otp';
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { addStaff, setActive } from '#data/accounts/staff.ts';
import { flushReads } from '#data/audit/audit.ts';
import type { Store } from '#data/database/store.ts';
import { openStore } from '#data/open-store.ts';
import type { Runtime } from '#server/runtime.ts';
import { personOf } from '#server/sign-in/person.ts';
import { endpoints } from '#server/sign-in/sign-in-handler.ts';
import { accessOf, clinicNamed } from '#tests/support/clinic.ts';
import { account, type Browser, browser, testPassphrase, testRuntime } from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';
import { POST } from '../../src/app/api/auth/[...all]/route.ts';

const signIn = (from: Browser, email: string, password = testPassphrase) =>
  from.post(POST, '/api/auth/sign-in/email', { email, password });

const textOf = (bytes: Uint8Array) => new TextDecoder().decode(bytes);

/** Switches codes on as a person does it: begin, read the secret, type the first code. */
const switchCodesOn = async (from: Browser) => {
  const begun = await from.post(POST, '/api/auth/two-factor/enable', { password: testPassphrase });
  const secret = textOf(base32.decode(new URL(begun.json.totpURI as string).searchParams.get('secret')!));
  const code = () => createOTP(secret).totp();
  const verified = await from.post(POST, '/api/auth/two-factor/verify-totp', { code: await code() });
  return { begun, verified, code, recovery: begun.json.backupCodes as readonly string[] };
};

let store: Store;
let at: Runtime;
let networks = 0;
const newBrowser = () => {
  networks += 1;
  return browser(`198.51.100.${networks}`);
};

beforeEach(async () => {
  store = freshStore();
  await clinicNamed(store, 'a');
  at = testRuntime(store, { DEMO: '1' });
  await account(at, { email: 'c@test.invalid' });
});
afterEach(() => {
  vi.useRealTimers();
  store.close();
});

/** The next code's time, so that one used already is not in the way. */
const later = () => vi.useFakeTimers({ now: Date.now() + 30_000, toFake: ['Date'] });

const subjects = async () => {
  await flushReads(store);
  const rows = store.reader.client.prepare(
    "SELECT act, subject FROM audit WHERE clinic_id = 'a' ORDER BY sequence",
  );
  return (rows.all() as { act: string; subject: string }[]).map((row) => `${row.act} ${row.subject}`);
};

describe('signing in with a passphrase', () => {
  it('opens a session under a cookie that scripts cannot read and other sites do not send', async () => {
    const from = newBrowser();
    const answer = await signIn(from, 'c@test.invalid');
    expect(answer.status).toBe(200);
    expect(await personOf(at, from.headers())).toMatchObject({ email: 'c@test.invalid', setUp: 'done' });
    for (const cookie of answer.headers.getSetCookie()) {
      expect(cookie).toMatch(/HttpOnly/i);
      expect(cookie).toMatch(/SameSite=(Lax|Strict)/i);
    }
    expect(await subjects()).toContain('sign-in signed-in');
  });

  it('behind TLS every cookie is Secure', async () => {
    at = testRuntime(store, { DEMO: '1', PUBLIC_ORIGIN: 'https://clinic.example' });
    const from = newBrowser();
    const answer = await from.post(
      POST,
      '/api/auth/sign-in/email',
      { email: 'c@test.invalid', password: testPassphrase },
      { origin: 'https://clinic.example' },
    );
    expect(answer.status).toBe(200);
    const cookies = answer.headers.getSetCookie();
    expect(cookies.length).toBeGreaterThan(1);
    for (const cookie of cookies) expect(cookie).toMatch(/^__Secure-.*; ?Secure/i);
  });

  it('answers a wrong passphrase, an unknown address and a deactivated account alike', async () => {
    const gone = await account(at, { email: 'gone@test.invalid' });
    await setActive(accessOf(store, 'a', 'admin'), gone, false);
    const answers = [
      await signIn(newBrowser(), 'c@test.invalid', 'not the passphrase'),
      await signIn(newBrowser(), 'nobody@test.invalid'),
      await signIn(newBrowser(), 'gone@test.invalid'),
    ];
    expect(new Set(answers.map((one) => JSON.stringify([one.status, one.json]))).size).toBe(1);
    expect(answers[0]!.status).toBe(401);
    expect((await subjects()).filter((row) => row === 'refused signed-in')).toHaveLength(2);
  });

  it('deactivation ends the open sessions at once and keeps the account', async () => {
    const from = newBrowser();
    const id = await account(at, { email: 'leaver@test.invalid' });
    await signIn(from, 'leaver@test.invalid');
    expect(await personOf(at, from.headers())).not.toBeNull();
    await setActive(accessOf(store, 'a', 'admin'), id, false);
    expect(await personOf(at, from.headers())).toBeNull();
    const kept = store.reader.client.prepare('SELECT name FROM auth_user WHERE id = ?').get(id);
    expect(kept).toMatchObject({ name: 'Test Clinician' });
  });

  it('a handed-over passphrase lets its owner do nothing but choose an own one, and runs out', async () => {
    const handed = await addStaff(accessOf(store, 'a', 'admin'), {
      name: 'New Colleague',
      email: 'new@test.invalid',
      role: 'clinician',
      administers: false,
    });
    const from = newBrowser();
    await signIn(from, 'new@test.invalid', handed!.passphrase);
    expect(await personOf(at, from.headers())).toMatchObject({ setUp: 'passphrase' });
    store.writer.client.exec(`UPDATE auth_user SET starting_until = ${Date.now() - 1}`);
    expect((await signIn(newBrowser(), 'new@test.invalid', handed!.passphrase)).status).toBe(401);
  });

  it('a clinic that asks its staff for codes lets nobody on without them; the demo does', async () => {
    at = testRuntime(store);
    const from = newBrowser();
    await signIn(from, 'c@test.invalid');
    expect(await personOf(at, from.headers())).toMatchObject({ setUp: 'two-factor' });
    await switchCodesOn(from);
    expect(await personOf(at, from.headers())).toMatchObject({ setUp: 'done' });
  });
});

describe('one-time codes at sign-in', () => {
  it('the passphrase alone opens nothing; the code of the moment does', async () => {
    const first = newBrowser();
    await signIn(first, 'c@test.invalid');
    const { begun, verified, code } = await switchCodesOn(first);
    expect([begun.status, verified.status]).toEqual([200, 200]);
    const from = newBrowser();
    const asked = await signIn(from, 'c@test.invalid');
    expect(asked.json).toMatchObject({ twoFactorRedirect: true });
    expect(await personOf(at, from.headers())).toBeNull();
    const wrong = await from.post(POST, '/api/auth/two-factor/verify-totp', { code: '000000' });
    expect(wrong.status).toBe(401);
    later();
    await from.post(POST, '/api/auth/two-factor/verify-totp', { code: await code() });
    expect(await personOf(at, from.headers())).toMatchObject({ email: 'c@test.invalid' });
    expect(await subjects()).toEqual(
      expect.arrayContaining(['sign-in code-asked', 'sign-in signed-in-with-code']),
    );
  });

  it('a code opens once: whoever saw it typed cannot use it again in its own minute, nor after a restart within it', async () => {
    const first = newBrowser();
    await signIn(first, 'c@test.invalid');
    const { code } = await switchCodesOn(first);
    const use = async (typed: string) => {
      const from = newBrowser();
      await signIn(from, 'c@test.invalid');
      const answer = await from.post(POST, '/api/auth/two-factor/verify-totp', { code: typed });
      return [answer.status, (await personOf(at, from.headers())) !== null];
    };
    // The code that switched codes on is used up as well.
    expect(await use(await code())).toEqual([401, false]);
    later();
    const next = await code();
    expect(await use(next)).toEqual([200, true]);
    expect(await use(`${next.slice(0, 3)} ${next.slice(3)}`)).toEqual([401, false]);
    const { file } = store;
    store.close();
    store = openStore(file);
    at = testRuntime(store, { DEMO: '1' });
    expect(await use(next)).toEqual([401, false]);
  });

  it('a recovery code opens once', async () => {
    const first = newBrowser();
    await signIn(first, 'c@test.invalid');
    const { recovery } = await switchCodesOn(first);
    expect(recovery).toHaveLength(10);
    const use = async (from: Browser) => {
      await signIn(from, 'c@test.invalid');
      const answer = await from.post(POST, '/api/auth/two-factor/verify-backup-code', { code: recovery[0] });
      return answer.status;
    };
    expect(await use(newBrowser())).toBe(200);
    expect(await use(newBrowser())).toBe(401);
  });

  it('five wrong codes end the challenge: the passphrase has to be given again', async () => {
    const first = newBrowser();
    await signIn(first, 'c@test.invalid');
    const { code } = await switchCodesOn(first);
    const from = newBrowser();
    await signIn(from, 'c@test.invalid');
    for (let tried = 0; tried < 5; tried += 1) {
      await from.post(POST, '/api/auth/two-factor/verify-totp', { code: '000000' });
    }
    const right = await from.post(POST, '/api/auth/two-factor/verify-totp', { code: await code() });
    expect(right.status).toBeGreaterThanOrEqual(400);
    expect(await personOf(at, from.headers())).toBeNull();
  });

  it('secret and recovery codes are not in the file in the clear', async () => {
    const first = newBrowser();
    await signIn(first, 'c@test.invalid');
    const { recovery } = await switchCodesOn(first);
    const row = JSON.stringify(store.reader.client.prepare('SELECT * FROM auth_two_factor').all());
    expect(recovery.filter((one) => row.includes(one))).toEqual([]);
  });

  it('no browser is excused from the code for thirty days, whatever it sends', async () => {
    const first = newBrowser();
    await signIn(first, 'c@test.invalid');
    const { code } = await switchCodesOn(first);
    const from = newBrowser();
    await signIn(from, 'c@test.invalid');
    const more = { code: await code(), trustDevice: true };
    await from.post(POST, '/api/auth/two-factor/verify-totp', more);
    expect([...from.cookies.keys()].filter((name) => name.includes('trust'))).toEqual([]);
    expect((await signIn(from, 'c@test.invalid')).json).toMatchObject({ twoFactorRedirect: true });
  });
});

describe('the door in front of the sign-in library', () => {
  it.each([
    '/sign-up/email',
    '/update-user',
    '/change-email',
    '/delete-user',
    '/request-password-reset',
    '/constructor',
  ])('%s does not exist', async (path) => {
    const from = newBrowser();
    await signIn(from, 'c@test.invalid');
    expect((await from.post(POST, `/api/auth${path}`, { name: 'Somebody Else' })).status).toBe(404);
  });

  it.each(Object.keys(endpoints))(
    '%s refuses another origin, no origin, and text instead of JSON',
    async (path) => {
      const from = newBrowser();
      const post = (headers: HeadersInit) => from.post(POST, `/api/auth${path}`, {}, headers);
      expect((await post({ origin: 'https://elsewhere.example' })).status).toBe(403);
      expect((await post({ 'sec-fetch-site': 'cross-site' })).status).toBe(403);
      expect((await post({ 'content-type': 'text/plain' })).status).toBe(415);
      const bare = new Request(`http://127.0.0.1:3000/api/auth${path}`, { method: 'POST', body: '{}' });
      expect((await POST(bare)).status).toBe(403);
    },
  );

  it('refuses a body over 4 KiB and one that is no object of texts', async () => {
    const from = newBrowser();
    const post = (body: unknown) => from.post(POST, '/api/auth/sign-in/email', body);
    expect((await post({ email: 'c@test.invalid', password: 'x'.repeat(4100) })).status).toBe(400);
    expect((await post({ email: 'c@test.invalid', password: { $gt: '' } })).status).toBe(400);
    expect((await post(['c@test.invalid'])).status).toBe(400);
  });
});
