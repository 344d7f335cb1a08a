/** Unfinished work of one clinician on one form of one patient. A draft is no record: it is overwritten and dropped. */
import { and, eq } from 'drizzle-orm';
import type { Access } from '../access.ts';
import { draft } from '../schema/care.ts';

export interface Draft {
  readonly typed: Readonly<Record<string, string>>;
  readonly savedAt: number;
}

const mine = (access: Access, patientId: string, form: string) =>
  and(
    eq(draft.clinicId, access.clinicId),
    eq(draft.userId, access.actorId),
    eq(draft.patientId, patientId),
    eq(draft.form, form),
  );

export const draftOf = async (access: Access, patientId: string, form: string): Promise<Draft | null> => {
  const [row] = await access.store.read
    .select()
    .from(draft)
    .where(mine(access, patientId, form));
  return row ? { typed: row.typed, savedAt: row.savedAt } : null;
};

export const saveDraft = (
  access: Access,
  patientId: string,
  form: string,
  typed: Draft['typed'],
): Promise<void> =>
  access.store.write(async (tx) => {
    const { clinicId, actorId: userId, now: savedAt } = access;
    await tx
      .insert(draft)
      .values({ clinicId, userId, patientId, form, typed, savedAt })
      .onConflictDoUpdate({
        target: [draft.clinicId, draft.userId, draft.patientId, draft.form],
        set: { typed, savedAt },
      });
  });

export const dropDraft = (access: Access, patientId: string, form: string): Promise<void> =>
  access.store.write(async (tx) => {
    await tx.delete(draft).where(mine(access, patientId, form));
  });
