/** What the patient has consented to, in words; refusing and withdrawing. */
import { z } from 'zod';
import {
  consentKinds,
  consentState,
  isGiven,
  lastWord,
  proposedWording,
  wordingSources,
} from '#core/episode/consent.ts';
import { urgentNumberOf } from '#core/episode/urgent-number.ts';
import {
  type ConsentAct,
  consentsOf,
  isCurrentWording,
  recordConsent,
  wordingsOf,
} from '#data/episode/consents.ts';
import { clinicOf } from '#data/patients/people.ts';
import { hoursText } from '#messages/hours.ts';
import { refusalText } from '#messages/refusals.ts';
import { wordingsForPatient } from '../consent-wordings.ts';
import { Problem } from '../errors.ts';
import { patientProcedure, router } from '../trpc.ts';

/** An answer to the wording shown; a newer one is read first. */
const answerAs = (act: ConsentAct['act']) =>
  patientProcedure
    .input(
      z.object({
        kind: z.enum(consentKinds),
        wordingSource: z.enum(wordingSources),
        wordingVersion: z.number().int().min(1),
      }),
    )
    .mutation(async ({ ctx, input }) => {
      if (!(await isCurrentWording(ctx.access, input)))
        throw new Problem('conflict', refusalText('wording-changed'));
      return recordConsent(ctx.access, ctx.patient.id, {
        ...input,
        act,
        recordedVia: 'own-page',
        reason: null,
      });
    });

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
        state: consentState(rows, wording.kind),
        since: lastWord(rows, wording.kind)?.at ?? null,
      })),
    };
  }),

  give: answerAs('given'),

  refuse: answerAs('refused'),

  /** At any time and without a reason. */
  withdraw: patientProcedure
    .input(z.object({ kind: z.enum(consentKinds) }))
    .mutation(async ({ ctx, input }) => {
      const last = lastWord(await consentsOf(ctx.access, ctx.patient.id), input.kind);
      const current = (await wordingsOf(ctx.access)).find(({ kind }) => kind === input.kind);
      const { wordingSource, wordingVersion } = last ?? current ?? proposedWording;
      return recordConsent(ctx.access, ctx.patient.id, {
        kind: input.kind,
        wordingSource,
        wordingVersion,
        act: 'withdrawn',
        recordedVia: 'own-page',
        reason: null,
      });
    }),
});
