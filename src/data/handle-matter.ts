/** What a clinician does about a matter: acknowledging it, giving it to somebody, putting it off. */
import { randomUUID } from 'node:crypto';
import { and, eq } from 'drizzle-orm';
import { dangers } from '#core/worklist/matter.ts';
import type { Access } from './access.ts';
import { sealed } from './audit.ts';
import { changed } from './changed.ts';
import { worklistItem, worklistItemAction } from './schema/schema.ts';

export type Handled = 'done' | 'no-such-matter' | 'danger';

interface Handling {
  readonly key: string;
  readonly act: (typeof worklistItemAction.$inferSelect)['act'];
  readonly until: string | null;
  readonly assignee: { readonly id: string; readonly name: string } | null;
  readonly reason: string;
}

/** Acknowledges, assigns or puts off a matter. Danger cannot be put off. */
export const handleMatter = (access: Access, patientId: string, wish: Handling): Promise<Handled> =>
  access.store.write(async (tx) => {
    const [row] = await tx
      .select()
      .from(worklistItem)
      .where(
        and(
          eq(worklistItem.clinicId, access.clinicId),
          eq(worklistItem.patientId, patientId),
          eq(worklistItem.key, wish.key),
        ),
      );
    if (!row) return 'no-such-matter';
    if (wish.act === 'snooze' && dangers.includes(row.kind)) return 'danger';
    const id = randomUUID();
    await tx.insert(worklistItemAction).values({
      id,
      clinicId: access.clinicId,
      patientId,
      itemKey: wish.key,
      itemSince: row.since,
      act: wish.act,
      until: wish.until,
      assignee: wish.assignee?.id ?? null,
      assigneeName: wish.assignee?.name ?? null,
      reason: wish.reason,
      doneAt: access.now,
      doneBy: access.actorId,
      doneName: access.actorName,
    });
    await sealed(tx, access, {
      act: 'write',
      subject: 'worklist-item-action',
      subjectId: id,
      patientId,
      detail: { key: wish.key, act: wish.act },
    });
    changed(access, patientId);
    return 'done';
  });
