/** Booking the next review. */
import { z } from 'zod';
import type { Field } from '#core/calculations/describe.ts';
import type { Refusal } from '#core/outcome.ts';
import { type Day, daysBetween, isDay } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { bookingOf, bookReview } from '#data/review/review-bookings.ts';
import { Problem } from '../errors.ts';
import { checked } from '../inputs/checked.ts';
import { recordProcedure, router } from '../trpc.ts';

const bookingFields = [
  { name: 'day', kind: 'day', nullable: true },
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
        { field: 'input.day', code: 'outside-validity', reason: 'Enter a day from today to one year ahead.' },
      ];
  }
  return row.time === null || /^([01]\d|2[0-3]):[0-5]\d$/.test(row.time)
    ? []
    : [{ field: 'input.time', code: 'wrong-type', reason: 'Enter the time as HH:MM, or leave it empty.' }];
};

export const bookingInput = z.object({
  booking: z.unknown(),
  seen: z.string().max(64).nullable().optional(),
});

/**
 * Books the next review; without a day, takes back what was booked. `seen` is the booking the page
 * showed: a colleague's newer one is not overwritten.
 */
export const book = (
  access: Access,
  patientId: string,
  { booking, seen }: z.infer<typeof bookingInput>,
): Promise<string> => {
  const row = checked(bookingFields, booking, (value) => bookingRefusals(value, access.day));
  return access.store.write(async () => {
    const booked = await bookingOf(access, patientId);
    if (seen !== undefined && (booked?.id ?? null) !== seen)
      throw new Problem(
        'conflict',
        `${booked?.byName ?? 'A colleague'} changed the booking in the meantime. Your change was not saved; reload the page.`,
      );
    return bookReview(access, patientId, row);
  });
};

export const bookingsRouter = router({
  book: recordProcedure
    .input(bookingInput)
    .mutation(({ ctx, input }) => book(ctx.access, ctx.patient.id, input)),
});
