/** A stored swelling answer knows its question, and a joint may be left out of it. */
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import type { MorningEntry } from '#core/record/entries.ts';
import type { Store } from '#data/database/store.ts';
import { takeMorning } from '#data/entries/take-entry.ts';
import { patientOf } from '#data/patients/people.ts';
import { recordOf } from '#data/patients/record.ts';
import { saveProfile } from '#data/patients/save-profile.ts';
import { morningEntry, type Setting, twoClinics } from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

let store: Store;
let setting: Setting;
beforeEach(async () => {
  store = freshStore();
  setting = await twoClinics(store);
});
afterEach(() => store.close());

const answers: MorningEntry['joints'][number] = {
  joint: 'right-knee',
  pain: 2,
  stiffnessMinutes: 10,
  stiffnessState: 'asked',
  swelling: 'slight',
  swellingState: 'asked',
  flare: false,
};

const stored = async (over: Partial<typeof answers>, format?: number) => {
  const { clinician, patientId } = setting;
  const entry = morningEntry({ entryId: 'm1', joints: [{ ...answers, ...over }] });
  await takeMorning(clinician, patientId, format ? { ...entry, format } : entry);
  return (await recordOf(clinician, patientId))?.mornings[0]?.joints[0];
};

describe('a swelling answer', () => {
  it('to the question against usual is read back as that', async () => {
    expect(await stored({ swellingQuestion: 'more-than-usual' })).toMatchObject({
      swelling: 'slight',
      swellingQuestion: 'more-than-usual',
    });
  });

  it('from a phone of an earlier release, which names no question, is never read as against usual', async () => {
    const answer = await stored({}, 3);
    expect(answer).toMatchObject({ swelling: 'slight' });
    expect(answer?.swellingQuestion ?? 'absolute').toBe('absolute');
  });
});

describe('joints not asked about swelling', () => {
  const profile = {
    diagnosis: 'Hip and knee osteoarthritis',
    inflammatoryArthritis: false,
    followedJoints: ['left-hip', 'right-knee'],
    ownedLoadsKg: [],
    ownedEquipment: [],
    formulaSex: null,
  } as const;
  const notAsked = async () =>
    (await patientOf(setting.clinician, setting.patientId))?.profile?.swellingNotAsked;

  it('are none until a clinician names them, and stay when a profile does not speak of them', async () => {
    const { clinician, patientId } = setting;
    await saveProfile(clinician, patientId, profile);
    expect(await notAsked()).toEqual([]);
    await saveProfile(clinician, patientId, { ...profile, swellingNotAsked: ['left-hip'] });
    await saveProfile(clinician, patientId, profile);
    expect(await notAsked()).toEqual(['left-hip']);
    await saveProfile(clinician, patientId, { ...profile, swellingNotAsked: [] });
    expect(await notAsked()).toEqual([]);
  });
});
