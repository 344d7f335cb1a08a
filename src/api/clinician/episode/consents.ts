/** Agreements as a clinician sees and writes them down. */
import { z } from 'zod';
import { wordingsForStaff } from '#api/consent-wordings.ts';
import { recordProcedure, router } from '#api/trpc.ts';
import { consentKinds, isGiven } from '#core/episode/consent.ts';
import { consentActs, consentsOf } from '#data/episode/consents.ts';
import { clinicOf } from '#data/patients/people.ts';
import { hoursText } from '#messages/hours.ts';
import { writeConsentDown } from './record-consent.ts';

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
    .mutation(({ ctx, input: { kind, act, wordingVersion, reason } }) =>
      writeConsentDown(ctx.access, ctx.patient.id, { kind, act, wordingVersion, reason }),
    ),
});
