/** Templates of the clinic: what is kept, what comes of one for a person, and who may do what with it. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { householdEquipment } from '#core/exercises/equipment.ts';
import type { Store } from '#data/database/store.ts';
import { asClinician } from '#tests/support/callers.ts';
import { accessOf, type Setting, start, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';
import { allNo, workingPatient } from '#tests/support/working-patient.ts';

let store: Store;
let setting: Setting;
let prescriptionId: string;
let clinician: ReturnType<typeof asClinician>['clinician'];
beforeEach(async () => {
  store = freshStore();
  setting = await twoClinics(store);
  prescriptionId = await workingPatient(store, setting.patientId).signed();
  clinician = asClinician(accessOf(store, 'a', 'clinician-a', start + 60_000, 'Clinician A')).clinician;
});
afterEach(() => store.close());

/** The things of the first patient: an ankle weight as well. */
const withAnkleWeight = () =>
  clinician.people.saveProfile({
    patientId: setting.patientId,
    profile: profile({ followedJoints: ['right-knee'], ownedLoadsKg: [1, 2, 3, 4, 5, 6] }),
  });

const saved = (name = 'Knee, first weeks') =>
  clinician.templates.save({ patientId: setting.patientId, name, prescriptionIds: [prescriptionId] });

const profile = (over: object = {}) => ({
  diagnosis: 'Knee osteoarthritis',
  inflammatoryArthritis: false,
  followedJoints: ['left-knee'],
  ownedLoadsKg: [1, 2, 3],
  ownedEquipment: [...householdEquipment, 'ankle weight'],
  formulaSex: 'female' as const,
  ...over,
});

/** Another patient, screened and weighed, with a test of the left knee. */
const otherPatient = async (over: object = {}, answers: Parameters<typeof allNo>[0] = {}) => {
  const patientId = setting.otherPatientId;
  await clinician.people.saveProfile({ patientId, profile: profile(over) });
  await clinician.screening.record({ patientId, screening: allNo(answers) });
  const measured = [
    { kind: 'body-mass', massKg: 80 },
    { kind: 'stature', statureCm: 170 },
    { kind: 'blood-pressure', systolicMmhg: 128, diastolicMmhg: 78, position: 'seated' },
    {
      kind: 'repetitions-to-failure',
      exerciseId: 'knee-extension-seated',
      side: 'left',
      loadKg: 4,
      repetitions: 10,
    },
  ];
  for (const row of measured)
    await clinician.measurements.record({ patientId, measurement: { ...row, day: '2026-03-02' } });
  return patientId;
};

describe('saving a template', () => {
  it('keeps what was chosen of a dose, and no load or maximum of the person', async () => {
    await saved();
    const ofClinic = await clinician.templates.list();
    expect(ofClinic).toMatchObject([
      {
        name: 'Knee, first weeks',
        savedBy: 'Clinician A',
        withdrawn: null,
        doses: [
          {
            method: 'low-load',
            exerciseId: 'knee-extension-seated',
            side: 'right',
            values: { repetitionsLow: 15, repetitionsHigh: 20, reserve: 2 },
          },
        ],
      },
    ]);
    expect(Object.keys(ofClinic[0]!.doses[0]!.values)).not.toContain('loadKg');
    expect(Object.keys(ofClinic[0]!.doses[0]!.values)).not.toContain('knownOneRepMaxKg');
  });

  it('refuses a name that is in use, whatever its capitals, and says whose it is', async () => {
    await saved();
    await expect(saved('KNEE, first weeks')).rejects.toThrow(/saved by Clinician A\. Give this one another/);
  });

  it('refuses a dose of another patient', async () => {
    const wrong = { patientId: setting.otherPatientId, name: 'Other', prescriptionIds: [prescriptionId] };
    await expect(clinician.templates.save(wrong)).rejects.toThrow(/no such prescription/);
  });
});

describe('a template of another clinic', () => {
  it('is not listed, used, renamed or withdrawn', async () => {
    const templateId = await saved();
    const stranger = asClinician(setting.stranger).clinician.templates;
    const patientId = setting.strangerPatientId;
    expect(await stranger.list()).toEqual([]);
    expect(await stranger.proposed({ patientId, templateId, on: 'saved' })).toBeNull();
    await expect(stranger.rename({ templateId, name: 'Mine' })).rejects.toThrow(/no such template/);
    await expect(stranger.withdraw({ templateId })).rejects.toThrow(/no such template/);
    const add = { patientId, templateId, on: 'saved' as const, shown: [{ place: 0, dose: {} }] };
    await expect(stranger.add(add)).rejects.toThrow(/no such template/);
  });
});

