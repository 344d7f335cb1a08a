/** One patient worked with through the procedures: measured, signed for, logging. */
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { screeningItems, screeningSheetVersion } from '#core/screening/items.ts';
import { dayAt } from '#data/civil-time.ts';
import type { Store } from '#data/database/store.ts';
import { asClinician, asPatient } from './callers.ts';
import { accessOf, morningEntry, sessionEntry, start, zone } from './clinic.ts';

export const dayMs = 86_400_000;

export const allNo = (over: Readonly<Record<string, 'yes' | 'not-known'>> = {}) => ({
  sheetVersion: screeningSheetVersion,
  answers: screeningItems.map((item) => ({ item: item.id, answer: over[item.id] ?? ('no' as const) })),
});

export const profile = {
  diagnosis: 'Knee osteoarthritis',
  inflammatoryArthritis: false,
  followedJoints: ['right-knee'],
  ownedLoadsKg: [1, 2, 3, 4, 5, 6],
  formulaSex: 'female',
};

export const workingPatient = (store: Store, patientId: string) => {
  const clinicianAt = (now: number) => asClinician(accessOf(store, 'a', 'clinician-a', now, 'Clinician A'));
  const patientAt = (now: number) => asPatient(accessOf(store, 'a', 'patient-user', now), patientId);
  const today = dayAt(start, zone);

  const measured = async () => {
    const { clinician: staff } = clinicianAt(start);
    const rows = [
      { kind: 'body-mass', day: today, massKg: 68 },
      { kind: 'stature', day: today, statureCm: 164 },
      { kind: 'blood-pressure', day: today, systolicMmhg: 128, diastolicMmhg: 78, position: 'seated' },
      {
        kind: 'limb-circumference',
        day: today,
        limb: 'leg',
        side: 'right',
        site: 'mid-thigh',
        circumferenceCm: 52,
      },
      {
        kind: 'limb-occlusion-pressure',
        day: today,
        limb: 'leg',
        side: 'right',
        cuffWidthCm: 11,
        position: 'seated',
        method: 'doppler',
        firstMmhg: 184,
        secondMmhg: 180,
      },
      {
        kind: 'repetitions-to-failure',
        day: today,
        exerciseId: 'knee-extension-seated',
        side: 'right',
        loadKg: 8,
        repetitions: 10,
      },
    ];
    for (const measurement of rows) await staff.measurements.record({ patientId, measurement });
  };

  /** Screened, measured and prescribed, waiting for a signature. */
  const kept = async (): Promise<string> => {
    const { clinician: staff } = clinicianAt(start);
    await staff.people.saveProfile({ patientId, profile });
    await staff.screening.record({ patientId, screening: allNo() });
    await measured();
    const request = {
      method: 'low-load',
      exerciseId: 'knee-extension-seated',
      side: 'right',
      percent: 40,
      repetitionsLow: 15,
      repetitionsHigh: 20,
      reserve: 2,
    };
    return staff.prescriptions.saveDraft({ patientId, request });
  };

  /** The same, signed, with a baseline set. */
  const signed = async (): Promise<string> => {
    const prescriptionId = await kept();
    const { clinician: staff } = clinicianAt(start);
    await staff.prescriptions.sign({ patientId, prescriptionId });
    const baseline = {
      joint: 'right-knee',
      usualPain: 2,
      usualPainTop: 2,
      acceptablePainLimit: 5,
      usualStiffnessMinutes: 10,
      usualSwelling: 'none',
      usualEffusion: 'zero',
      reason: 'Two weeks of mornings',
    };
    await staff.review.setBaseline({ patientId, baseline });
    return prescriptionId;
  };

  const didSession = async (
    at: number,
    pain: { before: number; during: number; after: number },
    repetitions = 20,
  ) => {
    const exercise = (await patientAt(at).patient.today.get()).exercises[0]!;
    const sets = [1, 2, 3].map((set) => ({
      prescriptionId: exercise.prescriptionId,
      itemId: exercise.itemId,
      set,
      repetitions,
      loadKg: 3,
      reserve: 2,
      stopReason: 'none' as const,
    }));
    const joints = [
      {
        joint: 'right-knee' as const,
        painBefore: pain.before,
        painDuring: pain.during,
        painAfter: pain.after,
        twoHoursState: 'not-applicable' as const,
        muscleBurn: 5,
        cuffDiscomfort: null,
        gaveWay: false,
      },
    ];
    const entry = sessionEntry({
      entryId: `s-${at}`,
      beganAt: at - 30 * 60_000,
      sentAt: at,
      sets,
      joints,
      day: dayAt(at, zone),
    });
    return patientAt(at).patient.entries.send({ kind: 'session', entry });
  };

  const answeredMorning = (at: number, pain: number | null, redFlags: readonly RedFlag[] = []) => {
    const joints = [
      {
        joint: 'right-knee' as const,
        pain,
        stiffnessMinutes: 10,
        stiffnessState: 'asked' as const,
        swelling: 'none' as const,
        swellingState: 'asked' as const,
        flare: false,
      },
    ];
    const entry = morningEntry({
      entryId: `m-${at}`,
      answeredAt: at,
      sentAt: at,
      day: dayAt(at, zone),
      redFlags,
      joints,
    });
    return patientAt(at).patient.entries.send({ kind: 'morning', entry });
  };

  return { clinicianAt, patientAt, today, measured, kept, signed, didSession, answeredMorning };
};
