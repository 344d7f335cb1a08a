/** Consents as a clinician sees and records them. */
import { z } from 'zod';
import { wordingsForStaff } from '#api/consent-wordings.ts';
import { recordProcedure, router } from '#api/trpc.ts';
import { consentActs, consentKinds, consentState, wordingSources } from '#core/episode/consent.ts';
import { consentsOf } from '#data/episode/consents.ts';
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
      kinds: wordings.map((wording) => ({ ...wording, state: consentState(rows, wording.kind) })),
    };
  }),

  record: recordProcedure
    .input(
      z.object({
        kind: z.enum(consentKinds),
        act: z.enum(consentActs),
        /** The wording that was read aloud; refused when another one holds now. */
        wordingSource: z.enum(wordingSources),
        wordingVersion: z.number().int().min(1),
        reason: z.string().trim().max(300).nullable().default(null),
      }),
    )
    .mutation(({ ctx, input: { kind, act, wordingSource, wordingVersion, reason } }) =>
      writeConsentDown(ctx.access, ctx.patient.id, { kind, act, wordingSource, wordingVersion, reason }),
    ),
});
