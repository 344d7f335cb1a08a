/** Who opened a record, for the patient: one line a person and day, from the audit chain. */
import { and, desc, eq, gte, inArray, ne } from 'drizzle-orm';
import type { Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { dayAt } from '../civil-time.ts';
import { feedActor } from '../exchange/calendar-feeds.ts';
import { handedOn } from '../patients/record-files.ts';
import { tokensOf } from '../programs/tokens.ts';
import { audit, authUser, clinic, emergencyAccess } from '../schema/schema.ts';
import { auditStoredSince } from './audit-archive.ts';

export interface AccessLogRow {
  readonly day: Day;
  /** null = a person the clinic no longer lists, or the product itself. */
  readonly name: string | null;
  /** Not somebody who looked, but the program that reads the patient’s own calendar address. */
  readonly isFeed: boolean;
  /** Not a person but another program; its name is what its token was called, which may read like a person's. */
  readonly isProgram: boolean;
  readonly lastAt: number;
  /** Times looked: one page asks for several things, so reads close together are one look. */
  readonly reads: number;
  readonly writes: number;
  /** What was written on opening from outside the care team; empty for who belongs to it. */
  readonly reasons: readonly string[];
  /** To whom the record was handed on as a file. */
  readonly handedTo: readonly string[];
}

/** What people wrote beside an opening, by the id of the row it stands in. */
interface Written {
  readonly reasons: ReadonlyMap<string, string>;
  readonly handedTo: ReadonlyMap<string, string>;
}

const withText = (
  known: readonly string[] | undefined,
  texts: ReadonlyMap<string, string>,
  { subjectId }: Seen,
): readonly string[] => {
  const text = texts.get(subjectId ?? '');
  return text === undefined ? (known ?? []) : [...(known ?? []), text];
};

interface Seen {
  readonly at: number;
  readonly actorId: string;
  readonly act: string;
  readonly subject: string;
  readonly subjectId: string | null;
}

interface Named {
  readonly names: ReadonlyMap<string, string>;
  readonly programs: ReadonlySet<string>;
}

/** Reads no further apart than this are one look. */
const oneLook = 10 * 60_000;

/** Rows come newest first, and so do the lines. */
const groupAccesses = (
  rows: readonly Seen[],
  zone: string,
  { names, programs }: Named,
  written: Written,
): readonly AccessLogRow[] => {
  const lines = new Map<string, AccessLogRow>();
  const lastRead = new Map<string, number>();
  for (const row of rows) {
    const day = dayAt(row.at, zone);
    const key = `${day} ${row.actorId}`;
    const known = lines.get(key);
    const isWrite = row.act === 'write';
    const isLook = !isWrite && !((lastRead.get(key) ?? Infinity) - row.at <= oneLook);
    if (!isWrite) lastRead.set(key, row.at);
    lines.set(key, {
      day,
      name: names.get(row.actorId) ?? null,
      isFeed: row.actorId === feedActor,
      isProgram: programs.has(row.actorId),
      lastAt: Math.max(known?.lastAt ?? 0, row.at),
      reads: (known?.reads ?? 0) + (isLook ? 1 : 0),
      writes: (known?.writes ?? 0) + (isWrite ? 1 : 0),
      reasons: withText(known?.reasons, written.reasons, row),
      handedTo: withText(known?.handedTo, written.handedTo, row),
    });
  }
  return [...lines.values()].sort((a, b) => b.lastAt - a.lastAt);
};

const namedOf = async (access: Access): Promise<Named> => {
  const users = await access.store.read
    .select({ id: authUser.id, name: authUser.name })
    .from(authUser)
    .where(eq(authUser.clinicId, access.clinicId));
  // A program reads under the name its token was given.
  const programs = await tokensOf(access);
  return {
    names: new Map([...users, ...programs].map(({ id, name }) => [id, name])),
    programs: new Set(programs.map(({ id }) => id)),
  };
};

const writtenOf = async (access: Access, patientId: string): Promise<Written> => {
  const rows = await access.store.read
    .select({ id: emergencyAccess.id, reason: emergencyAccess.reason })
    .from(emergencyAccess)
    .where(and(eq(emergencyAccess.clinicId, access.clinicId), eq(emergencyAccess.patientId, patientId)));
  const files = await handedOn(access, patientId);
  return {
    reasons: new Map(rows.map((row) => [row.id, row.reason])),
    handedTo: new Map(files.map((file) => [file.id, file.handedTo])),
  };
};

/** `ownId` is the patient's own sign-in, whose openings are not news to them. */
export const accessLog = async (
  access: Access,
  patientId: string,
  ownId: string,
): Promise<readonly AccessLogRow[]> => {
  const since = await auditStoredSince(access);
  const rows = await access.store.read
    .select({
      at: audit.at,
      actorId: audit.actorId,
      act: audit.act,
      subject: audit.subject,
      subjectId: audit.subjectId,
    })
    .from(audit)
    .where(
      and(
        eq(audit.clinicId, access.clinicId),
        eq(audit.patientId, patientId),
        ne(audit.actorId, ownId),
        inArray(audit.act, ['read', 'write']),
        gte(audit.at, since),
      ),
    )
    .orderBy(desc(audit.at))
    .limit(20_000);
  const [own] = await access.store.read
    .select({ zone: clinic.zone })
    .from(clinic)
    .where(eq(clinic.id, access.clinicId));
  return groupAccesses(rows, own?.zone ?? 'UTC', await namedOf(access), await writtenOf(access, patientId));
};
