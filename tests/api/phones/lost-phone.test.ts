/** A patient ends a phone she has lost, from another phone of hers or from a browser. */
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest';
import { tryPin } from '#data/accounts/phone-pin.ts';
import { endPhone, phoneOf } from '#data/accounts/phones.ts';
import { verifyChain } from '#data/audit/verify-chain.ts';
import { phoneEntriesKey } from '#server/phone-entries.ts';
import type { Runtime } from '#server/runtime.ts';
import { personOf } from '#server/sign-in/person.ts';
import { asClinician } from '#tests/support/callers.ts';
import { auditKey, morningEntry, type Setting, twoClinics } from '#tests/support/clinic.ts';
import { enrolled, goodPin, newPhone, send } from '#tests/support/phones.ts';
import { account, type Browser, testPassphrase, testRuntime } from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';
import { encryptEntry } from '#ui/on-device/encrypt-entry.ts';
import { POST as signInPost } from '../../../src/app/api/auth/[...all]/route.ts';
import { POST as entriesPost } from '../../../src/app/api/entries/route.ts';
import { POST as trpcPost } from '../../../src/app/api/trpc/[trpc]/route.ts';

let setting: Setting;
let at: Runtime;
let lost: Browser;
let other: Browser;
beforeEach(async () => {
  const store = freshStore();
  setting = await twoClinics(store);
  at = testRuntime(store);
  lost = await enrolled(setting);
  other = await enrolled(setting);
});
afterEach(() => setting.store.close());

const idOf = (phone: Browser): string => phone.cookies.get('loadgate.phone')!.split('.')[0]!;
const end = (from: Browser, phoneId: string) =>
  from.post(trpcPost, '/api/trpc/patient.phones.end', { phoneId });
const answerOf = ({ json }: { readonly json: Record<string, unknown> }) => {
  const { result, error } = json as {
    result?: { data: { ended: string } };
    error?: { data: { problem: string } };
  };
  return result?.data.ended ?? error?.data.problem;
};
const phonesOf = () => asClinician(setting.clinician).clinician.phones.list({ patientId: setting.patientId });
const endedBy = async (phoneId: string) => (await phonesOf()).phones.find(({ id }) => id === phoneId)!.ended;
/** As if passphrase or PIN had last been given so long ago, in every open sign-in. */
const provedAgo = (minutes: number) =>
  setting.store.writer.client.exec(
    `UPDATE auth_session SET created_at = ${Date.now() - minutes * 60_000}, proved_at = NULL`,
  );

const sendMorning = async (from: Browser, entryId: string) => {
  const encrypted = await encryptEntry(
    phoneEntriesKey(at.keys, 'a'),
    setting.patientId,
    morningEntry({ entryId }),
  );
  const body = { kind: 'morning', entryId, sentAt: at.clock.now(), encrypted };
  return (await from.post(entriesPost, '/api/entries', body)).status;
};

