/** One session and one morning of a patient with a sore knee, sent at the instant of the access. */
import type { Access } from '#data/access.ts';
import { takeMorning, takeSession } from '#data/entries/take-entry.ts';
import { morningEntry, sessionEntry } from './clinic.ts';

export interface PrescriptionItem {
  readonly prescriptionId: string;
  readonly itemId: string;
}

export const sendSession = (
  access: Access,
  patientId: string,
  item: PrescriptionItem,
  painAfter: number,
  over: object = {},
) =>
  takeSession(
    access,
    patientId,
    sessionEntry({
      entryId: `s-${access.now}-${painAfter}`,
      beganAt: access.now - 1_800_000,
      endedAt: access.now - 600_000,
      sentAt: access.now,
      day: access.day,
      sets: [{ ...item, set: 1, repetitions: 20, loadKg: 4, reserve: 2, stopReason: 'none' }],
      joints: [
        {
          joint: 'right-knee',
          painBefore: 2,
          painDuring: 2,
          painAfter,
          twoHoursState: 'not-applicable',
          muscleBurn: null,
          cuffDiscomfort: null,
          gaveWay: false,
        },
      ],
      ...over,
    }),
  );

export const sendMorning = (access: Access, patientId: string, pain: number | null) =>
  takeMorning(
    access,
    patientId,
    morningEntry({
      entryId: `m-${access.now}`,
      answeredAt: access.now,
      sentAt: access.now,
      day: access.day,
      joints: [
        {
          joint: 'right-knee',
          pain,
          stiffnessMinutes: 5,
          stiffnessState: 'asked',
          swelling: 'none',
          swellingState: 'asked',
          flare: false,
        },
      ],
    }),
  );
