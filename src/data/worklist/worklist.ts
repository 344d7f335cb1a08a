/** Reading the worklist a page at a time. */
import { and, asc, count, eq, inArray, lte, notExists, or, sql } from 'drizzle-orm';
import { alias } from 'drizzle-orm/sqlite-core';
import type { Day } from '#core/time/day.ts';
import { dangers, type WorklistItemKind } from '#core/worklist/item.ts';
import { type StripFacts, stripFactsFrom, stripFrom } from '#core/worklist/strip.ts';
import { workOf } from '#core/worklist/work.ts';
import type { Access } from '../access.ts';
import { nestedRows, readEach } from '../database/nested-rows.ts';
import { mergedWith } from '../patients/merges.ts';
import { patientsOfSite } from '../patients/patient-sites.ts';
import { patientIdentity, worklistItem, worklistStrip } from '../schema/schema.ts';
import { byDanger, itemColumnsOf, itemIn, type StoredItem } from './worklist-cells.ts';

export interface WorklistLine {
  readonly patientId: string;
  readonly givenName: string;
  readonly familyName: string;
  readonly birthDay: Day;
  readonly phone: string | null;
  /** null = kept by no write yet. */
  readonly strip: StripFacts | null;
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

export type Filter = Pick<WorklistQuery, 'kind' | 'assignedTo' | 'siteId' | 'closed'>;

/** The table under another name, for a query that looks at it twice. */
const named = (name: string) => alias(worklistItem, name) as unknown as typeof worklistItem;
const other = named('other');
const listed = named('listed');

const openOrDanger = (closed: ReadonlySet<string> | undefined, rows: typeof worklistItem) =>
  closed && closed.size > 0
    ? or(
        sql`${rows.patientId} NOT IN (SELECT value FROM json_each(${JSON.stringify([...closed])}))`,
        inArray(rows.kind, [...dangers]),
      )
    : undefined;

/** Danger passes at an instant, hours after it was told; its due date alone would show it since midnight. */
const hasPassed = (access: Access, rows: typeof worklistItem) =>
  sql`(${rows.showsAt} IS NULL OR ${rows.showsAt} <= ${access.now})`;

const due = (access: Access, filter: Filter, rows: typeof worklistItem = worklistItem) =>
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

/** Everything due of a patient. */
const everything: Filter = { kind: null, assignedTo: null };

/** The plus keeps it out of the choice of an index: a patient's few items are compared, not a clinic's. */
const placeOfPatient = (rows: typeof worklistItem) => sql`(+${rows.rank}, +${rows.since}, +${rows.key})`;

/**
 * A page of patients by their most pressing item, in order of danger, then age, each with all that is
 * due of them. The items are read in that order until the page is full, so a page costs the same in a
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
        eq(other.patientId, worklistItem.patientId),
        sql`${placeOfPatient(other)} < ${placeOfPatient(worklistItem)}`,
      ),
    );
  const beyond = after
    ? sql`(${worklistItem.rank}, ${worklistItem.since}, ${worklistItem.patientId}) > (${after.rank}, ${after.since}, ${after.patientId})`
    : undefined;
  const ofPatient = sql`${due(access, { ...everything, closed: query.closed }, listed)} AND ${eq(listed.patientId, worklistItem.patientId)}`;
  return read
    .select({
      patientId: worklistItem.patientId,
      rank: worklistItem.rank,
      since: worklistItem.since,
      givenName: patientIdentity.givenName,
      familyName: patientIdentity.familyName,
      birthDay: patientIdentity.birthDay,
      phone: patientIdentity.phone,
      strip: worklistStrip.facts,
      worklistItems: nestedRows(itemColumnsOf(listed), sql`${worklistItem} AS listed`, ofPatient).mapWith(
        readEach(itemIn),
      ),
    })
    .from(worklistItem)
    .innerJoin(patientIdentity, eq(patientIdentity.patientId, worklistItem.patientId))
    .leftJoin(worklistStrip, eq(worklistStrip.patientId, worklistItem.patientId))
    .where(and(due(access, query), beyond, notExists(moreUrgent)))
    .orderBy(asc(worklistItem.rank), asc(worklistItem.since), asc(worklistItem.patientId))
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
    lines: rows.map(({ rank: _, since: __, patientId, worklistItems, strip, ...person }) => ({
      patientId,
      ...person,
      strip: strip && stripFactsFrom(strip, stripFrom(access.day)),
      worklistItems: [...worklistItems].sort(byDanger).map((row) => ({ clinicId, patientId, ...row })),
    })),
    next:
      last && rows.length === query.limit
        ? { rank: last.rank, since: last.since, patientId: last.patientId }
        : null,
  };
};

const endsInDanger = ({ lines }: Awaited<ReturnType<typeof worklistPage>>): boolean => {
  const item = lines.at(-1)?.worklistItems[0];
  return item !== undefined && workOf(item) === 'danger';
};

/** More than a clinic can have; where it has, the page says that danger goes on. */
const mostInDanger = 50;

/** As many as `limit`, and more while they stand in danger; `dangerGoesOn`: more of it stands on the next page. */
export const worklistPageWithDanger = async (access: Access, query: WorklistQuery) => {
  let page = await worklistPage(access, query);
  while (page.next && endsInDanger(page) && page.lines.length < mostInDanger) {
    const beyond = await worklistPage(access, { ...query, after: page.next });
    page = { lines: [...page.lines, ...beyond.lines], next: beyond.next };
  }
  return { ...page, dangerGoesOn: page.next !== null && endsInDanger(page) };
};

/** What waits today for one person, under whichever of the records that were merged, most pressing first. */
export const itemsDueOf = async (access: Access, patientId: string): Promise<readonly StoredItem[]> => {
  const patientIds = [patientId, ...(await mergedWith(access, patientId))];
  const rows = await access.store.read
    .select()
    .from(worklistItem)
    .where(and(due(access, everything), inArray(worklistItem.patientId, patientIds)));
  return rows.sort(byDanger);
};

/** How many patients who usually come to a site have an item that shows today. */
export const listedOfSite = async (access: Access, query: Filter): Promise<number> => {
  const { read } = access.store;
  // Grouped, the file counts along an index by patient; told to count distinct ones it may sort them first.
  const patients = read
    .select({ patientId: worklistItem.patientId })
    .from(worklistItem)
    .where(due(access, query))
    .groupBy(worklistItem.patientId)
    .as('listed_patients');
  const [listed] = await read.select({ n: count() }).from(patients);
  return listed?.n ?? 0;
};
