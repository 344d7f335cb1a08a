/** A token without any script of the page: made by a form alone, and told once. */
import { afterEach, beforeEach, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { tokenBySecret, tokensOf } from '#data/programs/tokens.ts';
import type { Runtime } from '#server/runtime.ts';
import { postForm, shownTo } from '#tests/api/forms/posted.ts';
import { accessOf, clinicNamed } from '#tests/support/clinic.ts';
import { account, type Browser, browser, testPassphrase, testRuntime } from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
let at: Runtime;
let from: Browser;
beforeEach(async () => {
  store = freshStore();
  await clinicNamed(store, 'a');
  at = testRuntime(store, { DEMO: '1' });
  await account(at, { email: 'm@test.invalid', role: 'administrator' });
  from = browser('203.0.113.19');
  await postForm(at, from, 'sign-in', { email: 'm@test.invalid', passphrase: testPassphrase });
});
afterEach(() => store.close());

const kept = () => tokensOf(accessOf(store, 'a', 'reader'));
const typed = { 'program-name': 'Booking', 'program-days': '30', 'scope-people': 'yes' };

it('is made and told on the next page, and what was told opens', async () => {
  await postForm(at, from, 'program-token', typed);
  expect(await kept()).toMatchObject([{ name: 'Booking', scopes: ['people'] }]);
  const told = JSON.stringify(await shownTo(at, from));
  const [secret = ''] = /loadgate_[\w-]{43}/.exec(told) ?? [];
  expect(await tokenBySecret(store, secret, Date.now())).toMatchObject({ name: 'Booking' });
});

it('is not made where nothing is ticked, and what was typed comes back', async () => {
  await postForm(at, from, 'program-token', { ...typed, 'scope-people': '' });
  expect(await kept()).toEqual([]);
  const told = JSON.stringify(await shownTo(at, from));
  expect(told).toContain('Choose at least one thing');
  expect(told).toContain('Booking');
});
