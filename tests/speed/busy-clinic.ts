/** A clinic with some weeks of record, entered as phones and clinicians do. */

import type { MorningEntry } from '#core/record/entries.ts';
import { dayAt } from '#data/civil-time.ts';
import type { Store } from '#data/database/store.ts';
import { takeMorning, takeSession } from '#data/entries/take-entry.ts';
import {
  accessOf,
  morningEntry,
  sessionEntry,
  signedExercise,
  start,
  twoClinics,
  zone,
} from '#tests/support/clinic.ts';
import { freshStore } from '#tests/support/store.ts';

const dayMs = 86_400_000;

export interface BusyClinic {
  readonly store: Store;
  readonly patientId: string;
  readonly now: number;
  readonly prescriptionId: string;
  readonly itemId: string;
}

export const sessionAt = (clinic: Omit<BusyClinic, 'store' | 'now'>, at: number, entryId: string) =>
  sessionEntry({
    entryId,
    beganAt: at - 30 * 60_000,
    sentAt: at,
    sets: [1, 2, 3].map((set) => ({
      prescriptionId: clinic.prescriptionId,
      itemId: clinic.itemId,
      set,
      repetitions: 20,
      loadKg: 4,
      reserve: 2,
      stopReason: 'none' as const,
    })),
    joints: [
      {
        joint: 'right-knee',
        painBefore: 1,
        painDuring: 2,
        painAfter: 1,
        twoHoursState: 'not-applicable',
        muscleBurn: 3,
        cuffDiscomfort: null,
        gaveWay: false,
      },
    ],
  });

export const morningAt = (
  at: number,
  entryId: string,
  { pain = 1, ...over }: Partial<MorningEntry> & { readonly pain?: number } = {},
) =>
  morningEntry({
    ...over,
    entryId,
    day: dayAt(at, zone),
    sentAt: at,
    answeredAt: at - 60_000,
    joints: [
      {
        joint: 'right-knee',
        pain,
        stiffnessMinutes: 10,
        stiffnessState: 'asked',
        swelling: 'none',
        swellingState: 'asked',
        flare: false,
      },
    ],
  });

/** One patient with sessions every second day and a morning after each. */
export const busyClinic = async (sessions: number): Promise<BusyClinic> => {
  const store = freshStore();
  const { clinician, patientId } = await twoClinics(store);
  const exercise = await signedExercise(clinician, patientId);
  const person = { patientId, ...exercise };
  let now = start;
  for (let place = 0; place < sessions; place++) {
    now = start + (2 * place + 1) * dayMs;
    await takeSession(
      accessOf(store, 'a', patientId, now),
      patientId,
      sessionAt(person, now, `session-${place}`),
    );
    now += dayMs - 2 * 3_600_000;
    await takeMorning(accessOf(store, 'a', patientId, now), patientId, morningAt(now, `morning-${place}`));
  }
  return { store, now, ...person };
};
