/** Booking the next review. */
import { z } from 'zod';
import { type Day, daysBetween, isDay } from '#core/day.ts';
import type { Field } from '#core/describe.ts';
import type { Refusal } from '#core/outcome.ts';
import { bookReview } from '#data/review-bookings.ts';
import { checked } from '../inputs/checked.ts';
import { recordProcedure, router } from '../trpc.ts';

const bookingFields = [
  { name: 'day', kind: 'text', minLength: 10, maxLength: 10, nullable: true },
  { name: 'time', kind: 'text', minLength: 5, maxLength: 5, nullable: true },
  { name: 'place', kind: 'text', minLength: 1, maxLength: 120, nullable: true },
] as const satisfies readonly Field[];

const furthestDays = 366;

const bookingRefusals = (
  row: { readonly day: string | null; readonly time: string | null },
  today: Day,
): readonly Refusal[] => {
  if (row.day !== null) {
    const ahead = isDay(row.day) ? daysBetween(today, row.day) : -1;
    if (ahead < 0 || ahead > furthestDays)
      return [
        { field: 'input.day', code: 'outside-validity', reason: 'Give a day from today to a year ahead.' },
      ];
  }
  return row.time === null || /^([01]\d|2[0-3]):[0-5]\d$/.test(row.time)
    ? []
    : [{ field: 'input.time', code: 'wrong-type', reason: 'Give the time as HH:MM, or leave it empty.' }];
};

export const bookingsRouter = router({
  /** Books the next review; without a day, takes back what was booked. */
  book: recordProcedure.input(z.object({ booking: z.unknown() })).mutation(({ ctx, input }) =>
    bookReview(
      ctx.access,
      ctx.patient.id,
      checked(bookingFields, input.booking, (row) => bookingRefusals(row, ctx.access.day)),
    ),
  ),
});
