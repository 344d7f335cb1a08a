/** Whoever is on record is found by the name, also where a clinic has more patients than a page holds. */
import { afterEach, expect, it } from 'vitest';
import type { Store } from '#data/database/store.ts';
import { addPatient, patientsOf } from '#data/patients/people.ts';
import { accessOf, clinicNamed } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
afterEach(() => store.close());

const names = ['Arkwell', 'Bessingham', 'Corveth'];

const clinicOfThree = async () => {
  store = freshStore();
  await clinicNamed(store, 'a');
  const access = accessOf(store, 'a', 'clinician-a');
  for (const familyName of names)
    await addPatient(access, { givenName: 'Ida', familyName, birthDay: '1960-05-01' });
  return access;
};

it('a page of 2, 3 and 4 of three patients says how many are left off: 1, none and none', async () => {
  const access = await clinicOfThree();
  const left = await Promise.all(
    [2, 3, 4].map(async (most) => (await patientsOf(access, undefined, most)).more),
  );
  expect(left).toEqual([1, 0, 0]);
});

it('the last by name is found on a page that holds one', async () => {
  const access = await clinicOfThree();
  const isNamed = ({ familyName }: { readonly familyName: string }) => familyName === 'Corveth';
  const { patients, more } = await patientsOf(access, isNamed, 1);
  expect(patients.map(({ familyName }) => familyName)).toEqual(['Corveth']);
  expect(more).toBe(0);
});
