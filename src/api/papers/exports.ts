/** A record in an open format: the patient's own copy, from the own phone without asking anybody, or made at the desk. */
import { z } from 'zod';
import { episodeStatusOn } from '#core/episode/episode-status.ts';
import type { Access } from '#data/access.ts';
import { episodesOf } from '#data/episode/episodes.ts';
import { calendarFeedOf, endFeed, makeFeed } from '#data/exchange/calendar-feeds.ts';
import { type ExportFile, exportFormats, personFiles } from '#exchange/person-files.ts';
import { languages } from '#messages/languages.ts';
import { refusalText } from '#messages/refusals.ts';
import { Problem } from '../errors.ts';
import { patientProcedure, recordProcedure, router, withFreshSignIn } from '../trpc.ts';

const language = z.enum(languages.map(({ tag }) => tag)).default('en');
const asked = z.object({ format: z.enum(exportFormats), language });

export type { CalendarFeed } from '#data/exchange/calendar-feeds.ts';

const filesOf = async (
  access: Access,
  patientId: string,
  { format, language }: z.infer<typeof asked>,
): Promise<readonly ExportFile[]> => {
  const files = await personFiles(access, patientId, format, { language, hasMark: true });
  if (files.length === 0) throw new Problem('not-found', refusalText('nothing-planned'));
  return files;
};

export const exportsRouter = router({
  files: recordProcedure
    .input(asked)
    .query(({ ctx: { access, patient }, input }) => filesOf(access, patient.id, input)),

  feed: recordProcedure.query(({ ctx: { access, patient } }) => calendarFeedOf(access, patient.id)),

  endFeed: recordProcedure.mutation(async ({ ctx: { access, patient } }) => {
    if (!(await endFeed(access, patient.id, 'clinic')))
      throw new Problem('conflict', 'The calendar address has ended already. Load the page again.');
  }),
});

export const ownExportsRouter = router({
  files: patientProcedure
    .input(asked)
    .query(({ ctx: { access, patient }, input }) => filesOf(access, patient.id, input)),

  feed: patientProcedure.query(({ ctx: { access, patient } }) => calendarFeedOf(access, patient.id)),

  /** The path of the address is answered once and kept nowhere. */
  makeFeed: patientProcedure
    .meta({ roles: ['patient'], guard: 'own record, fresh sign-in' })
    .use(withFreshSignIn)
    .input(z.object({ language }))
    .mutation(async ({ ctx: { access, patient }, input }): Promise<{ readonly path: string }> => {
      const episodes = await episodesOf(access, patient.id);
      if (episodeStatusOn(episodes, access.day).state === 'closed')
        throw new Problem('refused', refusalText('calendar-after-care'));
      return { path: `/calendar/${await makeFeed(access, patient.id, input.language)}.ics` };
    }),

  /** Whoever wants it to end need not prove who they are once more. */
  endFeed: patientProcedure.mutation(({ ctx: { access, patient } }) =>
    endFeed(access, patient.id, 'patient'),
  ),
});
