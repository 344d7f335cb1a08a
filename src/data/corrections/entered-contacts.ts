/** Contacts, notes and appointments, each as its form takes it. */
import { dayAt } from '../civil-time.ts';
import { contactsOnRecord } from '../danger/danger-record.ts';
import { notesOnRecord } from '../episode/visit-notes.ts';
import { visitsOnRecord } from '../episode/visits.ts';
import { clinicOf } from '../patients/people.ts';
import type { Read } from './entered-row.ts';

const hourMs = 3_600_000;

export const contacts: Read = async (access, patientId) => {
  const zone = (await clinicOf(access.store, access.clinicId))?.zone ?? 'UTC';
  return (await contactsOnRecord(access, patientId)).map(({ id, at, by: _, nextAt, ...entered }) => ({
    id,
    recordedAt: at,
    day: dayAt(at, zone),
    joint: null,
    entered: { ...entered, againInHours: nextAt === null ? null : Math.round((nextAt - at) / hourMs) },
  }));
};

export const notes: Read = async (access, patientId) =>
  (await notesOnRecord(access, patientId)).map(
    ({ id, recordedAt, episodeId: _, byName: __, ...entered }) => ({
      id,
      recordedAt,
      day: entered.day,
      joint: null,
      entered,
    }),
  );

export const visits: Read = async (access, patientId) =>
  (await visitsOnRecord(access, patientId)).map(
    ({ id, recordedAt, day, heldBy: _, heldName: __, ...entered }) => ({
      id,
      recordedAt,
      day,
      joint: null,
      entered,
    }),
  );
