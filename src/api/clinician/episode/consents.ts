/** Agreements as a clinician sees and writes them down. */
import { z } from 'zod';
import { wordingsForStaff } from '#api/consent-wordings.ts';
import { Problem } from '#api/errors.ts';
import { recordProcedure, router } from '#api/trpc.ts';
import { consentKinds, isGiven } from '#core/episode/consent.ts';
import { consentActs, consentsOf, recordConsent, wordingsOf } from '#data/episode/consents.ts';
import { clinicOf } from '#data/patients/people.ts';
import { hoursText } from '#messages/hours.ts';

export const consentsRouter = router({
  list: recordProcedure.query(async ({ ctx }) => {
    const rows = await consentsOf(ctx.access, ctx.patient.id);
    const clinic = await clinicOf(ctx.access.store, ctx.access.clinicId);
    const wordings = await wordingsForStaff(ctx.access);
    return {
      monitoringHours: hoursText(clinic?.monitoringHours ?? []).en,
      rows,
      kinds: wordings.map((wording) => ({ ...wording, isGiven: isGiven(rows, wording.kind) })),
    };
  }),

  record: recordProcedure
    .input(
      z.object({
        kind: z.enum(consentKinds),
        act: z.enum(consentActs),
        /** The version that was read out; refused when a newer one holds. */
        wordingVersion: z.number().int().min(0),
        reason: z.string().trim().max(300).nullable().default(null),
      }),
    )
    .mutation(async ({ ctx, input }) => {
      const { kind, act, wordingVersion, reason } = input;
      const wording = (await wordingsOf(ctx.access)).find((one) => one.kind === kind);
      if (act === 'given' && wording?.version !== wordingVersion) {
        throw new Problem('conflict', 'The clinic has a newer wording. Read that one to the patient.');
      }
      const row = { kind, act, wordingVersion, reason, recordedVia: 'clinician' } as const;
      return recordConsent(ctx.access, ctx.patient.id, row);
    }),
});
