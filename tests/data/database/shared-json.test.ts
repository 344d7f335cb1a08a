import { afterEach, beforeEach, expect, it } from 'vitest';
import { verifyRows } from '#data/audit/verify-rows.ts';
import { saveSettings } from '#data/clinic/clinic-settings.ts';
import type { Store } from '#data/database/store.ts';
import { replayableDecisions } from '#data/decision/replayable-decisions.ts';
import { settingsIdOf } from '#data/decision/settings-stored.ts';
import { decisionSettings } from '#data/schema/schema.ts';
import { accessOf, auditKey, signedExercise, start, twoClinics } from '#tests/support/clinic.ts';
import { sendSession } from '#tests/support/sore-knee.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
beforeEach(() => {
  store = freshStore();
});
afterEach(() => store.close());

it('each decision keeps the clinic choices it was taken under; equal ones are held once and cannot be changed', async () => {
  const { clinician, patientId } = await twoClinics(store);
  const line = await signedExercise(clinician, patientId);
  const at = (hours: number) => accessOf(store, 'a', 'clinician-a', start + hours * 3_600_000);
  await sendSession(at(1), patientId, line, 2);
  await sendSession(at(2), patientId, line, 3);
  await saveSettings(at(3), { 'baseline-expiry': 28 }, 'Local rule');
  await sendSession(at(4), patientId, line, 2);
  const [first, second, third] = (await replayableDecisions(at(5), patientId, '2026-01-01')).map(
    (row) => row.settings,
  );
  expect(second).toBe(first);
  expect([first!['baseline-expiry'], third!['baseline-expiry']]).toEqual([42, 28]);
  expect(() => Object.assign(first!, { 'baseline-expiry': 9 })).toThrow(TypeError);
});

it('settings that decisions rest on are stored once, whatever their order, and the audit vouches for them', async () => {
  const { clinician, stranger, patientId } = await twoClinics(store);
  const line = await signedExercise(clinician, patientId);
  const at = (hours: number) => accessOf(store, 'a', 'clinician-a', start + hours * 3_600_000);
  for (const hours of [1, 2, 3]) await sendSession(at(hours), patientId, line, hours);
  await saveSettings(at(4), { 'baseline-expiry': 28 }, 'Local rule');
  await sendSession(at(5), patientId, line, 5);
  await saveSettings(at(6), { 'baseline-expiry': null }, 'As it was');
  await sendSession(at(7), patientId, line, 6);
  const rows = await store.read.select().from(decisionSettings);
  expect(rows.map(({ clinicId }) => clinicId)).toEqual(['a', 'a']);
  const reversed = Object.fromEntries(Object.entries(rows[0]!.settings).reverse());
  expect(settingsIdOf('a', reversed)).toBe(rows[0]!.id);
  expect(settingsIdOf(stranger.clinicId, reversed)).not.toBe(rows[0]!.id);
  expect((await verifyRows(store, auditKey, ['a', 'b'])).findings).toEqual([]);
});
