/** What changed settings would have decided on past records, before anything is saved. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { version3 } from '#core/decision/version-3-settings.ts';
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

  it('one number moved changes what that number decides and nothing that other numbers decided', async () => {
    await sorePatient();
    const { clinicSettings } = admin();
    const alone = await clinicSettings.preview({ values: { 'severe-pain': 9 } });
    expect(alone.differing).toBeGreaterThan(0);
    // Another number is moved for good; the decisions on record were made before and keep theirs.
    const moved = { values: { 'severe-pain': 9 }, seen: { 'severe-pain': 8 }, reason: 'Fewer calls' };
    await clinicSettings.save({ ...moved, lookedAt: alone.lookedAt });
    const other = await clinicSettings.preview({ values: { 'baseline-expiry': 41 } });
    expect(other).toMatchObject({ differing: 0 });
  });

  it('version 3 can be looked at beside the decisions made, and is in force only once saved', async () => {
    const decisions = await sorePatient();
    const { clinicSettings } = admin();
    const before = await clinicSettings.preview({ values: version3 });
    expect(before).toMatchObject({ looked: decisions.length });
    const rules = () => asPerson({ ...setting.clinician }, {}).clinician.rules.list();
    expect((await rules()).isVersion3).toBe(false);
    const { groups } = await clinicSettings.list();
    const seen = Object.fromEntries(
      groups
        .flatMap((group) => group.settings)
        .filter(({ id }) => id in version3)
        .map(({ id, value }) => [id, value]),
    );
    const reason = 'Agreed at the meeting';
    await clinicSettings.save({ values: version3, seen, reason, lookedAt: before.lookedAt });
    const { isVersion3, version, rules: listed } = await rules();
    expect([isVersion3, version]).toEqual([true, '2']);
    expect(listed.find(({ id }) => id === 'P3')!.threshold).toMatch(/at least 2 .* for that session alone/);
    const again = await clinicSettings.preview({ values: version3 });
    expect(again.looked).toBe(decisions.length);
  });

  it('is what a number that decides is saved by: for these values, by whoever looked, as all others stand', async () => {
    const { clinicSettings } = admin();
    const change = { values: { 'severe-pain': 9 }, seen: { 'severe-pain': 8 }, reason: 'Fewer calls' };
    const notSaved = /Nothing was saved: .* was not looked at/;
    await expect(clinicSettings.save(change)).rejects.toThrow(notSaved);
    const other = await clinicSettings.preview({ values: { 'severe-pain': 7 } });
    await expect(clinicSettings.save({ ...change, lookedAt: other.lookedAt })).rejects.toThrow(notSaved);
    const own = await clinicSettings.preview({ values: change.values });
    const colleague = asAdministrator(accessOf(store, 'a', 'admin-b')).admin.clinicSettings;
    await expect(colleague.save({ ...change, lookedAt: own.lookedAt })).rejects.toThrow(notSaved);
    const days = { values: { 'invitation-days': 3 }, seen: { 'invitation-days': 7 }, reason: 'Local rule' };
    await clinicSettings.save(days);
    await expect(clinicSettings.save({ ...change, lookedAt: own.lookedAt })).rejects.toThrow(notSaved);
    const again = await clinicSettings.preview({ values: change.values });
    await clinicSettings.save({ ...change, lookedAt: again.lookedAt });
  });

  it('names whose decisions would differ to a clinician, and gives who only administers the count', async () => {
    const decisions = await sorePatient();
    const engine = (await admin().clinicSettings.list()).groups
      .flatMap((group) => group.settings)
      .filter(({ isOfDecisions }) => isOfDecisions);
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
      expect(one.lines.every((line) => line.name === 'Test Person')).toBe(true);
      expect(one.bolder + one.moreCautious).toBe(one.lines.length);
      const marked = one.weeks.reduce((sum, week) => sum + week.bolder + week.moreCautious, 0);
      expect(marked).toBe(one.lines.length);
    }
    const values = candidates[previews.indexOf(differing[0]!)]!;
    const counted = await admin().clinicSettings.preview({ values });
    expect(counted).toMatchObject({ differing: differing[0]!.differing, lines: [] });
    const stranger = asAdministrator(accessOf(store, 'b', 'admin-b')).admin.clinicSettings;
    expect(await stranger.preview({ values })).toMatchObject({ looked: 0, differing: 0 });
  });
});
