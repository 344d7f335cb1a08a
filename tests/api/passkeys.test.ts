/** Passkeys of staff, through the door a browser uses (W3C Web Authentication, level 2, sections 7.1 and 7.2). */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { resetStaff, setActive } from '#data/accounts/staff.ts';
import { flushReads } from '#data/audit/audit.ts';
import type { Store } from '#data/database/store.ts';
import { openStore } from '#data/open-store.ts';
import { addPatient } from '#data/patients/people.ts';
import type { Runtime } from '#server/runtime.ts';
import { passkeyPlace } from '#server/sign-in/passkey/answers.ts';
import { personOf } from '#server/sign-in/person.ts';
import { accessOf, clinicNamed } from '#tests/support/clinic.ts';
import { passkeyDevice, type Said } from '#tests/support/passkey-device.ts';
import { account, type Browser, browser, testPassphrase, testRuntime } from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';
import { POST } from '../../src/app/api/auth/[...all]/route.ts';

const origin = 'https://clinic.example';

let store: Store;
let at: Runtime;
let userId: string;
let networks = 0;

const newBrowser = (): Browser => {
  networks += 1;
  return browser(`192.0.2.${networks}`);
};
const post = (from: Browser, path: string, body: object = {}) =>
  from.post(POST, `/api/auth${path}`, body, { origin });
const signedIn = async (email = 'c@test.invalid') => {
  const from = newBrowser();
  await post(from, '/sign-in/email', { email, password: testPassphrase });
  return from;
};
const challengeOf = async (from: Browser, path: '/passkey/begin' | '/passkey/ask') =>
  (await post(from, path)).json.challenge as string;

const sentAs = (answer: object) => ({ answer: JSON.stringify(answer) });

type Device = ReturnType<typeof passkeyDevice>;

const add = async (from: Browser, device: Device, said: Said = {}) => {
  const challenge = await challengeOf(from, '/passkey/begin');
  return post(from, '/passkey/add', {
    name: 'Desk key',
    answer: JSON.stringify(device.make(challenge, said)),
  });
};
const use = async (device: Device, said: Said = {}, from = newBrowser()) => {
  const challenge = await challengeOf(from, '/passkey/ask');
  const answer = await post(from, '/passkey/sign-in', sentAs(device.use(challenge, said)));
  return { status: answer.status, person: await personOf(at, from.headers()) };
};

beforeEach(async () => {
  store = freshStore();
  await clinicNamed(store, 'a');
  at = testRuntime(store, { PUBLIC_ORIGIN: origin });
  userId = await account(at, { email: 'c@test.invalid' });
});
afterEach(() => {
  vi.useRealTimers();
  store.close();
});

const subjects = async () => {
  await flushReads(store);
  const rows = store.reader.client.prepare(
    "SELECT act, subject FROM audit WHERE clinic_id = 'a' ORDER BY sequence",
  );
  return (rows.all() as { act: string; subject: string }[]).map((row) => `${row.act} ${row.subject}`);
};

