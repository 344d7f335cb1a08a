/** Decisions as CSV: the settings each was made with stand beside it. */
import { parse } from 'csv-parse/sync';
import { afterAll, beforeAll, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { personFiles } from '#exchange/person-files.ts';
import { accessOf, type Setting, signedExercise, start, twoClinics } from '#tests/support/clinic.ts';
import { sendSession } from '#tests/support/sore-knee.ts';
import { freshStore } from '#tests/support/store.ts';
import { dayMs } from '#tests/support/working-patient.ts';

let store: Store;
let setting: Setting;
const at = (day: number) => accessOf(store, 'a', 'clinician-a', start + day * dayMs);

beforeAll(async () => {
  store = freshStore();
  setting = await twoClinics(store);
  const item = await signedExercise(setting.clinician, setting.patientId);
  for (const day of [0, 1]) await sendSession(at(day), setting.patientId, item, 6);
}, 60_000);
afterAll(() => store.close());

const filesOf = async (patientId: string) => {
  const files = await personFiles(at(2), patientId, 'csv', { language: 'en', hasMark: false });
  return (name: string): Record<string, string>[] =>
    parse(files.find((file) => file.name === name)?.text ?? '', { columns: true });
};

it('every decision leads to the settings it was made with, which hold what is stored, once each', async () => {
  const read = await filesOf(setting.patientId);
  const named = read('decision.csv').map(({ settingsId }) => settingsId);
  expect(named.length).toBeGreaterThan(1);
  const rows = read('decision_settings.csv');
  expect(rows.map(({ id }) => id).sort()).toEqual([...new Set(named)].sort());
  const { id, settings, patientId } = rows[0]!;
  const stored = store.reader.client.prepare('SELECT settings FROM decision_settings WHERE id = ?').get(id);
  expect(JSON.parse(settings!)).toEqual(JSON.parse((stored as { settings: string }).settings));
  expect(patientId).toBe(setting.patientId);
});

it('who has no decision has no settings of the clinic in the files', async () => {
  const read = await filesOf(setting.otherPatientId);
  expect(read('decision_settings.csv')).toEqual([]);
  expect(read('dictionary.csv').some(({ table }) => table === 'decision_settings')).toBe(true);
});
