/** A person's own open sign-ins: listed, ended, and proved anew. */
import { and, desc, eq, gt } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { type Acting, appendAudit } from '../audit/audit.ts';
import { authAccount, authSession, authUser, clinic } from '../schema/schema.ts';
import { requiresTwoFactor } from './staff.ts';

export interface SignInSession {
  readonly id: string;
  readonly createdAt: number;
  readonly lastUsedAt: number;
  readonly userAgent: string | null;
  /** Opened with a PIN on an enrolled phone. */
  readonly isPhone: boolean;
}

export const signInSessions = async (access: Access): Promise<readonly SignInSession[]> => {
  const rows = await access.store.read
    .select()
    .from(authSession)
    .where(and(eq(authSession.userId, access.actorId), gt(authSession.expiresAt, new Date())))
    .orderBy(desc(authSession.updatedAt));
  return rows.map((row) => ({
    id: row.id,
    createdAt: row.createdAt.getTime(),
    lastUsedAt: row.updatedAt.getTime(),
    userAgent: row.userAgent,
    isPhone: row.deviceId !== null,
  }));
};

/** Ends one of the person's own sessions, or all of them. Answers how many. */
export const endSignInSessions = (access: Access, sessionId: string | null): Promise<number> =>
  access.store.write(async (tx) => {
    const own = eq(authSession.userId, access.actorId);
    const ended = await tx
      .delete(authSession)
      .where(sessionId === null ? own : and(own, eq(authSession.id, sessionId)))
      .returning({ id: authSession.id });
    if (ended.length > 0) {
      await appendAudit(tx, access, {
        act: 'sign-in',
        subject: sessionId === null ? 'signed-out-everywhere' : 'session-ended',
        subjectId: access.actorId,
        detail: { count: ended.length },
      });
    }
    return ended.length;
  });

/** Passphrase or PIN was given again in this session. */
export const noteProof = (access: Acting, sessionId: string): Promise<void> =>
  access.store.write(async (tx) => {
    await tx
      .update(authSession)
      .set({ provedAt: new Date() })
      .where(and(eq(authSession.id, sessionId), eq(authSession.userId, access.actorId)));
    await appendAudit(tx, access, { act: 'sign-in', subject: 'proved-again', subjectId: access.actorId });
  });

/** What a person's own sign-in consists of. */
export const signInFacts = async (access: Access) => {
  const { read } = access.store;
  const [user] = await read
    .select({ hasCodes: authUser.twoFactorEnabled, zone: clinic.zone })
    .from(authUser)
    .innerJoin(clinic, eq(clinic.id, authUser.clinicId))
    .where(eq(authUser.id, access.actorId));
  const [account] = await read
    .select({ id: authAccount.id })
    .from(authAccount)
    .where(and(eq(authAccount.userId, access.actorId), eq(authAccount.providerId, 'credential')));
  return {
    hasCodes: user?.hasCodes ?? false,
    hasPassphrase: account !== undefined,
    codesRequired: await requiresTwoFactor(access.store, access.clinicId),
    zone: user?.zone ?? 'UTC',
  };
};
