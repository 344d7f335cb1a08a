/** Reading the worklist a page at a time. */
import { and, asc, count, eq, notExists, type Placeholder, type SQL, sql } from 'drizzle-orm';
import { alias } from 'drizzle-orm/sqlite-core';
import type { Day } from '#core/time/day.ts';
import { type StripFacts, stripFactsFrom, stripFrom } from '#core/worklist/strip.ts';
import { workOf } from '#core/worklist/work.ts';
import type { Access } from '../access.ts';
import type { Db } from '../database/connection.ts';
import { nestedRows, readEach } from '../database/nested-rows.ts';
import { prepared } from '../database/prepared.ts';
import { patientIdentity, worklistItem, worklistStrip } from '../schema/schema.ts';
import { due, dueIn, type Filter, isUnfiltered, openOrDanger, whenAsked } from './what-shows.ts';
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

export interface WorklistQuery extends Filter {
  readonly after: Cursor | null;
  readonly limit: number;
}

/** The table under another name, for a query that looks at it twice. */
const named = (name: string) => alias(worklistItem, name) as unknown as typeof worklistItem;
const other = named('other');
const listed = named('listed');

/** The plus keeps it out of the choice of an index: a patient's few items are compared, not a clinic's. */
const placeOfPatient = (rows: typeof worklistItem) => sql`(+${rows.rank}, +${rows.since}, +${rows.key})`;

interface PageParts {
  /** What counts towards a patient's place on the list. */
  readonly counts: (rows: typeof worklistItem) => SQL;
  /** What is told of a patient who is on it. */
  readonly told: (rows: typeof worklistItem) => SQL;
  readonly after: { readonly [K in keyof Cursor]: Cursor[K] | Placeholder } | null;
  readonly limit: number | Placeholder;
}

/**
 * A page of patients by their most pressing item, in order of danger, then age, each with all that is
 * due of them. The items are read in that order until the page is full, so a page costs the same in a
 * clinic of any size.
 */
const pageOf = (db: Db, { counts, told, after, limit }: PageParts) => {
  const moreUrgent = db
    .select({ one: sql`1` })
    .from(other)
    .where(
      and(
        counts(other),
        eq(other.patientId, worklistItem.patientId),
        sql`${placeOfPatient(other)} < ${placeOfPatient(worklistItem)}`,
      ),
    );
  const beyond = after
    ? sql`(${worklistItem.rank}, ${worklistItem.since}, ${worklistItem.patientId}) > (${after.rank}, ${after.since}, ${after.patientId})`
    : undefined;
  const ofPatient = sql`${told(listed)} AND ${eq(listed.patientId, worklistItem.patientId)}`;
  return db
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
    .where(and(counts(worklistItem), beyond, notExists(moreUrgent)))
    .orderBy(asc(worklistItem.rank), asc(worklistItem.since), asc(worklistItem.patientId))
    .limit(limit);
};

const dueWhenAsked = (rows: typeof worklistItem) => due(whenAsked, rows);
const whole = { counts: dueWhenAsked, told: dueWhenAsked, limit: sql.placeholder('limit') };
const firstOfAll = prepared((db) => pageOf(db, { ...whole, after: null }));
const furtherOfAll = prepared((db) =>
  pageOf(db, {
    ...whole,
    after: {
      rank: sql.placeholder('rank'),
      since: sql.placeholder('since'),
      patientId: sql.placeholder('patientId'),
    },
  }),
);

/** The list as everybody opens it is put together once, a narrowed one as it is asked for. */
const pageRows = async (access: Access, query: WorklistQuery) => {
  const { store, clinicId, day, now } = access;
  const { after, limit } = query;
  if (isUnfiltered(query))
    return after
      ? furtherOfAll(store.read, { clinicId, day, now, limit, ...after })
      : firstOfAll(store.read, { clinicId, day, now, limit });
  return pageOf(store.read, {
    counts: (rows) => dueIn(access, query, rows),
    told: (rows) => and(due(access, rows), openOrDanger(query, rows))!,
    after,
    limit,
  });
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

/** How many patients who usually come to a site have an item that shows today. */
export const listedOfSite = async (access: Access, query: Filter): Promise<number> => {
  const { read } = access.store;
  // Grouped, the file counts along an index by patient; told to count distinct ones it may sort them first.
  const patients = read
    .select({ patientId: worklistItem.patientId })
    .from(worklistItem)
    .where(dueIn(access, query, worklistItem))
    .groupBy(worklistItem.patientId)
    .as('listed_patients');
  const [listed] = await read.select({ n: count() }).from(patients);
  return listed?.n ?? 0;
};