describe('a phone that was ended as lost', () => {
  it.each(['patient', 'clinic'] as const)(
    'by the %s opens nothing, is signed out at once, and what it sends is refused',
    async (by) => {
      expect(await sendMorning(lost, 'before')).toBe(200);
      const { patientId, clinician } = setting;
      const phoneId = idOf(lost);
      if (by === 'patient') expect(answerOf(await end(other, phoneId))).toBe('ended');
      else await asClinician(clinician).clinician.phones.endPhone({ patientId, phoneId });
      expect(await personOf(at, lost.headers())).toBeNull();
      expect((await send(lost, 'sign-in', { pin: goodPin })).json).toMatchObject({ problem: 'no-phone' });
      expect(await sendMorning(lost, 'after')).toBe(401);
      expect(await sendMorning(other, 'from-the-other')).toBe(200);
      expect(await endedBy(phoneId)).toEqual({ at: expect.any(Number), by });
    },
  );

  it('stands in the audit once, with who ended it, and the chain holds', async () => {
    const { userId } = (await personOf(at, other.headers()))!;
    await end(other, idOf(lost));
    await end(other, idOf(lost));
    const rows = setting.store.reader.client
      .prepare("SELECT actor_id AS who, subject_id AS phone, detail FROM audit WHERE subject = 'phone-ended'")
      .all();
    expect(rows).toEqual([{ who: userId, phone: idOf(lost), detail: '{"by":"patient"}' }]);
    expect(await verifyChain(setting.store, auditKey, 'a')).toMatchObject({ ok: true });
  });

  it('before is answered as such, and stays ended by whom and when it was', async () => {
    const { patientId, clinician } = setting;
    await asClinician(clinician).clinician.phones.endPhone({ patientId, phoneId: idOf(lost) });
    const first = await endedBy(idOf(lost));
    expect(answerOf(await end(other, idOf(lost)))).toBe('ended-before');
    expect(await endedBy(idOf(lost))).toEqual(first);
  });

  it('while its PIN is being checked is not opened by it', async () => {
    const { store, clinician, patientId } = setting;
    const phone = (await phoneOf(store, lost.cookies.get('loadgate.phone')!))!;
    const opening = tryPin({ store, auditKey, now: at.clock.now() }, phone, goodPin);
    expect(await endPhone(clinician, patientId, phone.id, 'clinic')).toBe('ended');
    expect(await opening).toEqual({ is: 'ended' });
  });

  it('once its PIN was found right, before it is signed in, is not signed in', async () => {
    const { clinician, patientId } = setting;
    const { internalAdapter } = await at.auth.$context;
    const findUserById = internalAdapter.findUserById.bind(internalAdapter);
    const between = vi.spyOn(internalAdapter, 'findUserById').mockImplementationOnce(async (id) => {
      await endPhone(clinician, patientId, idOf(lost), 'clinic');
      return findUserById(id);
    });
    lost.cookies.delete('loadgate.session_token');
    expect((await send(lost, 'sign-in', { pin: goodPin })).json).toMatchObject({ problem: 'no-phone' });
    expect(between).toHaveBeenCalled();
    const open = setting.store.reader.client.prepare('SELECT 1 FROM auth_session WHERE device_id = ?');
    expect(open.all(idOf(lost))).toEqual([]);
  });

  it('can be ended from a browser that is no phone', async () => {
    const desk = newPhone();
    await account(at, { email: 'p@test.invalid', role: 'patient', patientId: setting.patientId });
    const signedIn = { email: 'p@test.invalid', password: testPassphrase };
    await desk.post(signInPost, '/api/auth/sign-in/email', signedIn);
    expect(answerOf(await end(desk, idOf(lost)))).toBe('ended');
    expect((await send(desk, 'prove', { pin: goodPin })).json).toMatchObject({ problem: 'no-phone' });
  });
});

describe('nobody ends the phone', () => {
  it('of another person, or of another clinic', async () => {
    const others = await enrolled(setting, setting.otherPatientId);
    const strangers = { ...setting, clinician: setting.stranger, patientId: setting.strangerPatientId };
    const abroad = await enrolled(strangers);
    for (const phone of [others, abroad]) {
      expect(answerOf(await end(other, idOf(phone)))).toBe('not-found');
      expect(await personOf(at, phone.headers())).not.toBeNull();
      expect(answerOf(await end(phone, idOf(lost)))).toBe('not-found');
    }
    expect(answerOf(await end(other, 'made-up'))).toBe('not-found');
    expect(await endedBy(idOf(lost))).toBeNull();
  });

  it('by a sign-in proved more than ten minutes ago, until the PIN of the phone in the hand is given', async () => {
    provedAgo(11);
    expect(answerOf(await end(other, idOf(lost)))).toBe('fresh-sign-in');
    expect((await send(other, 'prove', { pin: '000000' })).json).toMatchObject({ problem: 'wrong-pin' });
    expect(answerOf(await end(other, idOf(lost)))).toBe('fresh-sign-in');
    expect((await send(other, 'prove', { pin: goodPin })).json).toEqual({ proved: true });
    expect(answerOf(await end(other, idOf(lost)))).toBe('ended');
  });

  it('by a PIN given on a phone whose own sign-in it is not', async () => {
    const borrowed = newPhone();
    borrowed.cookies.set('loadgate.session_token', other.cookies.get('loadgate.session_token')!);
    borrowed.cookies.set('loadgate.phone', lost.cookies.get('loadgate.phone')!);
    provedAgo(11);
    expect((await send(borrowed, 'prove', { pin: goodPin })).json).toMatchObject({ problem: 'no-phone' });
    expect(answerOf(await end(other, idOf(lost)))).toBe('fresh-sign-in');
  });

  it('by trying PINs in an open sign-in: the fifth wrong one is the last', async () => {
    const answers: unknown[] = [];
    for (let tried = 0; tried < 5; tried += 1)
      answers.push((await send(other, 'prove', { pin: '000000' })).json.problem);
    expect(answers).toEqual(['wrong-pin', 'wrong-pin', 'wrong-pin', 'wrong-pin', 'too-many-tries']);
    expect((await send(other, 'prove', { pin: goodPin })).json).toMatchObject({ problem: 'too-many-tries' });
  });
});

it('the list of a patient holds the own phones alone', async () => {
  await enrolled(setting, setting.otherPatientId);
  const { phones } = await phonesOf();
  expect(phones.map(({ id }) => id).toSorted()).toEqual([idOf(lost), idOf(other)].toSorted());
});
