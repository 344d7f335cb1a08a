/** A phone set up and opened by forms alone: the same door, the same tries, and no PIN shown again. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { invitationsOf } from '#data/accounts/invitations.ts';
import type { Runtime } from '#server/runtime.ts';
import { personOf } from '#server/sign-in/person.ts';
import { postForm, shownTo } from '#tests/api/forms/posted.ts';
import { type Setting, twoClinics } from '#tests/support/clinic.ts';
import { enrolled, goodPin, invite, newPhone } from '#tests/support/phones.ts';
import { type Browser, testOrigin, testRuntime } from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';

let setting: Setting;
let at: Runtime;
beforeEach(async () => {
  const store = freshStore();
  setting = await twoClinics(store);
  at = testRuntime(store);
});
afterEach(() => setting.store.close());

const textsOf = async (phone: Browser) =>
  (await shownTo(at, phone)).flatMap(({ problems }) => problems.map(({ text }) => text));

describe('a phone set up by forms alone', () => {
  it('takes the code, then the PIN, and is signed in', async () => {
    const phone = newPhone();
    const { code } = await invite(setting);
    expect((await postForm(at, phone, 'enrol-code', { code })).location).toBe(`${testOrigin}/enrol`);
    const done = await postForm(at, phone, 'enrol-pin', { pin: goodPin, again: goodPin });
    expect(done.location).toBe(`${testOrigin}/?signed-in`);
    expect((await personOf(at, phone.headers()))?.patientId).toBe(setting.patientId);
  });

  it('keeps a wrong code in its box, in every language told what is wrong', async () => {
    const phone = newPhone();
    await postForm(at, phone, 'enrol-code', { code: 'WRONG-CODE1' });
    const [shown] = await shownTo(at, phone);
    expect(shown?.typed).toEqual({ code: 'WRONG-CODE1' });
    expect(shown?.problems[0]?.text).toMatchObject({ en: expect.any(String), de: expect.any(String) });
    expect((await invitationsOf(setting.clinician, setting.patientId)).map(({ state }) => state)).toEqual([]);
  });

  it('asks for the same PIN twice, and shows neither again', async () => {
    const phone = newPhone();
    await postForm(at, phone, 'enrol-code', { code: (await invite(setting)).code });
    await postForm(at, phone, 'enrol-pin', { pin: goodPin, again: '482916' });
    const [shown] = await shownTo(at, phone);
    expect(shown?.problems.map(({ field }) => field)).toEqual(['again']);
    expect(JSON.stringify(shown)).not.toMatch(/48291/);
  });
});

describe('a phone opened by a form alone', () => {
  it('counts a wrong PIN as the page does, and no slip of typing', async () => {
    const phone = await enrolled(setting);
    for (let tries = 0; tries < 6; tries += 1) await postForm(at, phone, 'pin', { pin: '12' });
    await postForm(at, phone, 'pin', { pin: '000000' });
    expect(JSON.stringify(await textsOf(phone))).toContain('4');
    const done = await postForm(at, phone, 'pin', { pin: goodPin });
    expect(done.location).toBe(`${testOrigin}/?signed-in`);
  });
});
