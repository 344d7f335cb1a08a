/** Screening, clearances and what they leave of each method. */
import { z } from 'zod';
import { unknownItems } from '#api/inputs/screening-items.ts';
import { isAskedAgain, stillToAskAfter } from '#core/episode/event-effects.ts';
import { eventInWords } from '#core/episode/event-words.ts';
import { screeningFields } from '#core/record/staff-fields.ts';
import { itemsAskedAt, screeningItems, screeningSheetVersion } from '#core/screening/items.ts';
import { ageYears } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { eventsOf } from '#data/episode/care-events.ts';
import { prescribingContextFor } from '#data/prescribing/prescribing-context.ts';
import {
  newestScreening,
  type RecordedScreening,
  recordAnswers,
  screeningsOf,
} from '#data/screening/screenings.ts';
import { Problem } from '../errors.ts';
import { checked } from '../inputs/checked.ts';
import { madeId } from '../outputs.ts';
import { freshRecordProcedure, recordProcedure, router } from '../trpc.ts';
import { enter, firstEntry } from './corrections/enter.ts';
import { inEnglish } from './question-in-english.ts';

/** Single answers, to be put beside those on record. */
const sheetBeside = async (access: Access, patientId: string, sent: unknown) => {
  const sheet = checked(screeningFields, sent, (value) => unknownItems(value.answers, access.day));
  const newest = await newestScreening(access, patientId);
  if ([newest?.sheetVersion, sheet.sheetVersion].some((version) => version !== screeningSheetVersion))
    throw new Problem(
      'conflict',
      'No screening with the present questions is on record. Ask all of them once, then single answers can be changed.',
    );
  return sheet;
};

/** What has happened since and asks again; empty where the whole sheet is due, or nothing is. */
const askedAgain = async (access: Access, patientId: string, newest: RecordedScreening | null) => {
  const events = newest?.sheetVersion === screeningSheetVersion ? await eventsOf(access, patientId) : [];
  const open = events.filter((event) => !isAskedAgain(event, newest));
  const items = open.map((event) => stillToAskAfter(event, newest));
  return items.includes(null)
    ? { events: [], items: [] }
    : {
        events: open.map((event) => ({ id: event.id, day: event.day, what: eventInWords(event) })),
        items: screeningItems.map(({ id }) => id).filter((id) => items.some((one) => one?.includes(id))),
      };
};

export const screeningRouter = router({
  sheet: recordProcedure.query(async ({ ctx: { access, patient } }) => {
    const newest = await newestScreening(access, patient.id);
    return {
      version: screeningSheetVersion,
      items: itemsAskedAt(ageYears(patient.birthDay, access.day)).map(inEnglish),
      newest,
      again: await askedAgain(access, patient.id, newest),
    };
  }),

  list: recordProcedure.query(({ ctx }) => screeningsOf(ctx.access, ctx.patient.id)),

  record: recordProcedure
    .input(z.object({ screening: z.unknown() }))
    .output(z.number())
    .mutation(({ ctx, input }) =>
      ctx.access.store.write(async () => {
        const id = await enter.screening(firstEntry(ctx), input.screening);
        return (await screeningsOf(ctx.access, ctx.patient.id)).find((row) => row.id === id)!.version;
      }),
    ),

  /** One wrong or missing answer is one answer again; the rest stays as it was asked. */
  changeAnswers: recordProcedure
    .input(z.object({ screening: z.unknown() }))
    .mutation(async ({ ctx, input }) => {
      const sheet = await sheetBeside(ctx.access, ctx.patient.id, input.screening);
      return { changed: await recordAnswers(ctx.access, ctx.patient, sheet) };
    }),

  /** What a change of treatment asks again is answered as of today, the same answers as well. */
  askAgain: recordProcedure.input(z.object({ screening: z.unknown() })).mutation(({ ctx, input }) =>
    ctx.access.store.write(async () => {
      const { access, patient } = ctx;
      const sheet = await sheetBeside(access, patient.id, input.screening);
      await recordAnswers(access, patient, sheet, true);
      const newest = await newestScreening(access, patient.id);
      return { version: newest!.version, left: (await askedAgain(access, patient.id, newest)).items };
    }),
  ),

  outcomes: recordProcedure.query(
    async ({ ctx }) => (await prescribingContextFor(ctx.access, ctx.patient)).outcomes,
  ),

  clear: freshRecordProcedure
    .input(z.object({ clearance: z.unknown() }))
    .output(madeId)
    .mutation(({ ctx, input }) => enter.clearance(firstEntry(ctx), input.clearance)),
});
