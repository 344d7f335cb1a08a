/** A machine without any script of its page: added and corrected by forms alone. */
import { afterEach, beforeEach, expect, it } from 'vitest';
import { machinesOf } from '#data/clinic/machines.ts';
import type { Store } from '#data/database/store.ts';
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
  await account(at, { email: 'c@test.invalid' });
  await account(at, { email: 'm@test.invalid', role: 'administrator' });
  from = browser('203.0.113.9');
});
afterEach(() => store.close());

const signIn = (email: string) => postForm(at, from, 'sign-in', { email, passphrase: testPassphrase });
const kept = () => machinesOf(accessOf(store, 'a', 'reader'));
const typed = (prefix: string, lastKg: string) => ({
  [`${prefix}name`]: 'Leg press',
  [`${prefix}kind`]: 'leg-press',
  [`${prefix}loading`]: 'stack',
  [`${prefix}place`]: 'Gym',
  [`${prefix}firstKg`]: '10',
  [`${prefix}stepKg`]: '5',
  [`${prefix}lastKg`]: lastKg,
  [`${prefix}hasHalfStep`]: 'no',
});

it('is added, and corrected with the entry before it kept', async () => {
  await signIn('m@test.invalid');
  await postForm(at, from, 'machine', typed('machine-', '100'));
  const [added] = await kept();
  expect(added).toMatchObject({ name: 'Leg press', lastKg: 100, hasHalfStep: false, version: 1 });
  const about = { 'about.machineId': added!.id, 'about.seen': '1' };
  await postForm(at, from, 'machine-correction', { ...about, ...typed(`correct-${added!.id}-`, '120') });
  expect(await kept()).toMatchObject([{ id: added!.id, lastKg: 120, version: 2 }]);
});

it('is refused where no step leads to the last load, and what was typed comes back', async () => {
  await signIn('m@test.invalid');
  await postForm(at, from, 'machine', typed('machine-', '102'));
  const [shown] = await shownTo(at, from);
  expect(JSON.stringify(shown)).toMatch(/Type a last load that they reach/);
  expect(JSON.stringify(shown)).toContain('102');
  expect(await kept()).toEqual([]);
});

it('is not taken from a clinician who does not administer', async () => {
  await signIn('c@test.invalid');
  await postForm(at, from, 'machine', typed('machine-', '100'));
  expect(await kept()).toEqual([]);
});
