import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { isGoodPin } from '#data/accounts/phone-pin.ts';
import { flushReads } from '#data/audit/audit.ts';
import type { Runtime } from '#server/runtime.ts';
import { personOf } from '#server/sign-in/person.ts';
import { asClinician, asPerson } from '#tests/support/callers.ts';
import { accessOf, type Setting, twoClinics } from '#tests/support/clinic.ts';
import { enrolled as enrolledOne, invite as inviteOne, newPhone, send } from '#tests/support/phones.ts';
import { testRuntime } from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';

let setting: Setting;
let at: Runtime;
const invite = () => inviteOne(setting);
const enrolled = () => enrolledOne(setting);

beforeEach(async () => {
  const store = freshStore();
  setting = await twoClinics(store);
  at = testRuntime(store);
});
afterEach(() => setting.store.close());

describe('an invitation handed to a patient', () => {
  it('enrols the phone it is typed into, then asks for a PIN, then opens the own record and no other', async () => {
    const phone = newPhone();
    const { code } = await invite();
    expect(code).toMatch(/^[0-9A-HJKMNP-TV-Z]{5}-[0-9A-HJKMNP-TV-Z]{5}$/);
    expect((await send(phone, 'accept', { code })).json).toEqual({ enrolled: true });
    expect(await personOf(at, phone.headers())).toBeNull();
    expect((await send(phone, 'choose-pin', { pin: '482915' })).json).toEqual({ signedIn: true });
    expect(await personOf(at, phone.headers())).toMatchObject({
      role: 'patient',
      patientId: setting.patientId,
      clinicId: 'a',
      setUp: 'done',
    });
  });

  it('is typed as sore fingers type it: small letters, spaces, O for 0, I and L for 1', async () => {
    const { code } = await invite();
    const typed = ` ${code.toLowerCase().replace('-', '  ').replaceAll('0', 'o').replaceAll('1', 'l')} `;
    expect((await send(newPhone(), 'accept', { code: typed })).status).toBe(200);
  });

  it('is used once', async () => {
    const { code } = await invite();
    const answers = [await send(newPhone(), 'accept', { code }), await send(newPhone(), 'accept', { code })];
    expect(answers.map((one) => one.status)).toEqual([200, 403]);
  });

  it('is used by one phone only when two try at the same moment', async () => {
    const { code } = await invite();
    const answers = await Promise.all([1, 2, 3, 4].map(() => send(newPhone(), 'accept', { code })));
    expect(answers.map((one) => one.status).sort()).toEqual([200, 403, 403, 403]);
  });

  it('runs out after the days the clinic set, is withdrawn by hand, and by the next one', async () => {
    const first = await invite();
    setting.store.writer.client.exec(`UPDATE invitation SET expires_at = ${Date.now() - 1}`);
    expect((await send(newPhone(), 'accept', { code: first.code })).status).toBe(403);
    const second = await invite();
    const third = await invite();
    expect((await send(newPhone(), 'accept', { code: second.code })).status).toBe(403);
    const { clinician: staff } = asClinician(setting.clinician);
    const { patientId } = setting;
    const { invitations } = await staff.phones.list({ patientId });
    expect(invitations.map((one) => one.state)).toEqual(['open', 'withdrawn', 'run-out']);
    await staff.phones.withdraw({ patientId, invitationId: invitations[0]!.id });
    expect((await send(newPhone(), 'accept', { code: third.code })).status).toBe(403);
    expect(third.expiresAt - Date.now()).toBeGreaterThan(6.9 * 86_400_000);
  });

  it('is nowhere in the file', async () => {
    const { code } = await invite();
    const rows = JSON.stringify(setting.store.reader.client.prepare('SELECT * FROM invitation').all());
    expect(rows.includes(code) || rows.includes(code.replace('-', ''))).toBe(false);
  });
});

