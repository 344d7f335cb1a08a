/** Places at which the clinic works. */
import { randomUUID } from 'node:crypto';
import { and, asc, eq, isNull } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { ofClinic, prepared } from '../database/prepared.ts';
import { site } from '../schema/schema.ts';

export interface Site {
  readonly id: string;
  readonly name: string;
  readonly address: string | null;
  readonly closedAt: number | null;
}

const siteRows = prepared((db) =>
  db
    .select({ id: site.id, name: site.name, address: site.address, closedAt: site.closedAt })
    .from(site)
    .where(ofClinic(site))
    .orderBy(asc(site.name)),
);

export const sitesOf = async (access: Access): Promise<readonly Site[]> =>
  siteRows(access.store.read, { clinicId: access.clinicId });

export const addSite = (access: Access, row: Pick<Site, 'name' | 'address'>): Promise<string> =>
  access.store.write(async (tx) => {
    const id = randomUUID();
    await tx.insert(site).values({ id, clinicId: access.clinicId, ...row, openedAt: access.now });
    await auditWrite(tx, access, 'site', { subjectId: id });
    return id;
  });

export const closeSite = (access: Access, id: string): Promise<boolean> =>
  access.store.write(async (tx) => {
    const closed = await tx
      .update(site)
      .set({ closedAt: access.now })
      .where(and(eq(site.clinicId, access.clinicId), eq(site.id, id), isNull(site.closedAt)))
      .returning({ id: site.id });
    if (closed.length === 0) return false;
    await auditWrite(tx, access, 'site-closed', { subjectId: id });
    return true;
  });
