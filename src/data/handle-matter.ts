/** What a clinician does about a matter: acknowledging it, giving it to somebody, putting it off. */
import { randomUUID } from 'node:crypto';
import { and, eq } from 'drizzle-orm';
import { dangers } from '#core/worklist/matter.ts';
import type { Access } from './access.ts';
import { sealed } from './audit.ts';
import { changed } from './changed.ts';
import { matter, matterAction } from './schema/schema.ts';

export type Handled = 'done' | 'no-such-matter' | 'danger';

interface Handling {
  readonly key: string;
  readonly act: (typeof matterAction.$inferSelect)['act'];
  readonly until: string | null;
  readonly assignee: { readonly id: string; readonly name: string } | null;
  readonly reason: string;
}

/** Acknowledges, assigns or puts off a matter. Danger cannot be put off. */
export const handleMatter = (access: Access, patientId: string, wish: Handling): Promise<Handled> =>
  access.store.write(async (tx) => {
    const [row] = await tx
      .select()
      .from(matter)
      .where(
        and(eq(matter.clinicId, access.clinicId), eq(matter.patientId, patientId), eq(matter.key, wish.key)),
      );
    if (!row) return 'no-such-matter';
    if (wish.act === 'snooze' && dangers.includes(row.kind)) return 'danger';
    const id = randomUUID();
    await tx.insert(matterAction).values({
      id,
      clinicId: access.clinicId,
      patientId,
      matterKey: wish.key,
      matterSince: row.since,
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
      subject: 'matter-action',
      subjectId: id,
      patientId,
      detail: { key: wish.key, act: wish.act },
    });
    changed(access, patientId);
    return 'done';
  });
