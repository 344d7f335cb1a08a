/**
 * Entries the clinic types from paper or from a call, under the same rules as a phone's and marked so.
 * Times are not asked: a paper sheet gives a day. A sheet is taken as written on the morning it is for; a
 * call is answered now.
 */
import { z } from 'zod';
import { entryFormat } from '#core/record/entries.ts';
import type { Access } from '#data/access.ts';
import { instantAt } from '#data/civil-time.ts';
import { clinicOf } from '#data/patients/people.ts';
import { Problem } from '../errors.ts';
import { take, told } from '../take-entries.ts';
import { recordProcedure, router } from '../trpc.ts';

const ways = ['clinic-from-paper', 'clinic-by-phone'] as const;

const usualMinutes = 30;

const timesOf = (access: Access, day: string, zone: string, way: (typeof ways)[number]) => {
  const ended = Math.min(access.now, instantAt(day, '12:00', zone));
  const morning = Math.min(access.now, instantAt(day, '08:00', zone));
  return {
    session: { beganAt: ended - usualMinutes * 60_000, endedAt: ended },
    morning: { answeredAt: way === 'clinic-from-paper' ? morning : access.now },
  };
};

export const staffEntriesRouter = router({
  send: recordProcedure
    .input(
      z.object({
        kind: z.enum(['session', 'morning']),
        enteredAs: z.enum(ways),
        day: z.iso.date(),
        answers: z.record(z.string(), z.unknown()),
      }),
    )
    .mutation(async ({ ctx, input }) => {
      const { access, patient } = ctx;
      const { kind, enteredAs, day, answers } = input;
      if (day > access.day) throw new Problem('refused', 'Enter today or an earlier day.');
      const clinic = await clinicOf(access.store, access.clinicId);
      const zone = clinic?.zone ?? 'UTC';
      const entry = {
        ...answers,
        ...timesOf(access, day, zone, enteredAs)[kind],
        format: entryFormat,
        day,
        zone,
        sentAt: access.now,
        enteredAs,
      };
      return told(await take(access, patient.id, kind, entry));
    }),
});
