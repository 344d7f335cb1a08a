/**
 * Who of the clinic looks after a patient, and openings of a record from outside that team. A
 * patient nobody has put into a team is looked after by every clinician of the clinic.
 */
import { randomUUID } from 'node:crypto';
import { and, asc, desc, eq, gt, gte, inArray } from 'drizzle-orm';
import { recordKeepingSettings } from '#core/record/settings.ts';
import type { Access } from '../access.ts';
import { appendAudit, auditWrite } from '../audit/audit.ts';
import { settingValue } from '../clinic/clinic-settings.ts';
import { authUser, careTeam, emergencyAccess, patientIdentity } from '../schema/schema.ts';

export interface TeamMember {
  readonly userId: string;
  readonly name: string;
}

/** The newest row of each person that says they belong, by patient. */
const current = (rows: readonly (typeof careTeam.$inferSelect)[]): ReadonlyMap<string, Set<string>> => {
  const teams = new Map<string, Set<string>>();
  for (const row of rows) {
    const team = teams.get(row.patientId) ?? new Set<string>();
    if (row.belongs) team.add(row.userId);
    else team.delete(row.userId);
    teams.set(row.patientId, team);
  }
  return teams;
};

const teamIds = async (access: Access, patientId: string): Promise<readonly string[]> => {
  const rows = await access.store.read
    .select()
    .from(careTeam)
    .where(and(eq(careTeam.clinicId, access.clinicId), eq(careTeam.patientId, patientId)))
    .orderBy(asc(careTeam.recordedAt));
  return [...(current(rows).get(patientId) ?? [])];
};

export const teamOf = async (access: Access, patientId: string): Promise<readonly TeamMember[]> => {
  const ids = await teamIds(access, patientId);
  if (ids.length === 0) return [];
  return access.store.read
    .select({ userId: authUser.id, name: authUser.name })
    .from(authUser)
    .where(and(eq(authUser.clinicId, access.clinicId), inArray(authUser.id, [...ids])))
    .orderBy(asc(authUser.name));
};

/** Adds a clinician of the clinic to the team, or takes one out; false when there is no such clinician. */
export const setTeamMember = (
  access: Access,
  patientId: string,
  userId: string,
  belongs: boolean,
): Promise<boolean> =>
  access.store.write(async (tx) => {
    const [user] = await tx
      .select({ id: authUser.id })
      .from(authUser)
      .where(
        and(eq(authUser.clinicId, access.clinicId), eq(authUser.id, userId), eq(authUser.role, 'clinician')),
      );
    if (!user) return false;
    const id = randomUUID();
    const { clinicId, now: recordedAt, actorId: recordedBy } = access;
    await tx.insert(careTeam).values({ id, clinicId, patientId, userId, belongs, recordedAt, recordedBy });
    await auditWrite(tx, access, 'care-team', { subjectId: userId, patientId, detail: { belongs } });
    return true;
  });

const isRestricted = async (access: Access): Promise<boolean> =>
  (await settingValue(access, recordKeepingSettings, 'care-team-restriction')) === 1;

const openNow = async (access: Access, patientId: string): Promise<boolean> => {
  const [row] = await access.store.read
    .select({ id: emergencyAccess.id })
    .from(emergencyAccess)
    .where(
      and(
        eq(emergencyAccess.clinicId, access.clinicId),
        eq(emergencyAccess.patientId, patientId),
        eq(emergencyAccess.userId, access.actorId),
        gt(emergencyAccess.until, access.now),
      ),
    )
    .limit(1);
  return row !== undefined;
};

/** Whether the caller, a clinician of the clinic, may open this record now. */
export const mayOpen = async (access: Access, patientId: string): Promise<boolean> => {
  if (!(await isRestricted(access))) return true;
  const team = await teamIds(access, patientId);
  return team.length === 0 || team.includes(access.actorId) || openNow(access, patientId);
};

/** Patients kept to teams the caller is not in; empty where the clinic does not restrict. */
export const closedToMe = async (access: Access): Promise<ReadonlySet<string>> => {
  if (!(await isRestricted(access))) return new Set();
  const rows = await access.store.read
    .select()
    .from(careTeam)
    .where(eq(careTeam.clinicId, access.clinicId))
    .orderBy(asc(careTeam.recordedAt));
  const closed = [...current(rows)].filter(([, team]) => team.size > 0 && !team.has(access.actorId));
  return new Set(closed.map(([patientId]) => patientId));
};

/** Opens a record from outside its team for some hours. The team is told. */
export const openWithReason = async (access: Access, patientId: string, reason: string): Promise<number> => {
  const hours = await settingValue(access, recordKeepingSettings, 'emergency-access-hours');
  const until = access.now + hours * 3_600_000;
  await access.store.write(async (tx) => {
    const id = randomUUID();
    await tx.insert(emergencyAccess).values({
      id,
      clinicId: access.clinicId,
      patientId,
      userId: access.actorId,
      userName: access.actorName,
      reason,
      beganAt: access.now,
      until,
    });
    await appendAudit(tx, access, {
      act: 'read',
      subject: 'emergency-access',
      subjectId: id,
      patientId,
      detail: { hours },
    });
  });
  return until;
};

export interface Eligibility {
  readonly patientId: string;
  readonly givenName: string;
  readonly familyName: string;
  readonly userName: string;
  readonly reason: string;
  readonly openedAt: number;
}

const emergencyAccessRows = (
  access: Access,
  since: number,
  patientId?: string,
): Promise<readonly Eligibility[]> =>
  Promise.resolve(
    access.store.read
      .select({
        patientId: emergencyAccess.patientId,
        givenName: patientIdentity.givenName,
        familyName: patientIdentity.familyName,
        userName: emergencyAccess.userName,
        reason: emergencyAccess.reason,
        openedAt: emergencyAccess.beganAt,
      })
      .from(emergencyAccess)
      .innerJoin(patientIdentity, eq(patientIdentity.patientId, emergencyAccess.patientId))
      .where(
        and(
          eq(emergencyAccess.clinicId, access.clinicId),
          gte(emergencyAccess.beganAt, since),
          patientId === undefined ? undefined : eq(emergencyAccess.patientId, patientId),
        ),
      )
      .orderBy(desc(emergencyAccess.beganAt)),
  );

export const emergencyAccessesOf = (access: Access, patientId: string) =>
  emergencyAccessRows(access, 0, patientId);

/** Openings of the last two weeks in records the caller looks after, newest first. */
export const emergencyAccessesForMe = async (access: Access): Promise<readonly Eligibility[]> => {
  const rows = await emergencyAccessRows(access, access.now - 14 * 86_400_000);
  if (rows.length === 0) return [];
  const closed = await closedToMe(access);
  return rows.filter((row) => !closed.has(row.patientId));
};
