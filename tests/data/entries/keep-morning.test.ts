/** One morning answered on two phones. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { morningView } from '#api/patient/today-morning.ts';
import { engineDefaults } from '#core/decision/settings.ts';
import { addDays } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import type { Store } from '#data/database/store.ts';
import { keepMorning } from '#data/entries/keep-morning.ts';
import { morningsOf } from '#data/entries/logs.ts';
import { morningsOfDay } from '#data/entries/mornings-of-day.ts';
import { takeMorning } from '#data/entries/take-entry.ts';
import { morning } from '#data/schema/schema.ts';
import {
  morningEntry,
  type Setting,
  signedExercise,
  start,
  twoClinics,
  zone,
} from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

const answers = (pain: number) => ({
  joint: 'right-knee' as const,
  pain,
  stiffnessMinutes: 5,
  stiffnessState: 'asked' as const,
  swelling: 'none' as const,
  swellingState: 'asked' as const,
  flare: false,
});

describe('a morning answered on two phones', () => {
  let store: Store;
  let setting: Setting;
  beforeEach(async () => {
    store = freshStore();
    setting = await twoClinics(store);
    await signedExercise(setting.clinician, setting.patientId);
  });
  afterEach(() => store.close());

  const later = (minutes: number): Access => ({ ...setting.clinician, now: start + minutes * 60_000 });
  const take = (entryId: string, pain: number, minutes: number, amends?: string) =>
    takeMorning(
      later(minutes),
      setting.patientId,
      morningEntry({
        entryId,
        sentAt: start + minutes * 60_000,
        answeredAt: start + minutes * 60_000,
        joints: [answers(pain)],
        ...(amends ? { amends } : {}),
      }),
    );
  const viewNow = async (at = later(30)) => {
    const mornings = await morningsOf(at, setting.patientId, addDays(at.day, -1));
    return morningView({
      access: at,
      zone,
      mornings,
      ofToday: await morningsOfDay(at, setting.patientId, at.day, mornings),
      isAsked: true,
      lateDays: 1,
      settings: engineDefaults,
      versions: [],
      followed: [],
      baselines: [],
    });
  };
  const painsNow = async () =>
    (await morningsOf(setting.clinician, setting.patientId, setting.clinician.day)).map(
      ({ joints }) => joints[0]?.pain,
    );

  it('asks which answers count, with what each said; both stand until it is said', async () => {
    await take('first', 2, 0);
    expect((await viewNow()).twice).toBeNull();
    await take('second', 4, 10);
    const { twice, due } = await viewNow();
    expect([twice?.first.pains[0]?.pain, twice?.last.pains[0]?.pain, due]).toEqual([2, 4, false]);
    expect(await painsNow()).toEqual([2, 4]);
  });

  it.each([
    ['second', 'first', 4],
    ['first', 'second', 2],
  ])(
    'keeping the %s entry puts it in place of the %s; every row stays, and it is not asked again',
    async (keep, instead, pain) => {
      await take('first', 2, 0);
      await take('second', 4, 10);
      expect(await keepMorning(later(20), setting.patientId, { keep, instead })).toBe(true);
      expect(new Set(await painsNow())).toEqual(new Set([pain]));
      expect((await viewNow()).twice).toBeNull();
      expect(await store.read.select().from(morning)).toHaveLength(3);
      expect(await keepMorning(later(21), setting.patientId, { keep, instead })).toBe(false);
    },
  );

  it('an answer changed on one phone is no second answer', async () => {
    await take('first', 2, 0);
    await take('second', 4, 10, 'first');
    expect((await viewNow()).twice).toBeNull();
  });

  it('takes nothing of another day, another person or a made-up entry', async () => {
    await take('first', 2, 0);
    await take('second', 4, 10);
    const both = { keep: 'second', instead: 'first' };
    expect(await keepMorning(later(20), setting.otherPatientId, both)).toBe(false);
    expect(await keepMorning(later(20), setting.patientId, { ...both, keep: 'none' })).toBe(false);
    const tomorrow = { ...later(24 * 60), day: addDays(setting.clinician.day, 1) };
    expect(await keepMorning(tomorrow, setting.patientId, both)).toBe(false);
    expect(await painsNow()).toEqual([2, 4]);
  });

  it('one given outside its hours leaves the check due; one inside replaces it', async () => {
    // 9 o'clock at the clinic is `start`; seven hours on it is 16 o'clock, over the 14 of the default.
    await take('late', 3, 7 * 60);
    const after = await viewNow(later(7 * 60 + 5));
    expect([after.due, after.answered, after.state, after.entryId]).toEqual([true, true, 'over', 'late']);
  });
});
