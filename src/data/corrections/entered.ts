/** What clinicians entered, each as its form takes it, entries in error among them. */
import type { CorrectionSubject } from '#core/corrections/correction.ts';
import type { Access } from '../access.ts';
import { goalStepsOnRecord } from '../assessment/goals.ts';
import { homeAnswersOnRecord } from '../assessment/home-answers.ts';
import { measurementsOnRecord } from '../assessment/measurements.ts';
import { dayAt } from '../civil-time.ts';
import { eventsOnRecord } from '../episode/care-events.ts';
import { supervisedOnRecord } from '../episode/home-eligibility.ts';
import { limitsOnRecord } from '../episode/limits-and-pre-approvals.ts';
import { baselineRowsOf } from '../patients/baselines.ts';
import { effusionsOnRecord } from '../patients/effusions.ts';
import { clinicOf } from '../patients/people.ts';
import { clearancesOnRecord, screeningsOnRecord } from '../screening/screenings.ts';
import { contacts, notes, visits } from './entered-contacts.ts';
import type { EnteredRow, Read } from './entered-row.ts';

export type { EnteredRow } from './entered-row.ts';

const measurements: Read = async (access, patientId) =>
  (await measurementsOnRecord(access, patientId)).map(
    ({
      id,
      recordedAt,
      recordedBy: _,
      confirmed: __,
      answeredAtHome: ___,
      visitId: ____,
      atDistance: _____,
      ...entered
    }) => ({
      id,
      recordedAt,
      day: entered.day,
      joint: null,
      entered,
    }),
  );

const screenings: Read = async (access, patientId) =>
  (await screeningsOnRecord(access, patientId)).map(({ id, recordedAt, day, sheetVersion, answers }) => ({
    id,
    recordedAt,
    day,
    joint: null,
    entered: { sheetVersion, answers },
  }));

const events: Read = async (access, patientId) =>
  (await eventsOnRecord(access, patientId)).map(
    ({ id, recordedAt, medicine, day, kind, joint, lastDay, courseForm, remark }) => ({
      id,
      recordedAt,
      day,
      joint,
      entered: {
        day,
        kind,
        joint,
        ...(medicine?.act ? { medicineAct: medicine.act } : {}),
        ...(medicine ? { medicineClass: medicine.medicineClass } : {}),
        ...(courseForm ? { lastDay, courseForm } : {}),
        remark,
      },
    }),
  );

const limits: Read = async (access, patientId) =>
  (await limitsOnRecord(access, patientId)).map(({ id, recordedAt, liftedOn: _, ...entered }) => ({
    id,
    recordedAt,
    day: entered.from,
    joint: entered.joint,
    entered,
  }));

const goals: Read = async (access, patientId) => {
  const zone = (await clinicOf(access.store, access.clinicId))?.zone ?? 'UTC';
  return (await goalStepsOnRecord(access, patientId)).map(({ id, recordedAt, byName: _, ...entered }) => ({
    id,
    recordedAt,
    day: dayAt(recordedAt, zone),
    joint: null,
    entered,
  }));
};

const baselines: Read = async (access, patientId) =>
  (await baselineRowsOf(access, patientId)).map((row) => ({
    id: row.id,
    recordedAt: row.recordedAt,
    day: row.setOn,
    joint: row.joint,
    entered: {
      joint: row.joint,
      usualPain: row.usualPain,
      usualPainTop: row.usualPainTop,
      acceptablePainLimit: row.acceptablePainLimit,
      usualStiffnessMinutes: row.usualStiffnessMinutes,
      usualSwelling: row.usualSwelling,
      usualEffusion: row.usualEffusion,
      ...(row.riseAcknowledged ? { riseAcknowledged: true } : {}),
      reason: row.reason,
    },
  }));

const effusionTests: Read = async (access, patientId) =>
  (await effusionsOnRecord(access, patientId)).map(({ id, recordedAt, day, joint, grade }) => ({
    id,
    recordedAt,
    day,
    joint,
    entered: { joint, grade },
  }));

const clearances: Read = async (access, patientId) =>
  (await clearancesOnRecord(access, patientId)).map(
    ({ id, recordedAt, day, method, limb, side, findings, reason }) => ({
      id,
      recordedAt,
      day,
      joint: null,
      entered: { method, limb, side, findings, reason },
    }),
  );

const supervisedSessions: Read = async (access, patientId) =>
  (await supervisedOnRecord(access, patientId)).map(
    ({ id, recordedAt, limb, side, day, supervisedThroughout, remoteReason, remark }) => ({
      id,
      recordedAt,
      day,
      joint: null,
      entered: { limb, side, day, supervisedThroughout, remoteReason, remark },
    }),
  );

const homeAnswerSets: Read = async (access, patientId) =>
  (await homeAnswersOnRecord(access, patientId)).map(({ id, recordedAt, day, answers }) => ({
    id,
    recordedAt,
    day,
    joint: null,
    entered: { answers },
  }));
const readers: Readonly<Record<CorrectionSubject, Read>> = {
  measurement: measurements,
  screening: screenings,
  event: events,
  limit: limits,
  goal: goals,
  baseline: baselines,
  'effusion-test': effusionTests,
  clearance: clearances,
  'supervised-session': supervisedSessions,
  'home-answers': homeAnswerSets,
  contact: contacts,
  note: notes,
  visit: visits,
};

export const enteredOf = (
  access: Access,
  patientId: string,
  subject: CorrectionSubject,
): Promise<readonly EnteredRow[]> => readers[subject](access, patientId);
