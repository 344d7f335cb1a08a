/** What the patient has agreed to, in words, and taking it back. */
import { z } from 'zod';
import { type ConsentKind, consentKinds, isGiven, lastWord } from '#core/episode/consent.ts';
import { urgentNumberOf } from '#core/episode/urgent-number.ts';
import type { Access } from '#data/access.ts';
import { consentsOf, recordConsent, wordingsOf } from '#data/episode/consents.ts';
import { clinicOf } from '#data/patients/people.ts';
import { hoursText } from '#messages/hours.ts';
import { refusalText } from '#messages/refusals.ts';
import { wordingsForPatient } from '../consent-wordings.ts';
import { Problem } from '../errors.ts';
import { patientProcedure, router } from '../trpc.ts';

const wordingOf = async (access: Access, kind: ConsentKind) =>
  (await wordingsOf(access)).find((one) => one.kind === kind);

export const patientConsentsRouter = router({
  get: patientProcedure.query(async ({ ctx }) => {
    const rows = await consentsOf(ctx.access, ctx.patient.id);
    const clinic = await clinicOf(ctx.access.store, ctx.access.clinicId);
    return {
      clinicName: clinic?.name ?? '',
      phone: clinic?.phone ?? '',
      emergencyNumber: clinic?.emergencyNumber ?? '',
      urgentNumber: clinic ? urgentNumberOf(clinic) : '',
      monitoringHours: hoursText(clinic?.monitoringHours ?? []),
      isMonitored: isGiven(rows, 'remote-monitoring'),
      kinds: (await wordingsForPatient(ctx.access)).map((wording) => ({
        ...wording,
        isGiven: isGiven(rows, wording.kind),
        since: lastWord(rows, wording.kind)?.at ?? null,
      })),
    };
  }),

  /** To the wording shown; a newer one is read first. */
  give: patientProcedure
    .input(z.object({ kind: z.enum(consentKinds), wordingVersion: z.number().int().min(0) }))
    .mutation(async ({ ctx, input }) => {
      const wording = await wordingOf(ctx.access, input.kind);
      if (wording?.version !== input.wordingVersion)
        throw new Problem('conflict', refusalText('wording-changed'));
      return recordConsent(ctx.access, ctx.patient.id, {
        kind: input.kind,
        wordingVersion: input.wordingVersion,
        act: 'given',
        recordedVia: 'own-page',
        reason: null,
      });
    }),

  /** At any time and without a reason. */
  withdraw: patientProcedure
    .input(z.object({ kind: z.enum(consentKinds) }))
    .mutation(async ({ ctx, input }) => {
      const last = lastWord(await consentsOf(ctx.access, ctx.patient.id), input.kind);
      return recordConsent(ctx.access, ctx.patient.id, {
        kind: input.kind,
        wordingVersion: last?.wordingVersion ?? 0,
        act: 'withdrawn',
        recordedVia: 'own-page',
        reason: null,
      });
    }),
});
