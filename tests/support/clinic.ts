/** Two small clinics with people, and records in a state a test can begin from. */

import { householdEquipment } from '#core/exercises/equipment.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Caution } from '#core/prescribing/cautions/caution.ts';
import type { LowLoadDose } from '#core/prescribing/dose.ts';
import { entryFormat, type MorningEntry, type SessionEntry } from '#core/record/entries.ts';
import { screeningItems, screeningSheetVersion } from '#core/screening/items.ts';
import type { Access } from '#data/access.ts';
import { dayAt } from '#data/civil-time.ts';
import type { Store } from '#data/database/store.ts';
import { addPatient, createClinic } from '#data/patients/people.ts';
import { saveProfile } from '#data/patients/save-profile.ts';
import { addVersion, signPrescription } from '#data/prescribing/prescribing.ts';
import { recordScreening } from '#data/screening/screenings.ts';

export const zone = 'Europe/Lisbon';
/** A Monday morning at the clinic. */
export const start = Date.parse('2026-03-02T09:00:00Z');
export const auditKey = Buffer.alloc(32, 7);

export const accessOf = (
  store: Store,
  clinicId: string,
  actorId: string,
  now = start,
  actorName = actorId,
): Access => ({
  store,
  auditKey,
  clinicId,
  actorId,
  actorName,
  now,
  day: dayAt(now, zone),
});

export const clinicNamed = (store: Store, id: string): Promise<void> =>
  createClinic(
    store,
    {
      id,
      name: `Clinic ${id}`,
      zone,
      phone: '210 000 000',
      emergencyNumber: '112',
      urgentNumber: null,
      monitoringHours: [{ days: ['Mon', 'Tue', 'Wed', 'Thu', 'Fri'], from: '09:00', to: '17:00' }],
    },
    start,
  );

export interface Setting {
  readonly store: Store;
  readonly clinician: Access;
  readonly stranger: Access;
  readonly patientId: string;
  readonly otherPatientId: string;
  /** A patient of another clinic. */
  readonly strangerPatientId: string;
}

/** Clinic A with two patients, clinic B with one. */
export const twoClinics = async (store: Store): Promise<Setting> => {
  await clinicNamed(store, 'a');
  await clinicNamed(store, 'b');
  const clinician = accessOf(store, 'a', 'clinician-a');
  const stranger = accessOf(store, 'b', 'clinician-b');
  const person = { givenName: 'Test', familyName: 'Person', birthDay: '1958-06-01', phone: null };
  return {
    store,
    clinician,
    stranger,
    patientId: await addPatient(clinician, person),
    otherPatientId: await addPatient(clinician, { ...person, givenName: 'Other' }),
    strangerPatientId: await addPatient(stranger, person),
  };
};

export const lowLoadDose: LowLoadDose = {
  method: 'low-load',
  exerciseId: 'knee-extension-seated',
  side: 'right',
  sets: 3,
  repetitions: { low: 15, high: 25 },
  reserve: 2,
  restSeconds: 90,
  secondsPerRepetition: 4,
  sessionsPerWeek: 3,
  loadKg: 4,
  oneRepMaxKg: 12,
};

/** A screening with every answer no. */
export const screenedClear = (access: Access, patientId: string): Promise<number> =>
  recordScreening(access, patientId, {
    sheetVersion: screeningSheetVersion,
    answers: screeningItems.map((item) => ({ item: item.id, answer: 'no' as const })),
  });

/** Screened with every answer no, profile written, one signed exercise. */
export const signedExercise = async (access: Access, patientId: string) => {
  const joints: Joint[] = ['right-knee'];
  await saveProfile(access, patientId, {
    diagnosis: 'Knee osteoarthritis',
    inflammatoryArthritis: false,
    followedJoints: joints,
    ownedLoadsKg: [1, 2, 3, 4, 5],
    ownedEquipment: householdEquipment,
    formulaSex: 'female',
  });
  await screenedClear(access, patientId);
  const caution: Caution = {
    id: 'test',
    text: 'Test caution.',
    patient: { key: 'stop-signs' },
    from: 'test',
    support: 'clinic',
  };
  const prescriptionId = await addVersion(access, patientId, {
    itemId: `line-${patientId}`,
    dose: lowLoadDose,
    badDay: { ...lowLoadDose, sets: 2 },
    joints,
    cautions: [caution],
    working: [],
    origin: 'clinician',
  });
  await signPrescription(access, patientId, prescriptionId);
  return { prescriptionId, itemId: `line-${patientId}` };
};

export const sessionEntry = (over: Partial<SessionEntry> & Pick<SessionEntry, 'entryId'>): SessionEntry => {
  const beganAt = over.beganAt ?? start - 30 * 60_000;
  return {
    format: entryFormat,
    day: dayAt(beganAt, zone),
    zone,
    sentAt: start,
    redFlags: [],
    extraPainRelief: false,
    kind: 'full',
    beganAt,
    endedAt: beganAt + 20 * 60_000,
    didExtra: false,
    stoppedByFlag: false,
    sets: [],
    joints: [],
    ...over,
  };
};

export const morningEntry = (over: Partial<MorningEntry> & Pick<MorningEntry, 'entryId'>): MorningEntry => ({
  format: entryFormat,
  day: dayAt(start, zone),
  zone,
  sentAt: start,
  redFlags: [],
  extraPainRelief: false,
  answeredAt: start - 60_000,
  fatigue: null,
  fatigueState: 'not-applicable',
  joints: [],
  ...over,
});
