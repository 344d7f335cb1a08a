/** What a clinician does about an item: acknowledging it, giving it to somebody, snoozing it. */
import { randomUUID } from 'node:crypto';
import { and, desc, eq, inArray } from 'drizzle-orm';
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

const inverse = { acknowledge: 'unacknowledge', assign: 'unassign' } as const;

/**
 * Takes back what the actor did last about an item, also where that had settled it. That somebody has read of a
 * danger, or has it, is not taken back: it would begin to wait again as though nobody knew.
 */
export const takeBack = (
  access: Access,
  patientId: string,
  { key, act }: { readonly key: string; readonly act: keyof typeof inverse },
): Promise<Handled> =>
  access.store.write(async (tx) => {
    const mine = and(eq(worklistItem.clinicId, access.clinicId), eq(worklistItem.patientId, patientId));
    const [item] = await tx
      .select()
      .from(worklistItem)
      .where(and(mine, eq(worklistItem.key, key)));
    if (item && dangers.includes(item.kind)) return 'danger';
    const [last] = await tx
      .select()
      .from(worklistItemAction)
      .where(
        and(
          eq(worklistItemAction.clinicId, access.clinicId),
          eq(worklistItemAction.patientId, patientId),
          eq(worklistItemAction.itemKey, key),
          inArray(worklistItemAction.act, [act, inverse[act]]),
        ),
      )
      .orderBy(desc(worklistItemAction.doneAt))
      .limit(1);
    if (last?.act !== act || last.doneBy !== access.actorId) return 'no-such-matter';
    const id = randomUUID();
    await tx.insert(worklistItemAction).values({
      ...last,
      id,
      act: inverse[act],
      assignee: null,
      assigneeName: null,
      reason: '',
      doneAt: access.now,
      doneName: access.actorName,
    });
    const detail = { key, act: inverse[act] };
    await auditWrite(tx, access, 'worklist-item-action', { subjectId: id, patientId, detail });
    changed(access, patientId);
    return 'done';
  });
