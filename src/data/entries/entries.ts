/**
 * What phones send, stored once each. The same entry id with the same content gets the same answer
 * again; with other content it is kept as a conflict for the clinician and changes nothing.
 */
import { randomUUID } from 'node:crypto';
import { and, sql } from 'drizzle-orm';
import { flagsWithLimb } from '#core/prescribing/occlusion/limb-check.ts';
import type { MorningEntry, SessionEntry, TwoHoursEntry } from '#core/record/entries.ts';
import { absentAnswers } from '#core/record/morning-questions.ts';
import { daysBetween } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { dayAt } from '../civil-time.ts';
import { insertRows } from '../database/insert-rows.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import {
  morning,
  morningJoint,
  prescription,
  sessionJoint,
  setLog,
  trainingSession,
  twoHours,
} from '../schema/schema.ts';
import { carryTwoHours, sessionNow } from './carried-two-hours.ts';
import { digestOf, type Entry, known, type Stored } from './known-entries.ts';

/** A phone and the clinic may disagree by this much before a clock counts as doubtful. */
const clockToleranceMs = 10 * 60_000;

/** Doubtful when the phone's clock is off, or the entry speaks of a time or a day after it was sent. */
const isDoubtful = (access: Access, entry: Entry, spokenOf: number): boolean =>
  Math.abs(access.now - entry.sentAt) > clockToleranceMs ||
  spokenOf > entry.sentAt + clockToleranceMs ||
  daysBetween(dayAt(entry.sentAt, entry.zone), entry.day) > 1;

/** The day is not that of the time spoken of. One off may be: work around midnight, or a phone on its way. */
const isOfAnotherDay = (entry: Entry, spokenOf: number): boolean =>
  Math.abs(daysBetween(entry.day, dayAt(spokenOf, entry.zone))) > 1;

/**
 * No session at home lasts so long: it lay open, and when the work was done is not known. Common practice, no
 * source. Over it the entry counts as one from a doubtful clock until a clinician confirms it.
 */
const longestSessionMs = 4 * 3_600_000;

const envelope = (access: Access, patientId: string, entry: Entry, clockDoubtful: boolean) => ({
  id: randomUUID(),
  clinicId: access.clinicId,
  patientId,
  entryId: entry.entryId,
  digest: digestOf(entry),
  format: entry.format,
  day: entry.day,
  zone: entry.zone,
  sentAt: entry.sentAt,
  arrivedAt: access.now,
  clockDoubtful,
  enteredBy: access.actorId,
  enteredAs: entry.enteredAs ?? null,
  amends: entry.amends ?? null,
  redFlags: entry.redFlags,
  extraPainRelief: entry.extraPainRelief,
  signsAsked: entry.signsAsked ?? null,
  signSlips: entry.signSlips?.length ? entry.signSlips : null,
});

/** Of some prescriptions those that are this patient's, with their line. */
const ownItems = patientQuery((db) =>
  db
    .select({ id: prescription.id, itemId: prescription.itemId })
    .from(prescription)
    .where(
      and(
        ofPatient(prescription),
        sql`${prescription.id} IN (SELECT value FROM json_each(${sql.placeholder('ids')}))`,
      ),
    ),
);

/** The first prescription named by a set that is not one of this patient's exercises, or null. */
const foreignPrescription = async (
  access: Access,
  patientId: string,
  entry: SessionEntry,
): Promise<string | null> => {
  const named = new Map(entry.sets.map((set) => [set.prescriptionId, set.itemId]));
  if (named.size === 0) return null;
  const rows = await ownItems(access, patientId, { ids: JSON.stringify([...named.keys()]) });
  const own = new Map(rows.map(({ id, itemId }) => [id, itemId]));
  for (const [prescriptionId, itemId] of named) if (own.get(prescriptionId) !== itemId) return prescriptionId;
  return null;
};

/** What may have been left open, what is new, and what was seen of fingers or toes. */
const openAnswers = ({ didExtra, news, otherJointWorse, limbChecks, redFlags }: SessionEntry) => ({
  didExtra: didExtra ?? true,
  didExtraUnanswered: didExtra === null,
  news: news ?? null,
  otherJointWorse: otherJointWorse ?? null,
  reportedNew: (news ?? []).length > 0 || otherJointWorse === true,
  limbChecks: limbChecks?.length ? limbChecks : null,
  redFlags: flagsWithLimb(redFlags, limbChecks ?? []),
});

