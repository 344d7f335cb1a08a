/** A record handed on as a file: who may, after what, and that it is whole. */

import { createHash } from 'node:crypto';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { proposedWording } from '#core/episode/consent.ts';
import { cautionWording } from '#core/prescribing/cautions/wording.ts';
import { flushReads } from '#data/audit/audit.ts';
import type { Store } from '#data/database/store.ts';
import { leftOut } from '#data/patients/record-tables.ts';
import { recordSentences } from '#exchange/json/record-sentences.ts';
import { cautionText } from '#messages/cautions.ts';
import { asClinician, asPatient, asPerson } from '#tests/support/callers.ts';
import { accessOf, type Setting, signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

const agree = (setting: Setting, act: 'given' | 'withdrawn') =>
  asClinician(setting.clinician).clinician.consents.record({
    patientId: setting.patientId,
    kind: 'export',
    act,
    ...proposedWording,
  });

describe('handing a record on as a file', () => {
  let store: Store;
  let setting: Setting;
  beforeAll(async () => {
    store = freshStore();
    setting = await twoClinics(store);
    await signedExercise(setting.clinician, setting.patientId);
  });
  afterAll(() => store.close());

  const make = (person = {}) =>
    asPerson(setting.clinician, person).clinician.recordFile.make({
      patientId: setting.patientId,
      handedTo: 'Dr Invented, as she asked',
    });
  const count = (table: string) =>
    (store.reader.client.prepare(`SELECT count(*) AS n FROM ${table}`).get() as { n: number }).n;

  it('needs the patient’s agreement: nobody asked is not agreed, and taken back is not agreed', async () => {
    await expect(make()).rejects.toMatchObject({ problem: 'refused' });
    await agree(setting, 'given');
    await expect(make()).resolves.toMatchObject({ text: expect.stringContaining('loadgate-record') });
    await agree(setting, 'withdrawn');
    await expect(make()).rejects.toMatchObject({ problem: 'refused' });
    await agree(setting, 'given');
  });

  it('needs the passphrase given within ten minutes; refused, nothing is made and the refusal is audited', async () => {
    const before = count('record_file');
    await expect(make({ provedAt: Date.now() - 601_000 })).rejects.toMatchObject({
      problem: 'fresh-sign-in',
    });
    expect(count('record_file')).toBe(before);
    await flushReads(store);
    const [last] = store.reader.client
      .prepare("SELECT act, subject FROM audit WHERE clinic_id = 'a' ORDER BY sequence DESC LIMIT 1")
      .all();
    expect(last).toEqual({ act: 'refused', subject: 'clinician.recordFile.make' });
  });

  it('leaves a row of the audit before anybody has the file, with its digest and no word of it', async () => {
    const { text, digest } = await make();
    expect(digest).toBe(createHash('sha256').update(text).digest('hex'));
    const [last] = store.reader.client
      .prepare(
        "SELECT act, subject, patient_id, detail FROM audit WHERE clinic_id = 'a' ORDER BY sequence DESC LIMIT 1",
      )
      .all() as { detail: string }[];
    expect(last).toMatchObject({ act: 'read', subject: 'record-file', patient_id: setting.patientId });
    expect(JSON.parse(last!.detail)).toMatchObject({ rows: expect.any(Number), digest });
    expect(last!.detail).not.toMatch(/Invented/);
  });

  it('the clinic and the patient see to whom it went', async () => {
    const { handedOn } = await asClinician(setting.clinician).clinician.recordFile.list({
      patientId: setting.patientId,
    });
    expect(handedOn[0]).toMatchObject({ handedTo: 'Dr Invented, as she asked' });
    const own = asPatient(accessOf(store, 'a', 'patient-user', setting.clinician.now + 1), setting.patientId);
    const { lines } = await own.patient.access.list();
    expect(lines.flatMap((line) => line.handedTo)).toContain('Dr Invented, as she asked');
  });

  it('holds this person’s rows and nobody else’s, and no seal, passphrase or code', async () => {
    const { text } = await make();
    const file = JSON.parse(text);
    expect(file.tables.patient_identity).toHaveLength(1);
    expect(file.tables.prescription).toHaveLength(count('prescription'));
    for (const other of [setting.otherPatientId, setting.strangerPatientId])
      expect(text).not.toContain(other);
    expect(text).not.toMatch(/pinHash|secretSeal|codeSeal|password|backupCodes/);
  });

  it('says the caution of each row in every language, and by which number of its wording it was given', async () => {
    const { tables, sentences } = JSON.parse((await make()).text);
    const keys = tables.prescription.flatMap((row: { cautions: readonly { patient: { key: string } }[] }) =>
      row.cautions.map(({ patient }) => `caution ${patient.key}`),
    );
    expect(keys).toEqual(['caution stop-signs']);
    expect(sentences).toEqual({ 'caution stop-signs': cautionText({ key: 'stop-signs' }) });
    expect(tables.prescription[0].cautionWording).toBe(cautionWording);
  });

  it('holds every table with rows about a person, read from the file itself, or says why not', async () => {
    const tables = store.reader.client
      .prepare(
        "SELECT m.name FROM sqlite_master m JOIN pragma_table_info(m.name) c ON c.name = 'patient_id' WHERE m.type = 'table' ORDER BY 1",
      )
      .all() as { name: string }[];
    expect(tables.length).toBeGreaterThan(30);
    const { tables: told, leftOut: untold } = JSON.parse((await make()).text);
    // A clinic's, and in the file for the decisions that name it.
    const named = [...tables.map(({ name }) => name), 'decision_settings'];
    expect([...Object.keys(told), ...Object.keys(untold)].sort()).toEqual(named.sort());
    expect(untold).toEqual(leftOut);
  });
});

describe('the sentences of a record', () => {
  it('are found by key and values, where one caution says more than one thing', () => {
    const tables = {
      prescription: [
        {
          cautions: [
            { patient: { key: 'not-checked', things: ['clots', 'bone-strength'] } },
            { patient: { key: 'limit', kind: 'range', joint: 'left-knee', author: 'Dr Invented' } },
          ],
        },
      ],
      proposal: [
        {
          cautions: [{ patient: { key: 'not-checked', things: ['clots'] } }],
          changeForPatient: { exerciseId: 'curl-seated', kind: 'same' },
        },
      ],
      morning: [{ day: '2026-03-09' }],
    };
    const sentences = recordSentences(tables);
    expect(Object.keys(sentences)).toEqual([
      'caution not-checked clots, bone-strength',
      'caution limit range, left-knee, Dr Invented',
      'caution not-checked clots',
      'dose-change {"exerciseId":"curl-seated","kind":"same"}',
    ]);
    expect(sentences['caution limit range, left-knee, Dr Invented']?.de).toContain('Dr Invented');
  });
});
