/**
 * The private address of a patient's calendar. Whoever has the address reads the days ahead, so it is made of 256
 * random bits, shown once and kept as a digest; there is one in use at a time, and it ends at once when it is taken back.
 */
import { randomUUID } from 'node:crypto';
import { and, desc, eq, isNull } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { makeSecret, secretDigest } from '../accounts/secret.ts';
import { appendAudit, auditWrite } from '../audit/audit.ts';
import { dayAt } from '../civil-time.ts';
import type { Db } from '../database/connection.ts';
import { ofPatient, patientQuery } from '../database/prepared.ts';
import type { Store } from '../database/store.ts';
import { calendarFeed } from '../schema/schema.ts';

export type FeedRow = typeof calendarFeed.$inferSelect;
export type FeedEnding = NonNullable<FeedRow['endedBy']>;

/** What is shown of an address; the address itself is known to nobody here. */
export interface CalendarFeed {
  readonly madeAt: number;
  readonly lastReadAt: number | null;
  readonly ended: { readonly at: number; readonly by: FeedEnding } | null;
}

const tokenShape = /^[A-Za-z0-9_-]{43}$/;

const digestOf = (token: string): string => secretDigest(`calendar ${token}`);

const inUse = (access: Access, patientId: string) =>
  and(
    eq(calendarFeed.clinicId, access.clinicId),
    eq(calendarFeed.patientId, patientId),
    isNull(calendarFeed.endedAt),
  );

const newest = patientQuery((db) =>
  db.select().from(calendarFeed).where(ofPatient(calendarFeed)).orderBy(desc(calendarFeed.madeAt)).limit(1),
);

/** The newest, also when it has ended; null when none was ever made. */
export const calendarFeedOf = async (access: Access, patientId: string): Promise<CalendarFeed | null> => {
  const [row] = await newest(access, patientId);
  if (!row) return null;
  const ended = row.endedAt && row.endedBy ? { at: row.endedAt, by: row.endedBy } : null;
  return { madeAt: row.madeAt, lastReadAt: row.lastReadAt, ended };
};

/** Ends the address in use; false when there is none. Inside the caller's transaction. */
export const endFeedIn = async (
  tx: Db,
  access: Access,
  patientId: string,
  by: FeedEnding,
): Promise<boolean> => {
  const [ended] = await tx
    .update(calendarFeed)
    .set({ endedAt: Date.now(), endedBy: by })
    .where(inUse(access, patientId))
    .returning({ id: calendarFeed.id });
  if (!ended) return false;
  await auditWrite(tx, access, 'calendar-feed-ended', { subjectId: ended.id, patientId, detail: { by } });
  return true;
};

export const endFeed = (access: Access, patientId: string, by: FeedEnding): Promise<boolean> =>
  access.store.write((tx) => endFeedIn(tx, access, patientId, by));

/** Makes a new address and ends the one before it. The token is answered once. */
export const makeFeed = (access: Access, patientId: string, language: string): Promise<string> =>
  access.store.write(async (tx) => {
    await endFeedIn(tx, access, patientId, 'patient');
    const token = makeSecret();
    const id = randomUUID();
    await tx.insert(calendarFeed).values({
      ...{ id, clinicId: access.clinicId, patientId, language },
      ...{ tokenDigest: digestOf(token), madeAt: Date.now(), madeBy: access.actorId },
    });
    await auditWrite(tx, access, 'calendar-feed', { subjectId: id, patientId });
    return token;
  });

/** The address in use that has this token; null for every other text, for whatever reason. */
export const feedWithToken = async (store: Store, token: string): Promise<FeedRow | null> => {
  if (!tokenShape.test(token)) return null;
  const [row] = await store.read
    .select()
    .from(calendarFeed)
    .where(and(eq(calendarFeed.tokenDigest, digestOf(token)), isNull(calendarFeed.endedAt)));
  return row ?? null;
};

/** A program asks every few minutes; when it asked is kept no finer than this. */
const keptToMs = 10 * 60_000;

/** By this name the access log knows that an address was read, and not a person. */
export const feedActor = 'calendar-feed';

/**
 * That it was read: in the audit once for each day of the clinic, so that a program that asks every minute does not
 * fill it. Ends before anything is handed out.
 */
export const noteFeedRead = async (access: Access, feed: FeedRow, zone: string): Promise<void> => {
  const now = Date.now();
  const { lastReadAt } = feed;
  if (
    lastReadAt !== null &&
    Math.abs(now - lastReadAt) < keptToMs &&
    dayAt(lastReadAt, zone) === dayAt(now, zone)
  )
    return;
  await access.store.write(async (tx) => {
    const own = and(eq(calendarFeed.id, feed.id), isNull(calendarFeed.endedAt));
    const [row] = await tx.select().from(calendarFeed).where(own);
    // Two programs may ask at once.
    const isNewDay = !row?.lastReadAt || dayAt(row.lastReadAt, zone) !== dayAt(now, zone);
    await tx.update(calendarFeed).set({ lastReadAt: now }).where(own);
    if (isNewDay)
      await appendAudit(tx, access, {
        ...{ act: 'read', subject: 'calendar-feed', subjectId: feed.id, patientId: feed.patientId },
      });
  });
};
