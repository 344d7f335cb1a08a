/** What of the worklist shows at a moment, and to whom. */
import { and, eq, inArray, lte, or, type Placeholder, type SQL, sql } from 'drizzle-orm';
import { dangers, type WorklistItemKind } from '#core/worklist/item.ts';
import type { Access } from '../access.ts';
import { patientsOfSite } from '../patients/patient-sites.ts';
import type { worklistItem } from '../schema/schema.ts';

type Rows = typeof worklistItem;

/** Whose worklist, and when: as values, or as what is filled in once the query is asked. */
export type When = { readonly [K in 'clinicId' | 'day' | 'now']: Access[K] | Placeholder };

export const whenAsked: When = {
  clinicId: sql.placeholder('clinicId'),
  day: sql.placeholder('day'),
  now: sql.placeholder('now'),
};

/** Danger passes at an instant, hours after it was told; its due date alone would show it since midnight. */
const hasPassed = ({ now }: When, rows: Rows) => sql`(${rows.showsAt} IS NULL OR ${rows.showsAt} <= ${now})`;

/** Everything due of a patient. */
export const due = (when: When, rows: Rows): SQL =>
  and(
    eq(rows.clinicId, when.clinicId),
    lte(rows.showsFrom, when.day),
    hasPassed(when, rows),
    or(sql`${rows.snoozedUntil} IS NULL`, sql`${rows.snoozedUntil} < ${when.day}`),
  )!;

export interface Filter {
  readonly kind: WorklistItemKind | null;
  readonly assignedTo: string | null;
  /** Patients who usually come to this site. */
  readonly siteId?: string | null;
  /** Records kept to teams the reader is not in: of those only danger is listed and counted. */
  readonly closed?: ReadonlySet<string>;
}

export const isUnfiltered = ({ kind, assignedTo, siteId, closed }: Filter): boolean =>
  !kind && !assignedTo && !siteId && (closed?.size ?? 0) === 0;

/** Of a record that is kept to others, nothing but danger. */
export const openOrDanger = ({ closed }: Pick<Filter, 'closed'>, rows: Rows): SQL | undefined =>
  closed && closed.size > 0
    ? or(
        sql`${rows.patientId} NOT IN (SELECT value FROM json_each(${JSON.stringify([...closed])}))`,
        inArray(rows.kind, [...dangers]),
      )
    : undefined;

export const dueIn = (access: Access, filter: Filter, rows: Rows): SQL =>
  and(
    due(access, rows),
    filter.kind ? eq(rows.kind, filter.kind) : undefined,
    filter.assignedTo ? eq(rows.assignedTo, filter.assignedTo) : undefined,
    filter.siteId ? sql`${rows.patientId} IN ${patientsOfSite(access, filter.siteId)}` : undefined,
    openOrDanger(filter, rows),
  )!;