describe('the PIN of a phone', () => {
  it.each([
    ['482915', true],
    ['48291', false],
    ['4829155', false],
    ['48291a', false],
    ['111111', false],
    ['121212', false],
    ['123456', false],
    ['654321', false],
    ['024680', true],
  ])('%s may be chosen: %s', (pin, expected) => {
    expect(isGoodPin(pin)).toBe(expected);
  });

  it('opens on the enrolled phone only', async () => {
    const phone = await enrolled();
    await send(phone, 'sign-in', { pin: '482915' });
    const other = newPhone();
    expect((await send(other, 'sign-in', { pin: '482915' })).json).toMatchObject({ problem: 'no-phone' });
    other.cookies.set('loadgate.phone', `${phone.cookies.get('loadgate.phone')!.split('.')[0]}.made-up`);
    expect((await send(other, 'sign-in', { pin: '482915' })).json).toMatchObject({ problem: 'no-phone' });
  });

  it('a fourth wrong try still leaves one, the fifth needs a new invitation, and the right PIN comes too late', async () => {
    const phone = await enrolled();
    const answers: unknown[] = [];
    for (let tried = 0; tried < 5; tried += 1) {
      answers.push((await send(phone, 'sign-in', { pin: '000000' })).json.message);
    }
    expect(answers[3]).toContain('1 try left');
    expect(answers[4]).toContain('new invitation');
    expect((await send(phone, 'sign-in', { pin: '482915' })).json).toMatchObject({
      problem: 'too-many-tries',
    });
    const again = newPhone();
    await send(again, 'accept', { code: (await invite()).code });
    expect((await send(again, 'choose-pin', { pin: '593046' })).status).toBe(200);
  });

  it('twenty tries at the same moment are still five', async () => {
    const phone = await enrolled();
    const pins = Array.from({ length: 20 }, (_, place) => (place === 19 ? '482915' : '000000'));
    const answers = await Promise.all(pins.map((pin) => send(phone, 'sign-in', { pin })));
    expect(answers.filter((one) => one.status === 200)).toHaveLength(0);
    expect(answers.filter((one) => one.json.problem === 'wrong-pin')).toHaveLength(4);
  });

  it('a right PIN gives all five tries back', async () => {
    const phone = await enrolled();
    for (let tried = 0; tried < 4; tried += 1) await send(phone, 'sign-in', { pin: '000000' });
    expect((await send(phone, 'sign-in', { pin: '482915' })).status).toBe(200);
    expect((await send(phone, 'sign-in', { pin: '000000' })).json.message).toContain('4 tries left');
  });

  it('is chosen once: who finds the phone cannot choose another', async () => {
    const phone = await enrolled();
    expect((await send(phone, 'choose-pin', { pin: '593046' })).json).toMatchObject({
      problem: 'pin-chosen',
    });
  });
});

describe('a lost phone, and leaving', () => {
  it('a phone the clinic ended opens nothing, and its sign-ins end at once', async () => {
    const phone = await enrolled();
    const { clinician: staff } = asClinician(setting.clinician);
    const { patientId } = setting;
    const { phones } = await staff.phones.list({ patientId });
    expect(phones).toMatchObject([{ state: 'in-use' }]);
    await staff.phones.endPhone({ patientId, phoneId: phones[0]!.id });
    expect(await personOf(at, phone.headers())).toBeNull();
    expect((await send(phone, 'sign-in', { pin: '482915' })).json).toMatchObject({ problem: 'no-phone' });
  });

  it('signing out everywhere ends every session of the person and nobody else’s', async () => {
    const phone = await enrolled();
    const second = newPhone();
    await send(second, 'accept', { code: (await invite()).code });
    await send(second, 'choose-pin', { pin: '593046' });
    const person = (await personOf(at, phone.headers()))!;
    const self = asPerson(accessOf(setting.store, 'a', person.userId), { ...person });
    expect(await self.account.sessions()).toHaveLength(2);
    const other = accessOf(setting.store, 'a', 'somebody-else');
    expect(await asPerson(other, {}).account.endEverywhere()).toBe(0);
    expect(await self.account.endEverywhere()).toBe(2);
    expect([await personOf(at, phone.headers()), await personOf(at, second.headers())]).toEqual([null, null]);
  });

  it('every step is in the audit, with the patient and no PIN', async () => {
    const phone = await enrolled();
    await send(phone, 'sign-in', { pin: '000000' });
    await send(phone, 'sign-in', { pin: '482915' });
    await flushReads(setting.store);
    const rows = setting.store.reader.client
      .prepare("SELECT act, subject, detail FROM audit WHERE patient_id = ? AND clinic_id = 'a'")
      .all(setting.patientId) as { act: string; subject: string }[];
    expect(rows.map((row) => `${row.act} ${row.subject}`)).toEqual([
      'write patient',
      'write invitation',
      'sign-in phone-enrolled',
      'sign-in pin-chosen',
      'refused wrong-pin',
      'sign-in phone-opened',
    ]);
    expect(JSON.stringify(rows)).not.toMatch(/482915|000000/);
  });
});
