import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { version3 } from '#core/decision/version-3-settings.ts';
import { settingsOf } from '#data/clinic/clinic-settings.ts';
import type { Store } from '#data/database/store.ts';
import { decisionsOf } from '#data/decision/decisions.ts';
import { asAdministrator, asPatient, asPerson } from '#tests/support/callers.ts';
import { accessOf, type Setting, sessionEntry, signedExercise, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
let setting: Setting;
beforeEach(async () => {
  store = freshStore();
  setting = await twoClinics(store);
});
afterEach(() => store.close());

const admin = () => asAdministrator(accessOf(store, 'a', 'admin-a')).admin;
const colleague = {
  name: 'New Colleague',
  email: 'New@test.invalid',
  role: 'clinician',
  administers: false,
} as const;

describe('the people of the clinic', () => {
  it('are added with a passphrase to hand over, shown once and good for a week', async () => {
    const { userId, passphrase } = await admin().staff.add(colleague);
    expect(passphrase).toMatch(/^([0-9a-hjkmnp-tv-z]{5}-){3}[0-9a-hjkmnp-tv-z]{5}$/);
    const [row] = await admin().staff.list();
    expect(row).toMatchObject({ id: userId, email: 'new@test.invalid', twoFactorEnabled: false });
    const days = (row!.startingUntil!.getTime() - Date.now()) / 86_400_000;
    expect(days).toBeGreaterThan(6.9);
    expect(days).toBeLessThanOrEqual(7);
    expect(JSON.stringify(store.reader.client.prepare('SELECT * FROM auth_account').all())).not.toContain(
      passphrase,
    );
  });

  it('an address signs in for one person only, whatever its capitals', async () => {
    await admin().staff.add(colleague);
    await expect(admin().staff.add({ ...colleague, email: 'NEW@test.invalid' })).rejects.toMatchObject({
      problem: 'conflict',
    });
  });

  it('of another clinic cannot be reached', async () => {
    const { userId } = await admin().staff.add(colleague);
    const stranger = asAdministrator(accessOf(store, 'b', 'admin-b')).admin.staff;
    expect(await stranger.list()).toEqual([]);
    const acts = [
      () => stranger.deactivate({ userId }),
      () => stranger.reset({ userId }),
      () => stranger.setRoles({ userId, role: 'administrator', administers: true }),
    ];
    for (const act of acts) await expect(act()).rejects.toMatchObject({ problem: 'not-found' });
  });

  it('nobody changes the own powers, and somebody who can administer is always left', async () => {
    const { userId } = await admin().staff.add({ ...colleague, role: 'administrator' });
    const self = asAdministrator(accessOf(store, 'a', userId)).admin.staff;
    await expect(self.deactivate({ userId })).rejects.toMatchObject({ problem: 'refused' });
    await expect(self.setRoles({ userId, role: 'clinician', administers: true })).rejects.toMatchObject({
      problem: 'refused',
    });
    await expect(admin().staff.deactivate({ userId })).rejects.toThrow(/would have no administrator/);
    await expect(admin().staff.setRoles({ userId, role: 'clinician', administers: false })).rejects.toThrow(
      /would have no administrator/,
    );
    await admin().staff.add({ ...colleague, email: 'second@test.invalid', administers: true });
    await admin().staff.deactivate({ userId });
    expect((await admin().staff.list()).filter((row) => row.deactivatedAt)).toMatchObject([{ id: userId }]);
  });
});

describe('the places of the clinic', () => {
  it('are added and closed, seen by the own clinic only', async () => {
    const siteId = await admin().sites.add({ name: 'Harbour room', address: null });
    await admin().sites.close({ siteId });
    expect(await admin().sites.list()).toMatchObject([
      { name: 'Harbour room', closedAt: expect.any(Number) },
    ]);
    expect(await asAdministrator(accessOf(store, 'b', 'admin-b')).admin.sites.list()).toEqual([]);
  });
});

describe('the numbers a clinic sets', () => {
  const values = async () => {
    const { areas } = await admin().clinicSettings.list();
    return new Map(areas.flatMap((area) => area.settings).map((setting) => [setting.id, setting] as const));
  };

  it('are all listed with value, bounds and reason, by what they are about', async () => {
    const { areas } = await admin().clinicSettings.list();
    expect(areas.map((area) => area.id)).toEqual(
      expect.arrayContaining([
        'engine',
        'strength',
        'variation',
        'occlusion',
        'screening',
        'nutrition',
        'worklist',
        'record-keeping',
      ]),
    );
    for (const setting of (await values()).values()) {
      expect(setting.value).toBe(setting.default);
      expect(setting.why.length).toBeGreaterThan(20);
    }
  });

  it('are kept only within their bounds, and only where they differ from the default', async () => {
    const hours = (await values()).get('emergency-access-hours')!;
    const save = (value: number) =>
      admin().clinicSettings.save({ values: { [hours.id]: value }, reason: 'Local rule' });
    await expect(save(hours.min - 1)).rejects.toThrow(/at least 1/);
    await expect(save(hours.max + 1)).rejects.toThrow(/at most 24/);
    await expect(save(2.5)).rejects.toThrow(/whole number/);
    await save(hours.max);
    expect(await settingsOf(setting.clinician)).toEqual({ [hours.id]: 24 });
    await save(hours.default);
    expect(await settingsOf(setting.clinician)).toEqual({});
    expect((await admin().clinicSettings.list()).changes.map((one) => one.version)).toEqual([2, 1]);
  });

  it('need a reason and a fresh sign-in', async () => {
    const sent = { values: {}, reason: '  ' };
    await expect(admin().clinicSettings.save(sent)).rejects.toThrow();
    const stale = asPerson(accessOf(store, 'a', 'admin-a'), { administers: true, provedAt: 0 }).admin
      .clinicSettings;
    await expect(stale.save({ ...sent, reason: 'Local rule' })).rejects.toMatchObject({
      problem: 'fresh-sign-in',
    });
  });
});

describe('before numbers are changed', () => {
  /** One session in which the knee hurt 8 of 10. */
  const sorePatient = async () => {
    const { clinician, patientId } = setting;
    const { prescriptionId, itemId } = await signedExercise(clinician, patientId);
    const patient = asPatient(accessOf(store, 'a', 'patient-user', clinician.now), patientId).patient;
    const sets = [1, 2, 3].map((set) => ({
      prescriptionId,
      itemId,
      set,
      repetitions: 20,
      loadKg: 4,
      reserve: 2,
      stopReason: 'none' as const,
    }));
    const joint = {
      joint: 'right-knee' as const,
      painBefore: 1,
      painDuring: 8,
      painAfter: 3,
      twoHoursState: 'not-applicable' as const,
      muscleBurn: 5,
      cuffDiscomfort: null,
      gaveWay: false,
    };
    const entry = sessionEntry({ entryId: 'e1', sets, joints: [joint] });
    await patient.entries.send({ kind: 'session', entry });
    return decisionsOf(clinician, patientId, '2026-01-01');
  };

  it('the same numbers change no decision', async () => {
    const decisions = await sorePatient();
    expect(decisions.length).toBeGreaterThan(0);
    const preview = await admin().clinicSettings.preview({ values: {} });
    expect(preview).toMatchObject({ looked: decisions.length, differing: 0, lines: [] });
  });

  it('version 3 can be looked at beside the decisions made, and is in force only once saved', async () => {
    const decisions = await sorePatient();
    const { clinicSettings } = admin();
    expect(await clinicSettings.preview({ values: version3 })).toMatchObject({ looked: decisions.length });
    const rules = () => asPerson({ ...setting.clinician }, {}).clinician.rules.list();
    expect((await rules()).isVersion3).toBe(false);
    await clinicSettings.save({ values: version3, reason: 'Agreed at the meeting' });
    const { isVersion3, version, rules: listed } = await rules();
    expect([isVersion3, version]).toEqual([true, '2']);
    expect(listed.find(({ id }) => id === 'P3')!.threshold).toMatch(/at least 2 .* for that session alone/);
    const again = await clinicSettings.preview({ values: version3 });
    expect(again.looked).toBe(decisions.length);
  });

  it('names whose decisions would differ to a clinician, and gives who only administers the count', async () => {
    const decisions = await sorePatient();
    const engine = (await admin().clinicSettings.list()).areas.find((area) => area.id === 'engine')!.settings;
    const both = asPerson({ ...setting.clinician }, { administers: true }).admin.clinicSettings;
    const candidates = engine.flatMap((setting) => [
      { [setting.id]: setting.min },
      { [setting.id]: setting.max },
    ]);
    const previews = await Promise.all(candidates.map((values) => both.preview({ values })));
    const differing = previews.filter((one) => one.differing > 0);
    expect(differing.length).toBeGreaterThan(0);
    for (const one of differing) {
      expect(one).toMatchObject({ looked: decisions.length, patients: 1 });
      expect(one.lines.every((line) => line.name === 'Person, Test')).toBe(true);
      expect(one.bolder + one.moreCautious).toBe(one.lines.length);
    }
    const values = candidates[previews.indexOf(differing[0]!)]!;
    const counted = await admin().clinicSettings.preview({ values });
    expect(counted).toMatchObject({ differing: differing[0]!.differing, lines: [] });
    const stranger = asAdministrator(accessOf(store, 'b', 'admin-b')).admin.clinicSettings;
    expect(await stranger.preview({ values })).toMatchObject({ looked: 0, differing: 0 });
  });
});
