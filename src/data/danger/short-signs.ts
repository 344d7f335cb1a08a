/** The short form of asking for warning signs: who approved its words, and whether a patient may be asked so. */
import { randomUUID } from 'node:crypto';
import { and, desc, gte, sql } from 'drizzle-orm';
import {
  type ListNeeds,
  type SignsAsked,
  shortSignsUntil,
  shortWording,
  wholeListDays,
} from '#core/danger/signs-asked.ts';
import { addDays, type Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { ofClinic, ofPatient, patientQuery, prepared } from '../database/prepared.ts';
import { morning, shortSignsApproval, trainingSession, warningSign } from '../schema/schema.ts';

const newestAct = prepared((db) =>
  db
    .select()
    .from(shortSignsApproval)
    .where(ofClinic(shortSignsApproval))
    .orderBy(desc(shortSignsApproval.recordedAt), desc(sql`rowid`))
    .limit(1),
);

export interface ShortSignsAct {
  readonly act: 'approved' | 'withdrawn';
  readonly wording: number;
  readonly at: number;
  readonly by: string;
}

/** What was done last; null = nobody of the clinic has looked at it. */
export const shortSignsActOf = async (
  access: Pick<Access, 'store' | 'clinicId'>,
): Promise<ShortSignsAct | null> => {
  const [row] = await newestAct(access.store.read, { clinicId: access.clinicId });
  return row ? { act: row.act, wording: row.wording, at: row.recordedAt, by: row.byName } : null;
};

/** By a clinician of the clinic, for the words as they stand. */
export const actOnShortSigns = (access: Access, act: ShortSignsAct['act']): Promise<void> =>
  access.store.write(async (tx) => {
    const id = randomUUID();
    await tx.insert(shortSignsApproval).values({
      id,
      clinicId: access.clinicId,
      act,
      wording: shortWording,
      recordedAt: access.now,
      recordedBy: access.actorId,
      byName: access.actorName,
    });
    await auditWrite(tx, access, 'short-signs', { subjectId: id, detail: { act, wording: shortWording } });
  });

const answersTo = (table: typeof trainingSession | typeof morning) =>
  patientQuery((db) =>
    db
      .select({
        day: table.day,
        at: table.arrivedAt,
        asked: table.signsAsked,
        flags: table.redFlags,
      })
      .from(table)
      .where(and(ofPatient(table), gte(table.day, sql.placeholder('since')))),
  );

const inSessions = answersTo(trainingSession);
const inMornings = answersTo(morning);

const newestSign = patientQuery((db) =>
  db
    .select({ at: warningSign.recordedAt })
    .from(warningSign)
    .where(ofPatient(warningSign))
    .orderBy(desc(warningSign.recordedAt))
    .limit(1),
);

const anySession = patientQuery((db) =>
  db.select({ id: trainingSession.id }).from(trainingSession).where(ofPatient(trainingSession)).limit(1),
);

const isWhole = (asked: readonly SignsAsked[] | null): boolean =>
  asked === null || asked.some(({ form }) => form === 'list');

const listAnswered = async (access: Access, patientId: string): Promise<ListNeeds['listAnswered']> => {
  const since = { since: addDays(access.day, 1 - wholeListDays) };
  const rows = [
    ...(await inSessions(access, patientId, since)),
    ...(await inMornings(access, patientId, since)),
  ];
  const [newest] = rows
    .filter(({ asked, flags }) => flags?.length === 0 && isWhole(asked))
    .sort((a, b) => b.at - a.at);
  return newest ? { at: newest.at, day: newest.day } : null;
};

interface SignedLine {
  readonly itemId: string;
  readonly signedAt: number | null;
  readonly dose: { readonly method: string };
}

/** Newest signature under an exercise that is new or is done by another method than before. */
const methodChangedAt = (versions: readonly SignedLine[]): number | null => {
  const known = new Set<string>();
  let at: number | null = null;
  for (const { itemId, signedAt, dose } of [...versions].sort(
    (a, b) => (a.signedAt ?? 0) - (b.signedAt ?? 0),
  )) {
    if (signedAt === null || known.has(`${itemId} ${dose.method}`)) continue;
    known.add(`${itemId} ${dose.method}`);
    at = signedAt;
  }
  return at;
};

/** Last day on which this patient may be asked by the short form; null = the whole list. */
export const shortSignsFor = async (
  access: Access,
  patientId: string,
  isAlwaysWhole: boolean,
  versions: readonly SignedLine[],
): Promise<Day | null> => {
  const act = await shortSignsActOf(access);
  if (act?.act !== 'approved' || isAlwaysWhole) return null;
  const [sign] = await newestSign(access, patientId);
  return shortSignsUntil({
    day: access.day,
    approvedWording: act.wording,
    isAlwaysWhole,
    hadSession: (await anySession(access, patientId)).length > 0,
    listAnswered: await listAnswered(access, patientId),
    signAt: sign?.at ?? null,
    methodChangedAt: methodChangedAt(versions),
  });
};
