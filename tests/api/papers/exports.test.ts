/** A record in open formats over HTTP: the patient’s own copy without asking anybody, and the clinic’s of its own patients. */

import { strFromU8, unzipSync } from 'fflate';
import ICAL from 'ical.js';
import { afterAll, beforeAll, describe, expect, it } from 'vitest';
import { flushReads } from '#data/audit/audit.ts';
import type { Store } from '#data/database/store.ts';
import { faultsOfBundle } from '#exchange/fhir/walker/references.ts';
import { asClinician } from '#tests/support/callers.ts';
import { type Setting, signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { enrolled } from '#tests/support/phones.ts';
import {
  account,
  type Browser,
  browser,
  testOrigin,
  testPassphrase,
  testRuntime,
} from '#tests/support/server.ts';
import { freshStore } from '#tests/support/store.ts';
import { POST } from '../../../src/app/api/auth/[...all]/route.ts';
import { GET } from '../../../src/app/exports/[format]/route.ts';

let store: Store;
let setting: Setting;
let phone: Browser;
let desk: Browser;
beforeAll(async () => {
  store = freshStore();
  setting = await twoClinics(store);
  // In a demo nobody is asked for one-time codes.
  const at = testRuntime(store, { DEMO: '1' });
  await signedExercise(setting.clinician, setting.patientId);
  phone = await enrolled(setting);
  await account(at, { email: 'desk@clinic.example' });
  desk = browser('192.0.2.201');
  await desk.post(POST, '/api/auth/sign-in/email', {
    email: 'desk@clinic.example',
    password: testPassphrase,
  });
});
afterAll(() => store.close());

const ask = (from: Browser, address: string, headers: Readonly<Record<string, string>> = {}) => {
  const sent = from.headers();
  for (const [name, value] of Object.entries(headers)) sent.set(name, value);
  const [format = ''] = address.split('?');
  return GET(new Request(`${testOrigin}/exports/${address}`, { headers: sent }), {
    params: Promise.resolve({ format }),
  });
};

const audited = async () => {
  await flushReads(store);
  return store.reader.client
    .prepare(
      "SELECT act, subject, patient_id AS patientId FROM audit WHERE subject LIKE '%exports.files' ORDER BY rowid DESC LIMIT 1",
    )
    .get();
};

const filesOf = async (response: Response): Promise<Readonly<Record<string, string>>> =>
  Object.fromEntries(
    Object.entries(unzipSync(new Uint8Array(await response.arrayBuffer()))).map(([name, bytes]) => [
      name,
      strFromU8(bytes),
    ]),
  );

describe('the patient’s own copy', () => {
  it('is the whole record as FHIR that fits the standard, to save, kept nowhere, and audited', async () => {
    const response = await ask(phone, 'fhir');
    expect(response.status).toBe(200);
    expect(response.headers.get('content-type')).toContain('application/fhir+json');
    expect(response.headers.get('content-disposition')).toMatch(
      /^attachment; filename="record-.*\.fhir\.json"$/,
    );
    expect(response.headers.get('cache-control')).toBe('no-store');
    const bundle = await response.json();
    expect(faultsOfBundle(bundle)).toEqual([]);
    expect(JSON.stringify(bundle)).toContain(`Patient/${setting.patientId}`);
    expect(await audited()).toMatchObject({
      act: 'read',
      subject: 'patient.exports.files',
      patientId: setting.patientId,
    });
  });

  it('is a ZIP file of tables with their dictionary, of this person alone', async () => {
    const files = await filesOf(await ask(phone, 'csv'));
    expect(Object.keys(files)).toEqual(
      expect.arrayContaining(['dictionary.csv', 'prescription.csv', 'read-me.txt']),
    );
    const all = Object.values(files).join('');
    for (const other of [setting.otherPatientId, setting.strangerPatientId]) expect(all).not.toContain(other);
    expect(Object.keys(files).filter((name) => /incident|device|invitation|auth/.test(name))).toEqual([]);
  });

  it('is every row as JSON without asking anybody: consent is for handing it to others', async () => {
    const response = await ask(phone, 'json');
    expect(response.status).toBe(200);
    expect(response.headers.get('content-disposition')).toMatch(/filename="record-.*\.json"$/);
    const record = await response.json();
    expect(record).toMatchObject({ format: 'loadgate-record', patientId: setting.patientId });
    expect(record.tables.prescription).toHaveLength(1);
    await expect(
      asClinician(setting.clinician).clinician.recordFile.make({
        patientId: setting.patientId,
        handedTo: 'Another clinic',
      }),
    ).rejects.toThrow(/has not consented/);
  });

  it('says in the language asked for what the tables are', async () => {
    const files = await filesOf(await ask(phone, 'csv?language=de'));
    expect(files['read-me.txt']).toContain('Leer heißt nicht beantwortet');
  });

  it('has a calendar in the language asked for', async () => {
    const text = await (await ask(phone, 'calendar?language=de')).text();
    const calendar = new ICAL.Component(ICAL.parse(text));
    expect(calendar.getFirstPropertyValue('prodid')).toBe('-//Loadgate//Calendar//DE');
    const titles = calendar.getAllSubcomponents('vevent').map((part) => new ICAL.Event(part).summary);
    expect(new Set(titles)).toEqual(new Set(['Fragen am Morgen', 'Übungen']));
  });

  it('is always of the person who asks, whoever is named', async () => {
    const bundle = await (await ask(phone, `fhir?patient=${setting.otherPatientId}`)).text();
    expect(bundle).toContain(setting.patientId);
    expect(bundle).not.toContain(setting.otherPatientId);
  });

  it('is given to nobody who is not signed in, to no other site, and in no other format', async () => {
    expect((await ask(browser('192.0.2.202'), 'fhir')).status).toBe(401);
    expect((await ask(phone, 'fhir', { 'sec-fetch-site': 'cross-site' })).status).toBe(403);
    expect((await ask(phone, 'xml')).status).toBe(404);
    expect((await ask(phone, 'calendar?language=xx')).status).toBe(404);
  });
});

describe('the copy made at the desk', () => {
  it('is of a patient of the clinic, and audited', async () => {
    const response = await ask(desk, `fhir?patient=${setting.patientId}`);
    expect(response.status).toBe(200);
    expect(await audited()).toMatchObject({
      subject: 'clinician.exports.files',
      patientId: setting.patientId,
    });
  });

  it('is of nobody from another clinic, and a calendar needs something planned', async () => {
    const stranger = await ask(desk, `fhir?patient=${setting.strangerPatientId}`);
    expect(stranger.status).toBeGreaterThanOrEqual(400);
    expect(await stranger.text()).not.toContain('resourceType');
    const empty = await ask(desk, `calendar?patient=${setting.otherPatientId}`);
    expect([empty.status, await empty.text()]).toEqual([
      404,
      expect.stringContaining('Nothing is planned yet'),
    ]);
  });
});
