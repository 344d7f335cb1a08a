/** Sessions as phones send them, ready to be taken, and scratch copies of a group to take them in. */
import { randomUUID } from 'node:crypto';
import { constants, copyFileSync } from 'node:fs';
import path from 'node:path';
import { entryFormat, type SessionEntry } from '#core/record/entries.ts';
import type { Access } from '#data/access.ts';
import type { Store } from '#data/database/store.ts';
import { openStore } from '#data/open-store.ts';
import { inForce, prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { benchFolder, groupFile, removeFile } from '../group/make-group.ts';
import { dayOf, type GroupPlan, jointsOf, now, patientId, zone } from '../group/plan.ts';

/** Ended a minute before it is sent. */
const beganBefore = 26 * 60_000;

export const sessionToSend = async (access: Access, patient: number): Promise<SessionEntry> => {
  const lines = inForce(await prescriptionsOf(access, patientId(patient)));
  const beganAt = access.now - beganBefore;
  return {
    format: entryFormat,
    entryId: randomUUID(),
    day: dayOf(beganAt),
    zone,
    sentAt: access.now,
    redFlags: [],
    extraPainRelief: false,
    kind: 'full',
    beganAt,
    endedAt: access.now - 60_000,
    didExtra: false,
    stoppedByFlag: false,
    sets: lines.flatMap((item) =>
      Array.from({ length: item.dose.sets }, (_, at) => ({
        prescriptionId: item.id,
        itemId: item.itemId,
        set: at + 1,
        repetitions: 20,
        loadKg: item.dose.method === 'variation' ? item.dose.addedKg : item.dose.loadKg,
        reserve: 2,
        stopReason: 'none' as const,
      })),
    ),
    joints: jointsOf(patient).map((joint) => ({
      joint,
      painBefore: 2,
      painDuring: 3,
      painAfter: 2,
      twoHoursState: 'not-applicable' as const,
      muscleBurn: 4,
      cuffDiscomfort: null,
      gaveWay: false,
    })),
  };
};

/** An instant of its own for each save, a minute apart. */
export const instantOf = (place: number): number => now + place * 60_000;

/** Runs with scratch copies of the group, which are written to and thrown away. */
export const withCopies = async <T>(
  plan: GroupPlan,
  names: readonly string[],
  work: (stores: readonly Store[]) => Promise<T>,
): Promise<T> => {
  const group = await groupFile(plan);
  const files = names.map((name) => path.join(benchFolder, `scratch-${name}.sqlite`));
  const stores: Store[] = [];
  try {
    for (const file of files) {
      removeFile(file);
      copyFileSync(group, file, constants.COPYFILE_FICLONE);
      stores.push(openStore(file));
    }
    return await work(stores);
  } finally {
    for (const store of stores) store.close();
    for (const file of files) removeFile(file);
  }
};
