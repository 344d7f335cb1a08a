/** What goes out comes in again: exported, imported into an empty clinic and exported from there, it is the same. */
import type { Bundle, Observation } from 'fhir/r4';
import { afterEach, describe, expect, it } from 'vitest';
import type { Access } from '#data/access.ts';
import type { Store } from '#data/database/store.ts';
import { addPatient, patientOf } from '#data/patients/people.ts';
import { importedFiles } from '#exchange/csv/imported-files.ts';
import { bundleOf, checkedBundleOf } from '#exchange/fhir/bundle.ts';
import type { CsvKind } from '#exchange/import/csv/how.ts';
import { newPersonIn } from '#exchange/import/fhir/new-person.ts';
import { type Asked, takePrepared } from '#exchange/import/prepare.ts';
import { type PersonRecord, personRecordOf } from '#exchange/person-record.ts';
import { accessOf, clinicNamed, zone } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { wholeRecord } from '../whole-record.ts';
import { inScope } from './in-scope.ts';
import { asTable, bytesOf, readThrough } from './read-through.ts';

const record = (): PersonRecord => {
  const whole = wholeRecord();
  return { ...whole, patient: { ...whole.patient, phone: '210 000 001' } };
};

const stores: Store[] = [];
afterEach(() => {
  for (const store of stores.splice(0)) store.close();
});

const emptyClinic = async (): Promise<Access> => {
  const store = freshStore();
  stores.push(store);
  await clinicNamed(store, 'a');
  return accessOf(store, 'a', 'clinician-a');
};

const person = { givenName: 'Test', familyName: 'Person', birthDay: '1958-06-01', phone: null };

const take = async (access: Access, patientId: string, text: string, asked: Asked): Promise<void> => {
  const patient = (await patientOf(access, patientId))!;
  const read = await readThrough(text, asked, { patient, clinic: { zone }, today: access.day });
  await takePrepared(access, patientId, read, { confirmed: [] });
};

const recordOf = async (access: Access, patientId: string) => (await personRecordOf(access, patientId))!;

const throughEmptyClinic = async (bundle: Bundle): Promise<Bundle> => {
  const access = await emptyClinic();
  const text = JSON.stringify(bundle);
  const id = await addPatient(access, await newPersonIn(bytesOf(text), false, access.day));
  await take(access, id, text, { format: 'fhir', isLines: false });
  return checkedBundleOf(await recordOf(access, id));
};

describe('FHIR out, in and out again', () => {
  it('is equal in the person’s name, birth and telephone, in every figure taken, and in the conditions', async () => {
    const first = bundleOf(record());
    const second = await throughEmptyClinic(first);
    const scope = inScope(first, zone);
    expect(scope.measured.length).toBeGreaterThan(10);
    expect(scope.conditions).toContain(JSON.stringify(['Knee osteoarthritis', '2019-05-04']));
    expect(inScope(second, zone)).toEqual(scope);
    expect(inScope(await throughEmptyClinic(second), zone)).toEqual(scope);
  });

  it('carries every entry as imported, and says so', async () => {
    const second = await throughEmptyClinic(bundleOf(record()));
    const observations = second.entry!.flatMap(({ resource }) =>
      resource?.resourceType === 'Observation' ? [resource as Observation] : [],
    );
    for (const one of observations) {
      expect(one.meta?.tag?.[0]?.code).toBe('imported');
      expect(one.note?.[0]?.text).toMatch(/^Imported from "file"; not recorded at this clinic\.$/);
    }
  });

  it('says of a file that was taken back that its entries were entered in error', () => {
    const found = (id: string) =>
      bundleOf(record()).entry!.find(({ resource }) => resource?.id === id)!.resource as object;
    expect(found('i-back')).toMatchObject({ status: 'entered-in-error' });
    expect(found('i-back-condition')).toMatchObject({
      verificationStatus: { coding: [{ code: 'entered-in-error' }] },
    });
    expect(found('i-weight')).toMatchObject({ status: 'final' });
  });
});

describe('CSV out, in and out again', () => {
  const files = importedFiles(wholeRecord().rows);

  it('is byte for byte the same, with quotes, commas and what a spreadsheet would take for a formula', async () => {
    const access = await emptyClinic();
    const id = await addPatient(access, person);
    expect(files.map(({ name }) => name)).toEqual([
      'imported-sessions.csv',
      'imported-mornings.csv',
      'imported-measurements.csv',
    ]);
    for (const { name, text } of files) {
      const kind = name.replace(/^imported-|\.csv$/g, '') as CsvKind;
      await take(access, id, text, { ...asTable, kind });
    }
    expect(importedFiles((await recordOf(access, id)).rows)).toEqual(files);
  });

  it('has nothing of a file that was taken back', () => {
    expect(files.map(({ text }) => text).join('')).not.toContain('300');
  });
});
