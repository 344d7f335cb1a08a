/** Who comes when, for the front desk: names, numbers and the booking in force, and nothing of a record. */
import { and, asc, desc, eq, gte, isNotNull, sql } from 'drizzle-orm';
import type { Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { digestOfIds, noteRead } from '../audit/audit.ts';
import { isShown } from '../patients/merges.ts';
import { patientIdentity, reviewBooking } from '../schema/schema.ts';

interface Appointment {
  readonly day: Day;
  readonly time: string | null;
  readonly place: string | null;
}

export interface PersonLine {
  readonly patientId: string;
  readonly givenName: string;
  readonly familyName: string;
  readonly birthDay: Day;
  readonly phone: string | null;
  /** null = none is booked from today on. */
  readonly next: Appointment | null;
}

/** The newest booking of each patient; one without a day was taken back. */
const bookings = ({ store, clinicId }: Access) =>
  store.read
    .select({
      patientId: reviewBooking.patientId,
      day: reviewBooking.day,
      time: reviewBooking.time,
      place: reviewBooking.place,
      age: sql<number>`row_number() OVER (PARTITION BY ${reviewBooking.patientId} ORDER BY ${desc(reviewBooking.recordedAt)}, ${desc(reviewBooking.id)})`.as(
        'age',
      ),
    })
    .from(reviewBooking)
    .where(eq(reviewBooking.clinicId, clinicId))
    .as('booking');

const people = async (access: Access, who: 'all' | 'booked'): Promise<readonly PersonLine[]> => {
  const booking = bookings(access);
  const rows = await access.store.read
    .select({
      patientId: patientIdentity.patientId,
      givenName: patientIdentity.givenName,
      familyName: patientIdentity.familyName,
      birthDay: patientIdentity.birthDay,
      phone: patientIdentity.phone,
      day: booking.day,
      time: booking.time,
      place: booking.place,
    })
    .from(patientIdentity)
    .leftJoin(
      booking,
      and(eq(booking.patientId, patientIdentity.patientId), eq(booking.age, 1), gte(booking.day, access.day)),
    )
    .where(
      and(
        eq(patientIdentity.clinicId, access.clinicId),
        isShown(),
        who === 'booked' ? isNotNull(booking.day) : undefined,
      ),
    )
    .orderBy(asc(patientIdentity.familyName), asc(patientIdentity.givenName));
  return rows.map(({ day, time, place, ...person }) => ({
    ...person,
    next: day === null ? null : { day, time, place },
  }));
};

/** Only whom it names is said to have been read. */
const noted = (access: Access, subject: string, lines: readonly PersonLine[]): readonly PersonLine[] => {
  const ids = lines.map(({ patientId }) => patientId);
  if (ids.length > 0) noteRead(access, { subject, detail: { count: ids.length, ids: digestOfIds(ids) } });
  return lines;
};

const byMoment = (a: PersonLine, b: PersonLine): number =>
  `${a.next?.day} ${a.next?.time ?? '99'}` < `${b.next?.day} ${b.next?.time ?? '99'}` ? -1 : 1;

/** Everybody with an appointment from today on, soonest first; of a day those without a time last. */
export const appointmentsOf = async (access: Access): Promise<readonly PersonLine[]> => {
  const booked = await people(access, 'booked');
  return noted(access, 'reception-appointments', booked.toSorted(byMoment));
};

/** Those whose name is like what was typed, as many as fit a page. */
export const peopleNamed = async (
  access: Access,
  isNamed: (person: PersonLine) => boolean,
  most: number,
): Promise<{ readonly people: readonly PersonLine[]; readonly more: number }> => {
  const found = (await people(access, 'all')).filter(isNamed);
  return {
    people: noted(access, 'reception-search', found.slice(0, most)),
    more: Math.max(0, found.length - most),
  };
};
