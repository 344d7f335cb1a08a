/** The clinic's own people: who signs in, with which powers. An account is never removed, only deactivated. */
import { randomUUID } from 'node:crypto';
import { and, asc, eq, isNull, ne } from 'drizzle-orm';
import { recordKeepingSettings } from '#core/record/settings.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { settingValue } from '../clinic/clinic-settings.ts';
import type { Db } from '../database/connection.ts';
import { ofClinic, prepared } from '../database/prepared.ts';
import type { Store } from '../database/store.ts';
import { authAccount, authSession, authTwoFactor, authUser, passkey } from '../schema/schema.ts';
import { hashed, startingDays, startingPassphrase } from './passphrase.ts';

/** Whether the clinic asks its staff for a second factor. */
export const requiresTwoFactor = async (store: Store, clinicId: string): Promise<boolean> =>
  (await settingValue({ store, clinicId }, recordKeepingSettings, 'staff-two-factor')) === 1;

export interface StaffRoles {
  readonly role: 'clinician' | 'administrator' | 'reception';
  readonly administers: boolean;
}

export interface StaffMember extends StaffRoles {
  readonly id: string;
  readonly name: string;
  readonly email: string;
  readonly twoFactorEnabled: boolean;
  readonly deactivatedAt: Date | null;
  /** Until when a handed-over passphrase may be used; null = an own one was chosen. */
  readonly startingUntil: Date | null;
}

export const staffOf = async (access: Access): Promise<readonly StaffMember[]> => {
  const rows = await access.store.read
    .select({
      id: authUser.id,
      name: authUser.name,
      email: authUser.email,
      role: authUser.role,
      administers: authUser.administers,
      twoFactorEnabled: authUser.twoFactorEnabled,
      deactivatedAt: authUser.deactivatedAt,
      startingUntil: authUser.startingUntil,
    })
    .from(authUser)
    .where(and(eq(authUser.clinicId, access.clinicId), ne(authUser.role, 'patient')))
    .orderBy(asc(authUser.name));
  return rows.map((row) => ({ ...row, role: row.role as StaffRoles['role'] }));
};

const member = async (tx: Db, access: Access, userId: string) => {
  const [row] = await tx
    .select()
    .from(authUser)
    .where(
      and(eq(authUser.clinicId, access.clinicId), eq(authUser.id, userId), ne(authUser.role, 'patient')),
    );
  return row ?? null;
};

const soon = () => new Date(Date.now() + startingDays * 86_400_000);

export interface NewStaff extends StaffRoles {
  readonly name: string;
  readonly email: string;
}

export type Handed = { readonly userId: string; readonly passphrase: string };

/** Adds a person with a passphrase to hand over, shown once. Null when the address is taken. */
export const addStaff = async (access: Access, row: NewStaff): Promise<Handed | null> => {
  const passphrase = startingPassphrase();
  const password = await hashed(passphrase);
  return access.store.write(async (tx) => {
    const email = row.email.toLowerCase();
    const [taken] = await tx.select({ id: authUser.id }).from(authUser).where(eq(authUser.email, email));
    if (taken) return null;
    const id = randomUUID();
    const now = new Date();
    const dates = { createdAt: now, updatedAt: now };
    await tx.insert(authUser).values({
      id,
      ...row,
      email,
      emailVerified: true,
      clinicId: access.clinicId,
      startingUntil: soon(),
      ...dates,
    });
    const account = { id: randomUUID(), accountId: id, providerId: 'credential', userId: id };
    await tx.insert(authAccount).values({ ...account, password, ...dates });
    await auditWrite(tx, access, 'staff-member', {
      subjectId: id,
      detail: { role: row.role, administers: row.administers },
    });
    return { userId: id, passphrase };
  });
};

export type Changed = 'changed' | 'not-found' | 'last-administrator';

/** Whether somebody who can administer the clinic is left beside this person. */
const isLastAdministrator = async (tx: Db, access: Access, userId: string): Promise<boolean> => {
  const rows = await tx.select().from(authUser).where(eq(authUser.clinicId, access.clinicId));
  const able = rows.filter(
    (row) =>
      !row.deactivatedAt && row.role !== 'patient' && (row.role === 'administrator' || row.administers),
  );
  return able.length === 1 && able[0]?.id === userId;
};

export const setRoles = (access: Access, userId: string, roles: StaffRoles): Promise<Changed> =>
  access.store.write(async (tx) => {
    if (!(await member(tx, access, userId))) return 'not-found';
    const losesPower = roles.role !== 'administrator' && !roles.administers;
    if (losesPower && (await isLastAdministrator(tx, access, userId))) return 'last-administrator';
    await tx
      .update(authUser)
      .set({ ...roles, updatedAt: new Date() })
      .where(eq(authUser.id, userId));
    await auditWrite(tx, access, 'staff-roles', { subjectId: userId, detail: { ...roles } });
    return 'changed';
  });

/** Ends all sign-ins of a person. What they recorded stays, under their name. */
export const setActive = (access: Access, userId: string, isActive: boolean): Promise<Changed> =>
  access.store.write(async (tx) => {
    if (!(await member(tx, access, userId))) return 'not-found';
    if (!isActive && (await isLastAdministrator(tx, access, userId))) return 'last-administrator';
    await tx
      .update(authUser)
      .set({ deactivatedAt: isActive ? null : new Date(), updatedAt: new Date() })
      .where(eq(authUser.id, userId));
    await tx.delete(authSession).where(eq(authSession.userId, userId));
    const subject = isActive ? 'staff-reactivated' : 'staff-deactivated';
    await auditWrite(tx, access, subject, { subjectId: userId });
    return 'changed';
  });

/** A new passphrase to hand over, for who lost theirs or their phone: codes are switched off, passkeys are taken away, sessions end. */
export const resetStaff = async (access: Access, userId: string): Promise<Handed | null> => {
  const passphrase = startingPassphrase();
  const password = await hashed(passphrase);
  return access.store.write(async (tx) => {
    if (!(await member(tx, access, userId))) return null;
    const updatedAt = new Date();
    await tx
      .update(authUser)
      .set({ startingUntil: soon(), twoFactorEnabled: false, updatedAt })
      .where(eq(authUser.id, userId));
    await tx
      .update(authAccount)
      .set({ password, updatedAt })
      .where(and(eq(authAccount.userId, userId), eq(authAccount.providerId, 'credential')));
    await tx.delete(authTwoFactor).where(eq(authTwoFactor.userId, userId));
    await tx.delete(passkey).where(eq(passkey.userId, userId));
    await tx.delete(authSession).where(eq(authSession.userId, userId));
    await auditWrite(tx, access, 'staff-reset', { subjectId: userId });
    return { userId, passphrase };
  });
};

const clinicianRows = prepared((db) =>
  db
    .select({ userId: authUser.id, name: authUser.name })
    .from(authUser)
    .where(and(ofClinic(authUser), eq(authUser.role, 'clinician'), isNull(authUser.deactivatedAt)))
    .orderBy(asc(authUser.name)),
);

/** Clinicians of the clinic who sign in now. */
export const colleaguesOf = async (
  access: Access,
): Promise<readonly { readonly userId: string; readonly name: string }[]> =>
  clinicianRows(access.store.read, { clinicId: access.clinicId });
