/** A first visit left in the middle: a colleague goes on with it on another day, from what is on record. */
import { afterEach, beforeEach, expect, it } from 'vitest';
import { addPatient } from '#data/patients/people.ts';
import { asClinician } from '#tests/support/callers.ts';
import { asked, home, reason, visit } from './first-visit-answers.ts';
import { type CareSetting, careSetting, colleague } from './setting.ts';

let at: CareSetting;
let patientId: string;
let other: string;
beforeEach(async () => {
  at = await careSetting();
  const person = { givenName: 'New', familyName: 'Person', birthDay: '1961-04-04' };
  patientId = await addPatient(at.accessOn(0), person);
  other = await colleague(at, 'Other');
});
afterEach(() => at.store.close());

const staff = (day = 0) => at.clinician(day, '10:00').clinician;
const hers = (day: number) =>
  asClinician({ ...at.accessOn(day, '10:00'), actorId: other, actorName: 'Other' }).clinician;
const open = (states: readonly { readonly step: string; readonly state: string }[]) =>
  states.filter(({ state }) => state === 'open').map(({ step }) => step);

it('shows what was saved, and the same steps open, to whoever comes back and whenever', async () => {
  const screening = { ...asked(), answers: asked().answers.slice(0, 5) };
  await staff().visits.saveFirstVisit({ patientId, visit: { reason, joints: visit.joints, screening } });
  const page = await hers(3).visits.firstVisit({ patientId });
  expect(page.profile).toMatchObject(reason);
  expect(page.screening?.answers).toHaveLength(5);
  expect(open(page.states)).toEqual(['consents', 'screening', 'measurements', 'home', 'invitation']);
  expect((await hers(3).people.bar({ patientId })).next).toMatchObject({ step: 'consents' });
  await hers(3).visits.saveFirstVisit({ patientId, visit: { home, screening: asked() } });
  expect(open((await staff(4).visits.firstVisit({ patientId })).states)).toEqual([
    'consents',
    'measurements',
    'exercise',
    'invitation',
  ]);
});

it('keeps what is typed and not saved for whoever typed it, step by step', async () => {
  const form = 'first-visit-reason';
  await staff().drafts.save({ patientId, form, typed: { 'reason.diagnosis': 'Kn' } });
  await staff().drafts.save({ patientId, form: 'first-visit-home', typed: { 'home.noLoads': 'none' } });
  expect(await hers(0).drafts.get({ patientId, form })).toBeNull();
  await staff().drafts.drop({ patientId, form });
  expect((await staff().drafts.get({ patientId, form: 'first-visit-home' }))?.typed).toEqual({
    'home.noLoads': 'none',
  });
});

it('asks a sheet again once it has run out, and shows what was answered', async () => {
  await staff().visits.saveFirstVisit({ patientId, visit: { reason, screening: asked() } });
  const later = await hers(84).visits.firstVisit({ patientId });
  expect(open(later.states)).not.toContain('screening');
  const over = await hers(85).visits.firstVisit({ patientId });
  expect(open(over.states)).toContain('screening');
  expect(over.screening?.answers).toHaveLength(asked().answers.length);
});
