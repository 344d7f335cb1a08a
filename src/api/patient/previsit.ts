/** Plain questions before a visit. The answers are kept beside the record until a clinician confirms them. */
import { z } from 'zod';
import { urgentNumberOf } from '#core/episode/urgent-number.ts';
import { screeningFields } from '#core/record/staff-fields.ts';
import { itemsAskedAt, screeningSheetVersion } from '#core/screening/items.ts';
import { ageYears } from '#core/time/day.ts';
import { clinicOf } from '#data/patients/people.ts';
import { newestPreVisit, recordPreVisit } from '#data/screening/pre-visits.ts';
import { newestScreening } from '#data/screening/screenings.ts';
import { asked, limbChoices } from '#messages/screening.ts';
import { checked } from '../inputs/checked.ts';
import { unknownItems } from '../inputs/screening-items.ts';
import { nothing } from '../outputs.ts';
import { patientProcedure, router } from '../trpc.ts';

export const preVisitRouter = router({
  questions: patientProcedure.query(async ({ ctx }) => {
    const sent = await newestPreVisit(ctx.access, ctx.patient.id);
    const screening = await newestScreening(ctx.access, ctx.patient.id);
    const clinic = await clinicOf(ctx.access.store, ctx.access.clinicId);
    return {
      clinic: {
        name: clinic?.name ?? '',
        phone: clinic?.phone ?? '',
        emergencyNumber: clinic?.emergencyNumber ?? '',
        urgentNumber: clinic ? urgentNumberOf(clinic) : '',
      },
      sheetVersion: screeningSheetVersion,
      // What an answer closes is not told: it would teach which answer keeps a method open.
      questions: itemsAskedAt(ageYears(ctx.patient.birthDay, ctx.access.day)).map(asked),
      limbs: limbChoices,
      sentAt: sent?.recordedAt ?? null,
      isConfirmed: sent !== null && screening !== null && screening.recordedAt >= sent.recordedAt,
    };
  }),

  send: patientProcedure
    .input(z.object({ answers: z.unknown() }))
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      const sheet = checked(
        screeningFields,
        { sheetVersion: screeningSheetVersion, answers: input.answers },
        (value) => unknownItems(value.answers, ctx.access.day),
      );
      await recordPreVisit(ctx.access, ctx.patient.id, sheet);
    }),
});