describe('signing in with a passkey', () => {
  it.each(['p256', 'ed25519', 'rsa2048'] as const)(
    'one of kind %s is added after the passphrase and then opens without it, as two factors in one',
    async (kind) => {
      const device = passkeyDevice(origin, kind);
      const from = await signedIn();
      expect(await personOf(at, from.headers())).toMatchObject({ setUp: 'two-factor' });
      expect((await add(from, device)).json).toEqual({ added: true });
      const { status, person } = await use(device);
      expect([status, person?.userId, person?.setUp]).toEqual([200, userId, 'done']);
      expect(await subjects()).toEqual(
        expect.arrayContaining(['sign-in passkey-added', 'sign-in signed-in-with-passkey']),
      );
    },
  );

  it('having one does not make a passphrase alone enough', async () => {
    const device = passkeyDevice(origin);
    await add(await signedIn(), device);
    const again = await signedIn();
    expect(await personOf(at, again.headers())).toMatchObject({ setUp: 'two-factor' });
  });

  it.each<[string, Said]>([
    ['for another page', { origin: 'https://clinic.example.evil.example' }],
    ['for another host', { host: 'evil.example' }],
    ['inside a page of somebody else', { crossOrigin: true }],
    ['made for adding one', { type: 'webauthn.create' }],
    ['given without the person being there', { flags: 0x04 }],
    ['given without PIN, finger or face', { flags: 0x01 }],
  ])('an answer %s opens nothing, and the refusal is audited', async (_, said) => {
    const device = passkeyDevice(origin);
    await add(await signedIn(), device);
    expect(await use(device, said)).toEqual({ status: 401, person: null });
    expect(await subjects()).toContain('refused signed-in-with-passkey');
    expect((await use(device)).status).toBe(200);
  });

  it('an answer opens once: sent again, also after a restart, it opens nothing', async () => {
    const device = passkeyDevice(origin);
    await add(await signedIn(), device);
    const from = newBrowser();
    const answer = device.use(await challengeOf(from, '/passkey/ask'));
    expect((await post(from, '/passkey/sign-in', sentAs(answer))).status).toBe(200);
    expect((await post(newBrowser(), '/passkey/sign-in', sentAs(answer))).status).toBe(401);
    const { file } = store;
    store.close();
    store = openStore(file);
    at = testRuntime(store, { PUBLIC_ORIGIN: origin });
    expect((await post(newBrowser(), '/passkey/sign-in', sentAs(answer))).status).toBe(401);
  });

  it('a challenge is good for five minutes, and one made up or meant for adding is not taken', async () => {
    const device = passkeyDevice(origin);
    const desk = await signedIn();
    await add(desk, device);
    const from = newBrowser();
    const early = await challengeOf(from, '/passkey/ask');
    const late = await challengeOf(from, '/passkey/ask');
    const sent = async (challenge: string) =>
      (await post(newBrowser(), '/passkey/sign-in', sentAs(device.use(challenge)))).status;
    const made = Number(early.split('.')[0]) - 300_000;
    vi.useFakeTimers({ now: made + 299_999, toFake: ['Date'] });
    expect(await sent(early)).toBe(200);
    vi.setSystemTime(Number(late.split('.')[0]));
    expect(await sent(late)).toBe(401);
    vi.useRealTimers();
    expect(await sent(`${Date.now() + 1000}.made-up.c2VhbA`)).toBe(401);
    expect(await sent(await challengeOf(desk, '/passkey/begin'))).toBe(401);
  });

  it('a device that counts must count upward: the same number again means a copy', async () => {
    const device = passkeyDevice(origin);
    await add(await signedIn(), device, { counter: 7 });
    expect((await use(device, { counter: 7 })).status).toBe(401);
    expect((await use(device, { counter: 8 })).status).toBe(200);
    expect((await use(device, { counter: 8 })).status).toBe(401);
    expect((await use(device, { counter: 0 })).status).toBe(401);
  });

  it('another device under the same id, and a signature that was changed, open nothing', async () => {
    const device = passkeyDevice(origin);
    await add(await signedIn(), device);
    const other = passkeyDevice(origin);
    const send = async (
      change: (answer: ReturnType<Device['use']>) => ReturnType<Device['use']>,
      by: Device,
    ) => {
      const from = newBrowser();
      const challenge = await challengeOf(from, '/passkey/ask');
      return (await post(from, '/passkey/sign-in', sentAs(change(by.use(challenge))))).status;
    };
    expect(await send((answer) => ({ ...answer, id: device.id, rawId: device.id }), other)).toBe(401);
    expect(await send((answer) => answer, other)).toBe(401);
    const spoiled = (text: string) => text.replace(/^.{10}/, 'AAAAAAAAAA');
    const signed = (signature: (of: string) => string) => (answer: ReturnType<Device['use']>) => ({
      ...answer,
      response: { ...answer.response, signature: signature(answer.response.signature) },
    });
    expect(await send(signed(spoiled), device)).toBe(401);
    expect(
      await send(
        signed(() => ''),
        device,
      ),
    ).toBe(401);
  });

  it('ten wrong answers cost nothing, then their network waits, and no other', async () => {
    const device = passkeyDevice(origin);
    await add(await signedIn(), device);
    const from = newBrowser();
    const answers: number[] = [];
    for (let tried = 0; tried < 12; tried += 1) answers.push((await use(device, { flags: 1 }, from)).status);
    expect(answers).toEqual([...Array(10).fill(401), 429, 429]);
    expect((await use(device)).status).toBe(200);
  });

  it('opens nothing for who was deactivated, and is taken away when an administrator resets the sign-in', async () => {
    const device = passkeyDevice(origin);
    await add(await signedIn(), device);
    const administrator = accessOf(store, 'a', 'admin');
    await setActive(administrator, userId, false);
    expect((await use(device)).person).toBeNull();
    await setActive(administrator, userId, true);
    expect((await use(device)).status).toBe(200);
    await resetStaff(administrator, userId);
    expect((await use(device)).status).toBe(401);
  });
});