describe('what becomes of a template', () => {
  it('keeps its earlier names with who gave the next and when', async () => {
    const templateId = await saved();
    await clinician.templates.rename({ templateId, name: 'Knee, weeks 1 to 4' });
    const [template] = await clinician.templates.list();
    expect(template).toMatchObject({
      name: 'Knee, weeks 1 to 4',
      earlierNames: [{ name: 'Knee, first weeks', byName: 'Clinician A', until: start + 60_000 }],
    });
  });

  it('is offered no longer once withdrawn, says by whom, and can be offered again', async () => {
    const templateId = await saved();
    await clinician.templates.withdraw({ templateId });
    const { patientId } = setting;
    expect((await clinician.templates.list())[0]?.withdrawn).toEqual({
      at: start + 60_000,
      byName: 'Clinician A',
    });
    expect(await clinician.templates.proposed({ patientId, templateId, on: 'saved' })).toBeNull();
    await expect(clinician.templates.withdraw({ templateId })).rejects.toThrow(/Clinician A withdrew/);
    await clinician.templates.bringBack({ templateId });
    expect((await clinician.templates.list())[0]?.withdrawn).toBeNull();
  });

  it('is not offered again under a name that another has meanwhile', async () => {
    const templateId = await saved();
    await clinician.templates.withdraw({ templateId });
    await saved();
    await expect(clinician.templates.bringBack({ templateId })).rejects.toThrow(/another name/);
  });
});

describe('a template used for somebody', () => {
  it('gives what the same request typed by hand gives, with a load from this person’s own test', async () => {
    const templateId = await saved();
    const patientId = await otherPatient();
    const used = await clinician.templates.proposed({ patientId, templateId, on: 'left' });
    const [one] = used!.doses;
    if (!one?.isPossible) throw new Error(JSON.stringify(one));
    expect(one.request).toMatchObject({ side: 'left', repetitionsLow: 15 });
    const typed = await clinician.prescriptions.propose({ patientId, request: one.request });
    expect(one.proposed).toEqual(typed);
    expect(one.proposed.cautions.length).toBeGreaterThan(0);
    expect(one.proposed.dose).toMatchObject({ oneRepMaxKg: expect.closeTo(5.3, 0) });
  });

  it('leaves out what screening closes, what nothing is known of, and says why', async () => {
    const templateId = await saved();
    const patientId = setting.otherPatientId;
    const unscreened = await clinician.templates.proposed({ patientId, templateId, on: 'left' });
    expect(unscreened!.doses).toMatchObject([{ isPossible: false, reasons: [expect.any(String)] }]);
  });

  it('leaves out what needs a thing that is not at home, and names the thing', async () => {
    const templateId = await saved();
    const patientId = await otherPatient({ ownedEquipment: ['wall'] });
    const used = await clinician.templates.proposed({ patientId, templateId, on: 'left' });
    expect(used!.doses).toMatchObject([
      { isPossible: false, mayBeTyped: true, reasons: [expect.stringMatching(/^Not at home as recorded: /)] },
    ]);
  });

  it('keeps each shown dose as one that waits to be signed, in the place of the version in force', async () => {
    const templateId = await saved();
    const { patientId } = setting;
    await withAnkleWeight();
    const used = await clinician.templates.proposed({ patientId, templateId, on: 'saved' });
    const [one] = used!.doses;
    if (!one?.isPossible) throw new Error(JSON.stringify(one));
    const shown = [{ place: one.place, dose: one.proposed.dose }];
    expect(await clinician.templates.add({ patientId, templateId, on: 'saved', shown })).toBe(1);
    const { unsigned, inForce } = await clinician.prescriptions.list({ patientId });
    expect(unsigned).toMatchObject([{ itemId: inForce[0]!.itemId, dose: one.proposed.dose, signedAt: null }]);
    const again = await clinician.templates.proposed({ patientId, templateId, on: 'saved' });
    expect(again!.doses).toMatchObject([
      { isPossible: false, reasons: [expect.stringMatching(/waits to be/)] },
    ]);
  });

  it('adds nothing where the dose is another one than was shown', async () => {
    const templateId = await saved();
    const { patientId } = setting;
    await withAnkleWeight();
    const shown = [{ place: 0, dose: { loadKg: 99 } }];
    await expect(clinician.templates.add({ patientId, templateId, on: 'saved', shown })).rejects.toThrow(
      /another one than was shown/,
    );
    expect((await clinician.prescriptions.list({ patientId })).unsigned).toEqual([]);
  });
});