export const storeSession = (access: Access, patientId: string, entry: SessionEntry): Promise<Stored> =>
  access.store.write(async (tx) => {
    const before = await known(tx, access, patientId, entry, trainingSession);
    if (before) return before;
    const stranger = await foreignPrescription(access, patientId, entry);
    if (stranger) return { kind: 'unknown-prescription', prescriptionId: stranger };
    const isTooLong = entry.endedAt - entry.beganAt > longestSessionMs;
    const clockDoubtful =
      isTooLong || isDoubtful(access, entry, entry.endedAt) || isOfAnotherDay(entry, entry.beganAt);
    const row = envelope(access, patientId, entry, clockDoubtful);
    const { beganAt, endedAt, kind, stoppedByFlag } = entry;
    const answered = openAnswers(entry);
    insertRows(tx, trainingSession, [{ ...row, beganAt, endedAt, kind, stoppedByFlag, ...answered }]);
    const owner = { clinicId: access.clinicId, patientId, sessionId: row.id };
    insertRows(
      tx,
      setLog,
      entry.sets.map(({ set, easier, ...rest }) => ({
        ...owner,
        id: randomUUID(),
        setNumber: set,
        easier: easier ?? null,
        ...rest,
      })),
    );
    insertRows(
      tx,
      sessionJoint,
      entry.joints.map(({ twoHoursState, gaveWay, ...rest }) => ({
        ...owner,
        painTwoHoursState: twoHoursState,
        gaveWay: gaveWay ?? true,
        gaveWayUnanswered: gaveWay === null,
        ...rest,
      })),
    );
    if (row.amends !== null) await carryTwoHours(tx, access, patientId, row.amends, row.id);
    // Of a session itself the worklist shows only these; what is decided about it says so on its own.
    if (clockDoubtful || row.amends !== null || answered.reportedNew) changed(access, patientId);
    await auditWrite(tx, access, 'session', {
      subjectId: row.id,
      patientId,
      detail: { sets: entry.sets.length, kind },
    });
    return { kind: 'stored', id: row.id, clockDoubtful };
  });

export const storeMorning = (
  access: Access,
  patientId: string,
  entry: MorningEntry,
  late: boolean,
): Promise<Stored> =>
  access.store.write(async (tx) => {
    const before = await known(tx, access, patientId, entry, morning);
    if (before) return before;
    const clockDoubtful =
      isDoubtful(access, entry, entry.answeredAt) || isOfAnotherDay(entry, entry.answeredAt);
    const row = envelope(access, patientId, entry, clockDoubtful);
    const { answeredAt, fatigue, fatigueState, otherJoint = null, via = null } = entry;
    insertRows(tx, morning, [{ ...row, answeredAt, fatigue, fatigueState, otherJoint, late, via }]);
    const owner = { clinicId: access.clinicId, patientId, morningId: row.id };
    insertRows(
      tx,
      morningJoint,
      entry.joints.map((joint) => ({ ...owner, ...absentAnswers, ...joint })),
    );
    changed(access, patientId);
    await auditWrite(tx, access, 'morning', { subjectId: row.id, patientId, detail: { late } });
    return { kind: 'stored', id: row.id, clockDoubtful };
  });

export const storeTwoHours = (access: Access, patientId: string, entry: TwoHoursEntry): Promise<Stored> =>
  access.store.write(async (tx) => {
    const before = await known(tx, access, patientId, entry, twoHours);
    if (before) return before;
    const session = await sessionNow(access, patientId, entry.sessionEntryId);
    if (!session) return { kind: 'no-session' };
    const clockDoubtful = isDoubtful(access, entry, entry.sentAt);
    const row = envelope(access, patientId, entry, clockDoubtful);
    insertRows(tx, twoHours, [{ ...row, sessionId: session.id, joint: entry.joint, pain: entry.pain }]);
    await auditWrite(tx, access, 'two-hours', { subjectId: row.id, patientId });
    return { kind: 'stored', id: row.id, clockDoubtful };
  });
