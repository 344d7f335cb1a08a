/** The next appointment on today's page, as the clinic booked it. */
import type { Access } from '#data/access.ts';
import { instantAt } from '#data/civil-time.ts';
import { bookingOf } from '#data/review/review-bookings.ts';
import type { TodayView } from './today-view.ts';

/** Somebody who is late still finds the place. */
const shownForMs = 60 * 60_000;

/** One without a time is shown to the end of its day. */
export const appointmentView = async (
  access: Access,
  patientId: string,
  zone: string,
): Promise<Pick<TodayView, 'appointment'>> => {
  const booking = await bookingOf(access, patientId);
  if (!booking || booking.day < access.day) return { appointment: null };
  const { day, time, place } = booking;
  const isOver = time !== null && instantAt(day, time, zone) + shownForMs < access.now;
  return { appointment: isOver ? null : { day, time, place } };
};
