/** Entries of a phone: checked, kept once each, then looked at by the engine in the same transaction. */
import { z } from 'zod';
import { carers } from '#core/record/entry-words.ts';
import type { Access } from '#data/access.ts';
import { whyNotAmended } from '#data/entries/amendable.ts';
import { refusalText } from '#messages/refusals.ts';
import { Problem } from '../errors.ts';
import { entryKinds, take, told } from '../take-entries.ts';
import { patientProcedure, router } from '../trpc.ts';

/** On the patient's own phone types the patient, or somebody the patient has asked to. */
const byPatientOrCarer = (entry: unknown): void => {
  const typedBy =
    typeof entry === 'object' && entry !== null && 'enteredAs' in entry ? entry.enteredAs : null;
  if (typedBy !== null && !carers.some((carer) => carer === typedBy)) {
    throw new Problem('refused', refusalText('entry-of-another'));
  }
};

const fieldOf = (entry: unknown, field: 'entryId' | 'amends'): string | null => {
  const value =
    typeof entry === 'object' && entry !== null ? (entry as Record<string, unknown>)[field] : null;
  return typeof value === 'string' ? value : null;
};

const notAmended = {
  'another-day': 'answer-of-another-day',
  'not-found': 'answer-not-found',
  'changed-already': 'answer-changed-already',
} as const;

/** An answer can be changed on the day it was sent; later only the clinic can put it right. */
const requireSameDay = async (
  access: Access,
  patientId: string,
  kind: (typeof entryKinds)[number],
  entry: unknown,
): Promise<void> => {
  const [entryId, amends] = [fieldOf(entry, 'entryId'), fieldOf(entry, 'amends')];
  if (amends === null || entryId === null) return;
  const why = await whyNotAmended(access, patientId, kind, { entryId, amends });
  if (why) throw new Problem('refused', refusalText(notAmended[why]));
};

export const entriesRouter = router({
  send: patientProcedure
    .input(z.object({ kind: z.enum(entryKinds), entry: z.unknown() }))
    .mutation(async ({ ctx, input }) => {
      byPatientOrCarer(input.entry);
      const stored = await ctx.access.store.write(async () => {
        await requireSameDay(ctx.access, ctx.patient.id, input.kind, input.entry);
        return take(ctx.access, ctx.patient.id, input.kind, input.entry);
      });
      return told(stored);
    }),
});
