/**
 * A warning sign is written down with the pause it brings, in the transaction of whatever told it. No sign
 * stands without its pause, and nothing that is taken back later takes a sign away.
 */

import type { SignSource } from '#core/danger/danger.ts';
import type { Contact } from '#core/decision/answers.ts';
import type { RedFlag } from '#core/decision/facts/facts.ts';
import { redFlagContact } from '#core/decision/rules/red-flags.ts';
import type { Joint } from '#core/exercises/joints.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { writtenNow } from '../episode/episodes.ts';
import { changedForPerson } from '../patients/changed-for-person.ts';
import { pause, warningSign } from '../schema/schema.ts';
import { flagsByEntry } from './danger-record.ts';

export interface NewSign {
  readonly source: SignSource;
  readonly flags: readonly RedFlag[];
  readonly joint: Joint | null;
  readonly entryId: string | null;
  readonly remark: string | null;
  /** Why everything is paused, in words for the clinician. */
  readonly reason: string;
}

const urgencyOf = (flags: readonly RedFlag[]): Exclude<Contact, 'none'> => {
  const contact = redFlagContact(flags);
  // A clinician who pauses for a concern of his or her own names no sign of the list.
  return contact === 'none' ? 'same-day' : contact;
};

export const reportSign = (access: Access, patientId: string, sign: NewSign): Promise<string> =>
  access.store.write(async (tx) => {
    const { reason, ...row } = sign;
    const now = writtenNow(access, patientId);
    await tx.insert(warningSign).values({ ...now, ...row, urgency: urgencyOf(sign.flags) });
    await tx.insert(pause).values({
      ...writtenNow(access, patientId),
      cause: 'warning-sign',
      signId: now.id,
      joint: null,
      reason,
      until: null,
    });
    await changedForPerson(access, patientId);
    await auditWrite(tx, access, 'warning-sign', {
      subjectId: now.id,
      patientId,
      detail: { source: sign.source, flags: sign.flags.length },
    });
    return now.id;
  });

const told = 'A warning sign was reported.';

/** The signs of an entry that was just stored, or of one that corrects it: only what is new makes a new sign. */
export const reportEntrySigns = async (
  access: Access,
  patientId: string,
  entry: {
    readonly entryId: string;
    readonly flags: readonly RedFlag[];
    /** The entry it corrects. */
    readonly amends: string | null;
    readonly source: SignSource;
  },
): Promise<void> => {
  const { flags } = entry;
  if (flags.length === 0) return;
  const known = await flagsByEntry(access, patientId);
  const before = known.filter(
    ({ entryId }) => entryId !== null && (entryId === entry.amends || entryId === entry.entryId),
  );
  const fresh = flags.filter((flag) => !before.some((one) => one.flags.includes(flag)));
  if (fresh.length === 0) return;
  await reportSign(access, patientId, {
    source: entry.source,
    flags: fresh,
    joint: null,
    entryId: entry.entryId,
    remark: null,
    reason: told,
  });
};

/** A sign the record itself shows, unless it was told since that instant. */
export const reportFoundSign = async (
  access: Access,
  patientId: string,
  flag: RedFlag,
  since: number,
): Promise<void> => {
  const known = await flagsByEntry(access, patientId);
  if (known.some(({ at, flags }) => at >= since && flags.includes(flag))) return;
  await reportSign(access, patientId, {
    source: 'record',
    flags: [flag],
    joint: null,
    entryId: null,
    remark: null,
    reason: told,
  });
};
