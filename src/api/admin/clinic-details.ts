/** Name, numbers and hours of the clinic as patients read them, each entered by itself. */
import { z } from 'zod';
import type { ClinicDetail } from '#core/clinic/clinic-details.ts';
import {
  hoursByDay,
  type MonitoringHours,
  monitoringHoursFromDays,
  weekdays,
} from '#core/episode/monitoring-hours.ts';
import type { Access } from '#data/access.ts';
import {
  type DetailChange,
  type DetailEntry,
  detailChanges,
  enterClinicDetail,
} from '#data/clinic/clinic-details.ts';
import { clinicOf } from '#data/patients/people.ts';
import { hoursText } from '#messages/hours.ts';
import { Problem, refusedWith } from '../errors.ts';
import { nothing } from '../outputs.ts';
import { administratorProcedure, freshAdministrator, router } from '../trpc.ts';

const telephone = /^\+?[\d ()/-]*\d[\d ()/-]*$/;

const checks = {
  name: z.string().min(2, 'Write the name of the clinic.').max(80, 'Write at most 80 characters.'),
  phone: z
    .string()
    .max(30, 'Write at most 30 characters.')
    .regex(telephone, 'Enter a telephone number, such as 020 913 0140.'),
  'urgent-number': z
    .string()
    .max(30, 'Write at most 30 characters.')
    .regex(telephone, 'Enter a telephone number, such as 116 117.'),
  'emergency-number': z
    .string()
    .max(30, 'Write at most 30 characters.')
    .regex(telephone, 'Enter a telephone number, such as 112.'),
} as const;

const texts = ['name', 'phone', 'urgent-number', 'emergency-number'] as const;
const seen = z.string().max(4000).nullable();

/** As people read it: hours in words, all else as it was entered. */
const inWords = (detail: ClinicDetail, kept: string | null): string =>
  detail === 'monitoring-hours' && kept !== null
    ? hoursText(JSON.parse(kept) as MonitoringHours).en
    : (kept ?? '');

const historyOf = (changes: readonly DetailChange[], detail: ClinicDetail) =>
  changes
    .filter((change) => change.detail === detail)
    .map(({ before, after, at, by }) => ({
      before: inWords(detail, before),
      after: inWords(detail, after),
      at,
      by,
    }));

const enter = async (access: Access, entry: DetailEntry): Promise<void> => {
  const meanwhile = await enterClinicDetail(access, entry);
  if (!meanwhile) return;
  const now = inWords(entry.detail, meanwhile.after);
  throw new Problem(
    'conflict',
    `${meanwhile.by || 'A colleague'} has changed this to “${now}” meanwhile. Nothing was saved: save yours, or leave it as it is.`,
  );
};

export const clinicDetailsRouter = router({
  get: administratorProcedure.query(async ({ ctx }) => {
    const clinic = await clinicOf(ctx.access.store, ctx.access.clinicId);
    if (!clinic) throw new Problem('not-found', 'There is no such clinic.');
    const changes = await detailChanges(ctx.access);
    return {
      texts: {
        name: clinic.name,
        phone: clinic.phone,
        'urgent-number': clinic.urgentNumber,
        'emergency-number': clinic.emergencyNumber,
      },
      zone: clinic.zone,
      hours: {
        byDay: hoursByDay(clinic.monitoringHours),
        inWords: hoursText(clinic.monitoringHours).en,
        seen: JSON.stringify(clinic.monitoringHours),
      },
      history: {
        name: historyOf(changes, 'name'),
        phone: historyOf(changes, 'phone'),
        'urgent-number': historyOf(changes, 'urgent-number'),
        'emergency-number': historyOf(changes, 'emergency-number'),
        'monitoring-hours': historyOf(changes, 'monitoring-hours'),
      },
    };
  }),

  enter: freshAdministrator
    .input(z.object({ detail: z.enum(texts), value: z.string().trim().max(200), seen }))
    .output(nothing)
    .mutation(async ({ ctx, input: { detail, value, seen: before } }) => {
      const read = checks[detail].safeParse(value);
      if (!read.success) {
        const reason = read.error.issues[0]!.message;
        throw refusedWith([{ field: `input.${detail}`, code: 'inconsistent', reason }]);
      }
      await enter(ctx.access, { detail, seen: before, after: read.data });
    }),

  enterHours: freshAdministrator
    .input(
      z.object({
        hours: z.object(Object.fromEntries(weekdays.map((day) => [day, z.string().max(100).default('')]))),
        seen,
      }),
    )
    .output(nothing)
    .mutation(async ({ ctx, input }) => {
      const read = monitoringHoursFromDays(input.hours);
      if (!read.ok) throw refusedWith(read.refused.map((one) => ({ ...one, field: `input.${one.field}` })));
      await enter(ctx.access, {
        detail: 'monitoring-hours',
        seen: input.seen,
        after: JSON.stringify(read.hours),
      });
    }),
});
