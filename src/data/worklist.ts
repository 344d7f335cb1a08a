/** Reading the worklist a page at a time, and rebuilding it from the record. */
import { and, asc, count, eq, inArray, lte, notExists, or, sql } from 'drizzle-orm';
import { alias } from 'drizzle-orm/sqlite-core';
import { dueItems } from '#core/worklist/due-matters.ts';
import { dangers, type WorklistItemKind } from '#core/worklist/matter.ts';
import type { Access } from './access.ts';
import { settingsOf } from './choices.ts';
import { dueAfter, type WorklistItemRow, worklistItemRows } from './matters.ts';
import { patientsOfSite } from './patient-sites.ts';
import { matter, matterAction, patient, patientIdentity } from './schema/schema.ts';
import { nestedRows, readEach } from './store/nested-rows.ts';
import { byDanger, itemColumnsOf, itemIn } from './worklist-cells.ts';
import { patientStates } from './worklist-states.ts';

/** As a page reads it: the instant it waited for is behind it. */
export type StoredItem = Omit<typeof matter.$inferSelect, 'showsAt'>;

export interface WorklistLine {
  readonly patientId: string;
  readonly givenName: string;
  readonly familyName: string;
  /** Most pressing first. */
  readonly worklistItems: readonly StoredItem[];
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
  readonly kind: WorklistItemKind | null;
  readonly assignedTo: string | null;
  /** Patients who usually come to this site. */
  readonly siteId?: string | null;
  /** Records kept to teams the reader is not in: of those only danger is listed and counted. */
  readonly closed?: ReadonlySet<string>;
}

type Filter = Pick<WorklistQuery, 'kind' | 'assignedTo' | 'siteId' | 'closed'>;

/** The table under another name, for a query that looks at it twice. */
const named = (name: string) => alias(matter, name) as unknown as typeof matter;
const other = named('other');
const listed = named('listed');

const openOrDanger = (closed: ReadonlySet<string> | undefined, rows: typeof matter) =>
  closed && closed.size > 0
    ? or(
        sql`${rows.patientId} NOT IN (SELECT value FROM json_each(${JSON.stringify([...closed])}))`,
        inArray(rows.kind, [...dangers]),
      )
    : undefined;

/** Danger passes at an instant, hours after it was told; its due date alone would show it since midnight. */
const hasPassed = (access: Access, rows: typeof matter) =>
  sql`(${rows.showsAt} IS NULL OR ${rows.showsAt} <= ${access.now})`;

const due = (access: Access, filter: Filter, rows: typeof matter = matter) =>
  and(
    eq(rows.clinicId, access.clinicId),
    lte(rows.showsFrom, access.day),
    hasPassed(access, rows),
    or(sql`${rows.snoozedUntil} IS NULL`, sql`${rows.snoozedUntil} < ${access.day}`),
    filter.kind ? eq(rows.kind, filter.kind) : undefined,
    filter.assignedTo ? eq(rows.assignedTo, filter.assignedTo) : undefined,
    filter.siteId ? sql`${rows.patientId} IN ${patientsOfSite(access, filter.siteId)}` : undefined,
    openOrDanger(filter.closed, rows),
  );

/** Everything due of a patient the reader may be shown. */
const everything = ({ closed }: Filter): Filter => ({ kind: null, assignedTo: null, closed });

/** The plus keeps it out of the choice of an index: a patient's few matters are compared, not a clinic's. */
const placeOfPatient = (rows: typeof matter) => sql`(+${rows.rank}, +${rows.since}, +${rows.key})`;

/**
 * A page of patients by their most pressing matter, in order of danger, then age, each with all that is
 * due of them. The matters are read in that order until the page is full, so a page costs the same in a
 * clinic of any size.
 */
const pageRows = (access: Access, query: WorklistQuery) => {
  const { read } = access.store;
  const { after } = query;
  const moreUrgent = read
    .select({ one: sql`1` })
    .from(other)
    .where(
      and(
        due(access, query, other),
        eq(other.patientId, matter.patientId),
        sql`${placeOfPatient(other)} < ${placeOfPatient(matter)}`,
      ),
    );
  const beyond = after
    ? sql`(${matter.rank}, ${matter.since}, ${matter.patientId}) > (${after.rank}, ${after.since}, ${after.patientId})`
    : undefined;
  const ofPatient = sql`${due(access, everything(query), listed)} AND ${eq(listed.patientId, matter.patientId)}`;
  return read
    .select({
      patientId: matter.patientId,
      rank: matter.rank,
      since: matter.since,
      givenName: patientIdentity.givenName,
      familyName: patientIdentity.familyName,
      worklistItems: nestedRows(itemColumnsOf(listed), sql`${matter} AS listed`, ofPatient).mapWith(
        readEach(itemIn),
      ),
    })
    .from(matter)
    .innerJoin(patientIdentity, eq(patientIdentity.patientId, matter.patientId))
    .where(and(due(access, query), beyond, notExists(moreUrgent)))
    .orderBy(asc(matter.rank), asc(matter.since), asc(matter.patientId))
    .limit(query.limit);
};

export const worklistPage = async (
  access: Access,
  query: WorklistQuery,
): Promise<{ readonly lines: readonly WorklistLine[]; readonly next: Cursor | null }> => {
  const rows = await pageRows(access, query);
  const { clinicId } = access;
  const last = rows.at(-1);
  return {
    lines: rows.map(({ patientId, givenName, familyName, worklistItems }) => ({
      patientId,
      givenName,
      familyName,
      worklistItems: [...worklistItems].sort(byDanger).map((row) => ({ clinicId, patientId, ...row })),
    })),
    next:
      last && rows.length === query.limit
        ? { rank: last.rank, since: last.since, patientId: last.patientId }
        : null,
  };
};

/** How many patients have a matter that shows today, and how many patients there are. */
export const worklistCounts = async (access: Access, query: Filter) => {
  const { read } = access.store;
  // Grouped, the file counts along an index by patient; told to count distinct ones it may sort them first.
  const patients = read
    .select({ patientId: matter.patientId })
    .from(matter)
    .where(due(access, query))
    .groupBy(matter.patientId)
    .as('listed_patients');
  const [listed] = await read.select({ n: count() }).from(patients);
  const [all] = await read.select({ n: count() }).from(patient).where(eq(patient.clinicId, access.clinicId));
  return { listed: listed?.n ?? 0, patients: all?.n ?? 0 };
};

/** Every matter of the clinic worked out from the record, as it should stand. */
export const rebuiltWorklistItems = async (access: Access): Promise<readonly WorklistItemRow[]> => {
  const after = dueAfter(await settingsOf(access));
  const actions = await access.store.read
    .select()
    .from(matterAction)
    .where(eq(matterAction.clinicId, access.clinicId))
    .orderBy(asc(matterAction.doneAt));
  const states = await patientStates(access);
  return [...states].flatMap(([patientId, state]) =>
    worklistItemRows(
      access.clinicId,
      patientId,
      dueItems(state, after),
      actions.filter((action) => action.patientId === patientId),
    ),
  );
};

/** Throws the clinic's matters away and writes them anew. Returns how many there are. */
export const rebuildWorklist = (access: Access): Promise<number> =>
  access.store.write(async (tx) => {
    const rows = await rebuiltWorklistItems(access);
    await tx.delete(matter).where(eq(matter.clinicId, access.clinicId));
    for (let from = 0; from < rows.length; from += 200)
      await tx.insert(matter).values(rows.slice(from, from + 200));
    return rows.length;
  });
