/** What a clinician does about an item: acknowledging it, giving it to somebody, snoozing it. */
import { randomUUID } from 'node:crypto';
import { and, eq } from 'drizzle-orm';
import { dangers } from '#core/worklist/item.ts';
import type { Access } from '../access.ts';
import { auditWrite } from '../audit/audit.ts';
import { changed } from '../changed.ts';
import { worklistItem, worklistItemAction } from '../schema/schema.ts';

export type Handled = 'done' | 'no-such-matter' | 'danger';

interface Handling {
  readonly key: string;
  readonly act: (typeof worklistItemAction.$inferSelect)['act'];
  readonly until: string | null;
  readonly assignee: { readonly id: string; readonly name: string } | null;
  readonly reason: string;
}

/** Acknowledges, assigns or snoozes an item. Danger cannot be snoozed. */
export const handleWorklistItem = (access: Access, patientId: string, request: Handling): Promise<Handled> =>
  access.store.write(async (tx) => {
    const [row] = await tx
      .select()
      .from(worklistItem)
      .where(
        and(
          eq(worklistItem.clinicId, access.clinicId),
          eq(worklistItem.patientId, patientId),
          eq(worklistItem.key, request.key),
        ),
      );
    if (!row) return 'no-such-matter';
    if (request.act === 'snooze' && dangers.includes(row.kind)) return 'danger';
    const id = randomUUID();
    await tx.insert(worklistItemAction).values({
      id,
      clinicId: access.clinicId,
      patientId,
      itemKey: request.key,
      itemSince: row.since,
      act: request.act,
      until: request.until,
      assignee: request.assignee?.id ?? null,
      assigneeName: request.assignee?.name ?? null,
      reason: request.reason,
      doneAt: access.now,
      doneBy: access.actorId,
      doneName: access.actorName,
    });
    await auditWrite(tx, access, 'worklist-item-action', {
      subjectId: id,
      patientId,
      detail: { key: request.key, act: request.act },
    });
    changed(access, patientId);
    return 'done';
  });