describe('adding a passkey', () => {
  it('needs a sign-in of the last ten minutes, by staff with a passphrase of their own', async () => {
    expect((await post(newBrowser(), '/passkey/begin')).json).toMatchObject({ problem: 'signed-out' });
    const from = await signedIn();
    vi.useFakeTimers({ now: Date.now() + 601_000, toFake: ['Date'] });
    expect((await post(from, '/passkey/begin')).json).toMatchObject({ problem: 'fresh-sign-in' });
    vi.useRealTimers();
    store.writer.client.exec(`UPDATE auth_user SET starting_until = ${Date.now() + 60_000}`);
    expect((await post(from, '/passkey/begin')).json).toMatchObject({ problem: 'set-up' });
    const patientId = await addPatient(accessOf(store, 'a', 'clinician-a'), {
      givenName: 'Ana',
      familyName: 'Test',
      birthDay: '1960-02-03',
      phone: null,
    });
    await account(at, { email: 'p@test.invalid', role: 'patient', patientId });
    const patient = await signedIn('p@test.invalid');
    expect((await post(patient, '/passkey/begin')).json).toMatchObject({ problem: 'not-yours' });
  });

  it.each(['p384', 'rsa1024'] as const)('a key of kind %s is not taken', async (kind) => {
    expect((await add(await signedIn(), passkeyDevice(origin, kind))).status).toBe(400);
  });

  it.each<[string, Said]>([
    ['another page', { origin: 'https://elsewhere.example' }],
    ['another host', { host: 'elsewhere.example' }],
    ['a person who was not asked for PIN, finger or face', { flags: 0x41 }],
    ['no key', { flags: 0x05 }],
  ])('an answer for %s is not taken', async (_, said) => {
    expect((await add(await signedIn(), passkeyDevice(origin), said)).status).toBe(400);
  });

  it.each(['packed', 'tpm', 'fido-u2f', 'android-key', 'apple', 'something-new'])(
    'a certificate of a maker, of format %s, is not taken, and no address in it is asked',
    async (format) => {
      const asked = vi.spyOn(globalThis, 'fetch');
      expect((await add(await signedIn(), passkeyDevice(origin), { format })).status).toBe(400);
      expect(asked).not.toHaveBeenCalled();
      asked.mockRestore();
    },
  );

  it('a challenge given to one person adds nothing to another', async () => {
    await account(at, { email: 'd@test.invalid' });
    const challenge = await challengeOf(await signedIn(), '/passkey/begin');
    const other = await signedIn('d@test.invalid');
    const sent = { name: 'Theirs', answer: JSON.stringify(passkeyDevice(origin).make(challenge)) };
    expect((await post(other, '/passkey/add', sent)).status).toBe(400);
  });

  it('one that is known already is not added again, also not by somebody else', async () => {
    await account(at, { email: 'd@test.invalid' });
    const device = passkeyDevice(origin);
    await add(await signedIn(), device);
    expect((await add(await signedIn('d@test.invalid'), device)).status).toBe(409);
    expect((await use(device)).person?.userId).toBe(userId);
  });
});

describe('where passkeys are', () => {
  it.each([
    ['http://127.0.0.1:3000', null],
    ['http://[::1]:3000', null],
    ['http://localhost:3000', 'localhost'],
    ['https://clinic.example', 'clinic.example'],
  ])('%s: bound to %s', (address, host) => {
    expect(passkeyPlace(address)?.host ?? null).toBe(host);
  });

  it('at an address that is a number there are none', async () => {
    testRuntime(store);
    const answer = await newBrowser().post(POST, '/api/auth/passkey/ask', {});
    expect(answer.status).toBe(404);
  });
});
