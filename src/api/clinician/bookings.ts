/** Booking the next review. */
import { z } from 'zod';
import type { Refusal } from '#core/outcome.ts';
import { bookingFields } from '#core/review/booking-fields.ts';
import { dateTimeParts } from '#core/time/date-time.ts';
import { type Day, daysBetween } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { bookingOf, bookReview } from '#data/review/review-bookings.ts';
import { Problem } from '../errors.ts';
import { checked } from '../inputs/checked.ts';
import { madeId } from '../outputs.ts';
import { recordProcedure, router } from '../trpc.ts';

const furthestDays = 366;

const bookingRefusals = ({ when }: { readonly when: string | null }, today: Day): readonly Refusal[] => {
  const day = when === null ? null : dateTimeParts(when)?.day;
  const ahead = day ? daysBetween(today, day) : 0;
  return ahead < 0 || ahead > furthestDays
    ? [{ field: 'input.when', code: 'outside-validity', reason: 'Enter a day from today to one year ahead.' }]
    : [];
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
    const { day = null, time = null } = (row.when === null ? null : dateTimeParts(row.when)) ?? {};
    return bookReview(access, patientId, { day, time, place: row.place });
  });
};

export const bookingsRouter = router({
  book: recordProcedure
    .input(bookingInput)
    .output(madeId)
    .mutation(({ ctx, input }) => book(ctx.access, ctx.patient.id, input)),
});
