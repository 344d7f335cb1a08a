/** The patient's answers from before a visit, beside the record: a clinician looks, corrects and confirms. */
import { z } from 'zod';
import { inEnglish } from '#api/clinician/question-in-english.ts';
import { Problem } from '#api/errors.ts';
import { checked } from '#api/inputs/checked.ts';
import { unknownItems } from '#api/inputs/screening-items.ts';
import { recordProcedure, router } from '#api/trpc.ts';
import { screeningFields } from '#core/record/staff-fields.ts';
import { screeningSheetVersion } from '#core/screening/items.ts';
import { besideRecord, confirmed, stillToAsk, toLookAt } from '#core/screening/pre-visit.ts';
import { ageYears } from '#core/time/day.ts';
import { newestPreVisit } from '#data/screening/pre-visits.ts';
import { recordScreening, screeningsOf } from '#data/screening/screenings.ts';

export const preVisitsRouter = router({
  get: recordProcedure.query(async ({ ctx }) => {
    const preVisit = await newestPreVisit(ctx.access, ctx.patient.id);
    const screenings = await screeningsOf(ctx.access, ctx.patient.id);
    if (!preVisit) return null;
    const rows = besideRecord(screenings, preVisit);
    const shown = toLookAt(rows);
    const missing = stillToAsk(preVisit.answers, ageYears(ctx.patient.birthDay, ctx.access.day));
    return {
      id: preVisit.id,
      day: preVisit.day,
      sentAt: preVisit.recordedAt,
      isConfirmed: (screenings[0]?.recordedAt ?? 0) >= preVisit.recordedAt,
      toLookAt: shown.map(({ item, ...row }) => ({ ...row, item: inEnglish(item) })),
      plainNo: rows.filter((row) => row.now !== null && !shown.includes(row)).length,
      stillToAsk: Object.fromEntries(
        Object.entries(missing).map(([method, items]) => [
          method,
          items.map(({ id, clinicianLabel }) => ({ id, clinicianLabel })),
        ]),
      ),
    };
  }),

  /** Makes a screening of them, with the clinician's words in place where given. */
  confirm: recordProcedure
    .input(z.object({ preVisitId: z.string().max(64), corrections: z.unknown() }))
    .output(z.number())
    .mutation(({ ctx, input }) =>
      ctx.access.store.write(async () => {
        const preVisit = await newestPreVisit(ctx.access, ctx.patient.id);
        if (preVisit?.id !== input.preVisitId) {
          throw new Problem('conflict', 'The patient has sent newer answers. Review those instead.');
        }
        if (preVisit.sheetVersion !== screeningSheetVersion) {
          throw new Problem(
            'conflict',
            'The questions have changed since these answers were given. Ask them again.',
          );
        }
        const corrections = Array.isArray(input.corrections) ? input.corrections : [];
        const answers = confirmed(preVisit, corrections);
        const sheet = checked(screeningFields, { sheetVersion: screeningSheetVersion, answers }, (value) =>
          unknownItems(value.answers, ctx.access.day),
        );
        return recordScreening(ctx.access, ctx.patient.id, sheet);
      }),
    ),
});
