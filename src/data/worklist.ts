/** Reading the worklist a page at a time, and rebuilding it from the record. */
import { and, asc, count, eq, inArray, lte, or, sql } from 'drizzle-orm';
import { dueMatters } from '#core/worklist/due-matters.ts';
import type { MatterKind } from '#core/worklist/matter.ts';
import type { Access } from './access.ts';
import { choicesOf } from './choices.ts';
import { dueAfter, type MatterRow, matterRows } from './matters.ts';
import { matter, matterAction, patient, patientIdentity } from './schema/schema.ts';
import { patientStates } from './worklist-states.ts';

export type StoredMatter = typeof matter.$inferSelect;

export interface WorklistLine {
  readonly patientId: string;
  readonly givenName: string;
  readonly familyName: string;
  /** Most pressing first. */
  readonly matters: readonly StoredMatter[];
}

/** Where a page ends; the next one begins after it. */
export interface Cursor {
  readonly rank: number;
  readonly since: number;
  readonly patientId: string;
}

export interface WorklistQuery {
  readonly after: Cursor | null;
  readonly limit: number;
  readonly kind: MatterKind | null;
  readonly assignedTo: string | null;
}

const due = (access: Access, query: Pick<WorklistQuery, 'kind' | 'assignedTo'>) =>
  and(
    eq(matter.clinicId, access.clinicId),
    lte(matter.showsFrom, access.day),
    or(sql`${matter.snoozedUntil} IS NULL`, sql`${matter.snoozedUntil} < ${access.day}`),
    query.kind ? eq(matter.kind, query.kind) : undefined,
    query.assignedTo ? eq(matter.assignedTo, query.assignedTo) : undefined,
  );

/** The most pressing matter of each patient, a page of them in order of danger, then age. */
const heads = (access: Access, query: WorklistQuery) => {
  const ranked = access.store.read
    .select({
      patientId: matter.patientId,
      rank: matter.rank,
      since: matter.since,
      place:
        sql<number>`row_number() over (partition by ${matter.patientId} order by ${matter.rank}, ${matter.since})`.as(
          'place',
        ),
    })
    .from(matter)
    .where(due(access, query))
    .as('ranked');
  const { after } = query;
  const beyond =
    after &&
    sql`(${ranked.rank}, ${ranked.since}, ${ranked.patientId}) > (${after.rank}, ${after.since}, ${after.patientId})`;
  return access.store.read
    .select()
    .from(ranked)
    .where(and(sql`${ranked.place} = 1`, beyond ?? undefined))
    .orderBy(asc(ranked.rank), asc(ranked.since), asc(ranked.patientId))
    .limit(query.limit);
};

export const worklistPage = async (
  access: Access,
  query: WorklistQuery,
): Promise<{ readonly lines: readonly WorklistLine[]; readonly next: Cursor | null }> => {
  const found = await heads(access, query);
  const ids = found.map((row) => row.patientId);
  if (ids.length === 0) return { lines: [], next: null };
  const rows = await access.store.read
    .select({ matter, givenName: patientIdentity.givenName, familyName: patientIdentity.familyName })
    .from(matter)
    .innerJoin(patientIdentity, eq(patientIdentity.patientId, matter.patientId))
    .where(and(due(access, { kind: null, assignedTo: null }), inArray(matter.patientId, ids)))
    .orderBy(asc(matter.rank), asc(matter.since));
  const byPatient = new Map<string, { givenName: string; familyName: string; matters: StoredMatter[] }>();
  for (const row of rows) {
    const known = byPatient.get(row.matter.patientId);
    if (known) known.matters.push(row.matter);
    else
      byPatient.set(row.matter.patientId, {
        givenName: row.givenName,
        familyName: row.familyName,
        matters: [row.matter],
      });
  }
  const last = found.at(-1);
  return {
    lines: ids.flatMap((patientId) => {
      const known = byPatient.get(patientId);
      return known ? [{ patientId, ...known }] : [];
    }),
    next:
      last && found.length === query.limit
        ? { rank: last.rank, since: last.since, patientId: last.patientId }
        : null,
  };
};

/** How many patients have a matter that shows today, and how many patients there are. */
export const worklistCounts = async (access: Access, query: Pick<WorklistQuery, 'kind' | 'assignedTo'>) => {
  const { read } = access.store;
  const [listed] = await read
    .select({ n: sql<number>`count(distinct ${matter.patientId})`.mapWith(Number) })
    .from(matter)
    .where(due(access, query));
  const [all] = await read.select({ n: count() }).from(patient).where(eq(patient.clinicId, access.clinicId));
  return { listed: listed?.n ?? 0, patients: all?.n ?? 0 };
};

/** Every matter of the clinic worked out from the record, as it should stand. */
export const rebuiltMatters = async (access: Access): Promise<readonly MatterRow[]> => {
  const after = dueAfter(await choicesOf(access));
  const actions = await access.store.read
    .select()
    .from(matterAction)
    .where(eq(matterAction.clinicId, access.clinicId))
    .orderBy(asc(matterAction.doneAt));
  const states = await patientStates(access);
  return [...states].flatMap(([patientId, state]) =>
    matterRows(
      access.clinicId,
      patientId,
      dueMatters(state, after),
      actions.filter((action) => action.patientId === patientId),
    ),
  );
};

/** Throws the clinic's matters away and writes them anew. Returns how many there are. */
export const rebuildWorklist = (access: Access): Promise<number> =>
  access.store.write(async (tx) => {
    const rows = await rebuiltMatters(access);
    await tx.delete(matter).where(eq(matter.clinicId, access.clinicId));
    for (let from = 0; from < rows.length; from += 200)
      await tx.insert(matter).values(rows.slice(from, from + 200));
    return rows.length;
  });
