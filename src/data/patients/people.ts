/** Clinics, patients and their care profiles. */
import { randomUUID } from 'node:crypto';
import { and, asc, eq, sql } from 'drizzle-orm';
import type { ErrorGroup } from '#core/assessment/change/error-group.ts';
import type { MonitoringHours } from '#core/episode/monitoring-hours.ts';
import type { ClinicNumbers } from '#core/episode/urgent-number.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { type NewPatient, patientDetails } from '#core/record/patient-details.ts';
import type { Day } from '#core/time/day.ts';
import { type Access, recordedFor } from '../access.ts';
import { auditWrite, digestOfIds, noteRead } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { ofPatient, patientQuery, prepared } from '../database/prepared.ts';
import type { Store } from '../database/store.ts';
import { clinic, patient, patientDetail, patientIdentity } from '../schema/schema.ts';
import { newestProfile } from './care-profiles.ts';
import { isShown } from './merges.ts';

export interface Clinic extends ClinicNumbers {
  readonly id: string;
  readonly name: string;
  readonly zone: string;
  readonly phone: string;
  readonly monitoringHours: MonitoringHours;
}

export interface CareProfile {
  readonly diagnosis: string;
  readonly inflammatoryArthritis: boolean;
  readonly followedJoints: readonly Joint[];
  /** Followed joints on which swelling cannot be seen or felt, such as a hip; left out, it stays as it was. */
  readonly swellingNotAsked?: readonly Joint[] | undefined;
  /** Each morning asks how tired the patient is; left out, it stays as it was. */
  readonly asksFatigue?: boolean | undefined;
  /** Whose error of measuring holds; null = nobody has said; left out, it stays as it was. */
  readonly errorGroup?: ErrorGroup | null | undefined;
  readonly ownedLoadsKg: readonly number[];
  readonly ownedEquipment: readonly string[];
  readonly formulaSex: 'female' | 'male' | null;
}

export interface Patient {
  readonly id: string;
  readonly givenName: string;
  readonly familyName: string;
  readonly birthDay: Day;
  readonly phone: string | null;
  readonly patientNumber: string | null;
  readonly profile:
    | (CareProfile & {
        readonly version: number;
        readonly swellingNotAsked: readonly Joint[];
        readonly asksFatigue: boolean;
        readonly errorGroup: ErrorGroup | null;
      })
    | null;
}

export const clinicRow = prepared((db) =>
  db
    .select()
    .from(clinic)
    .where(eq(clinic.id, sql.placeholder('clinicId'))),
);

export const clinicOf = async (store: Store, clinicId: string): Promise<Clinic | null> => {
  const [row] = await clinicRow(store.read, { clinicId });
  return row ?? null;
};

/** Used when a file is first set up; not reachable from any procedure. */
export const createClinic = async (store: Store, row: Clinic, now: number): Promise<void> => {
  await store.write(async (tx) => {
    await tx.insert(clinic).values({ ...row, createdAt: now });
  });
};

export const clinicIds = async (store: Store): Promise<readonly string[]> => {
  const rows = await store.read.select({ id: clinic.id }).from(clinic);
  return rows.map((row) => row.id);
};

export const patientIdentityRows = patientQuery((db) =>
  db.select().from(patientIdentity).where(ofPatient(patientIdentity)),
);

/** One patient of the caller's clinic, or null. Opening a record is audited by the caller that shows it. */
export const patientOf = async (access: Access, patientId: string): Promise<Patient | null> => {
  const [row] = await patientIdentityRows(access, patientId);
  if (!row) return null;
  const profile = await newestProfile(access, patientId);
  return {
    id: row.patientId,
    givenName: row.givenName,
    familyName: row.familyName,
    birthDay: row.birthDay,
    phone: row.phone,
    patientNumber: row.patientNumber,
    profile: profile && {
      version: profile.version,
      diagnosis: profile.diagnosis,
      inflammatoryArthritis: profile.inflammatoryArthritis,
      followedJoints: profile.followedJoints as readonly Joint[],
      swellingNotAsked: profile.swellingNotAsked as readonly Joint[],
      asksFatigue: profile.asksFatigue,
      errorGroup: profile.errorGroup,
      ownedLoadsKg: profile.ownedLoadsKg,
      ownedEquipment: profile.ownedEquipment,
      formulaSex: profile.formulaSex,
    },
  };
};

/** Everybody of the clinic, by id; who was erased is nobody any more. */
export const peopleOf = (access: Access): Promise<readonly { readonly id: string }[]> =>
  Promise.resolve(
    access.store.read
      .select({ id: patientIdentity.patientId })
      .from(patientIdentity)
      .where(eq(patientIdentity.clinicId, access.clinicId))
      .orderBy(asc(patientIdentity.patientId)),
  );

export interface PatientLine {
  readonly id: string;
  readonly givenName: string;
  readonly familyName: string;
  readonly birthDay: Day;
  readonly phone: string | null;
}

/** The clinic's patients by name, as many as fit a page, and how many more are named so. */
export const patientsOf = async (
  access: Access,
  isNamed: (person: PatientLine) => boolean = () => true,
  most = 500,
): Promise<{ readonly patients: readonly PatientLine[]; readonly more: number }> => {
  const rows = await access.store.read
    .select({
      id: patientIdentity.patientId,
      givenName: patientIdentity.givenName,
      familyName: patientIdentity.familyName,
      birthDay: patientIdentity.birthDay,
      phone: patientIdentity.phone,
    })
    .from(patientIdentity)
    .where(and(eq(patientIdentity.clinicId, access.clinicId), isShown()))
    .orderBy(asc(patientIdentity.familyName), asc(patientIdentity.givenName), asc(patientIdentity.patientId));
  const found = rows.filter(isNamed);
  const patients = found.slice(0, most);
  const ids = patients.map((row) => row.id);
  noteRead(access, { subject: 'patient-list', detail: { count: ids.length, ids: digestOfIds(ids) } });
  return { patients, more: found.length - patients.length };
};

/** `id` is given only when a clinic is first filled; a form never sends one. */
export const addPatient = (access: Access, row: NewPatient, id: string = randomUUID()): Promise<string> =>
  access.store.write(async (tx) => {
    await tx.insert(patient).values({ id, clinicId: access.clinicId, createdAt: access.now });
    const { givenName, familyName, birthDay, phone = null, email = null, patientNumber = null } = row;
    await tx.insert(patientIdentity).values({
      patientId: id,
      clinicId: access.clinicId,
      givenName,
      familyName,
      birthDay,
      phone,
      email,
      patientNumber,
    });
    const known = patientDetails.flatMap((detail) => {
      const value = row[detail];
      return value ? [{ detail, value }] : [];
    });
    await tx.insert(patientDetail).values(
      known.map((one) => ({
        id: randomUUID(),
        ...recordedFor(access, id),
        ...one,
        version: 1,
        because: 'first' as const,
        byName: access.actorName,
      })),
    );
    changed(access, id);
    await auditWrite(tx, access, 'patient', {
      subjectId: id,
      patientId: id,
      detail: { fields: known.map(({ detail }) => detail) },
    });
    return id;
  });
