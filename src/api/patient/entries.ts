/** Entries of a phone: checked, kept once each, then looked at by the engine in the same transaction. */
import { z } from 'zod';
import { carers } from '#core/record/entry-words.ts';
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

export const entriesRouter = router({
  send: patientProcedure
    .input(z.object({ kind: z.enum(entryKinds), entry: z.unknown() }))
    .mutation(async ({ ctx, input }) => {
      byPatientOrCarer(input.entry);
      return told(await take(ctx.access, ctx.patient.id, input.kind, input.entry));
    }),
});
