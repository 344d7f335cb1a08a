import { createOTP } from '@better-auth/utils/otp';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { noteRead } from '#data/audit/audit.ts';
import { headsFileOf, readHeads } from '#data/audit/audit-heads.ts';
import type { Store } from '#data/database/store.ts';
import { keepWordsOut, storeHeadsNow } from '#server/jobs/audit-anchoring.ts';
import { personOf } from '#server/sign-in/person.ts';
import { makeTelemetry } from '#server/telemetry/telemetry.ts';
import { accessOf, auditKey, twoClinics } from '#tests/support/clinic.ts';
import { account, browser, logLines, testPassphrase, testRuntime } from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';
import { typedSecret } from '#tests/support/typed-secret.ts';
import { POST } from '../../src/app/api/auth/[...all]/route.ts';

let store: Store;
beforeEach(async () => {
  store = freshStore();
  await twoClinics(store);
});
afterEach(() => store.close());

describe('a running server', () => {
  it('writes the openings that wait before it keeps a head, so that the head covers them', async () => {
    const at = testRuntime(store);
    noteRead(accessOf(store, 'a', 'clinician-a'), { subject: 'worklist' });
    expect(await storeHeadsNow(at)).toBe(2);
    const heads = readHeads(headsFileOf(store.file), auditKey);
    expect(heads).toMatchObject({
      ok: true,
      heads: [
        { clinicId: 'a', sequence: 3 },
        { clinicId: 'b', sequence: 1 },
      ],
    });
    expect(await storeHeadsNow(at)).toBe(0);
  });

  it('prints a fault of a page by kind and place, never by its words', () => {
    testRuntime(store);
    const before = { error: console.error, warn: console.warn };
    try {
      keepWordsOut();
      console.error('⨯', new TypeError('Maeve Tarrowby hurts 9 of 10'));
      console.error('Maeve Tarrowby');
      console.warn('Maeve Tarrowby');
    } finally {
      Object.assign(console, before);
    }
    expect(logLines).toHaveLength(3);
    expect(logLines[0]).toContain('"kind":"TypeError"');
    expect(logLines[0]).toMatch(/audit-anchoring\.test\.ts/);
    expect(logLines.filter((line) => /Maeve|hurts/.test(line))).toEqual([]);
  });

  it('cuts out what would carry words of people even when somebody logs it by mistake', () => {
    const lines: string[] = [];
    const { log } = makeTelemetry({ write: (line) => lines.push(line) });
    log.info(
      { email: 'secret-1', input: { text: 'secret-2' }, user: { email: 'secret-3', pin: 'secret-4' } },
      'x',
    );
    log.info({ headers: { cookie: 'secret-5' }, request: { headers: 'secret-6', body: 'secret-7' } }, 'x');
    expect(lines.filter((line) => /secret-\d/.test(line))).toEqual([]);
    expect(lines).toHaveLength(2);
  });
});

describe('an account opened with a known secret of one-time codes', () => {
  it('asks for the code of that secret, which an app takes in the usual letters and digits', async () => {
    const codeSecret = 'only for a test, 32 characters..';
    const at = testRuntime(store);
    await account(at, { email: 'r@test.invalid', codeSecret });
    expect(typedSecret(codeSecret)).toMatch(/^[A-Z2-7]{52}$/);
    const from = browser('198.18.4.1');
    const asked = await from.post(POST, '/api/auth/sign-in/email', {
      email: 'r@test.invalid',
      password: testPassphrase,
    });
    expect(asked.json).toMatchObject({ twoFactorRedirect: true });
    const code = await createOTP(codeSecret).totp();
    await from.post(POST, '/api/auth/two-factor/verify-totp', { code });
    expect(await personOf(at, from.headers())).toMatchObject({ email: 'r@test.invalid', setUp: 'done' });
  });
});
