/** The days ahead of one person as a calendar: sessions, morning questions, the booked review, what is to be measured. */

import { daysOff } from '#core/episode/episode-status.ts';
import { openSigns, type Plan } from '#core/plan/plan.ts';
import { linesOn, type Programme } from '#core/prescribing/programme/planned-sessions.ts';
import { addDays, type Day } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { retestsOf } from '#data/assessment/retest-plans.ts';
import { instantAt } from '#data/civil-time.ts';
import { episodesOf } from '#data/episode/episodes.ts';
import { clinicOf, patientOf } from '#data/patients/people.ts';
import { planOf } from '#data/plan/plan-of.ts';
import { programmesOf } from '#data/prescribing/programmes.ts';
import { bookingOf } from '#data/review/review-bookings.ts';
import { calendarText as words } from '#messages/calendar.ts';
import type { LanguageTag } from '#messages/languages.ts';
import type { Calendar, CalendarEvent } from './calendar.ts';

/** Weeks ahead; a plan seldom stays as it is for longer. */
const weeksAhead = 8;

/** When the reminders ring: a plan names days and no times. Choices of this project. */
const sessionTime = '17:00';
const morningTime = '08:00';

/** The evening before, of a day that has no time. */
const eveningBefore = '-PT6H';
const dayBefore = '-P1D';
const atOnce = 'PT0S';

const daysFrom = (first: Day, count: number): readonly Day[] =>
  Array.from({ length: count }, (_, at) => addDays(first, at));

/** Exercises that are not stopped or paused. With an open warning sign nobody is reminded to exercise. */
const openItems = (plan: Plan): ReadonlySet<string> =>
  new Set(
    openSigns(plan).length > 0
      ? []
      : plan.items.filter(({ today }) => today !== 'none').map(({ itemId }) => itemId),
  );

const isPlannedOn = (programmes: readonly Programme[], day: Day, items: ReadonlySet<string>): boolean =>
  (linesOn(programmes, day) ?? []).some((itemId) => items.has(itemId));

/** null when the person is not of this clinic. */
export const personCalendarOf = async (
  access: Access,
  patientId: string,
  language: LanguageTag,
): Promise<Calendar | null> => {
  const patient = await patientOf(access, patientId);
  const clinic = await clinicOf(access.store, access.clinicId);
  if (!patient || !clinic) return null;
  const programmes = await programmesOf(access, patientId);
  const plan = await planOf(access, patient);
  const items = openItems(plan);
  const days = daysFrom(access.day, weeksAhead * 7);
  const off = daysOff(await episodesOf(access, patientId), days[0]!, days.at(-1)!);
  const say = (key: Parameters<typeof words>[0]) => words(key)[language];
  const reminder = (kind: 'session' | 'morning', day: Day, time: string): CalendarEvent => ({
    ...{ kind, day, at: instantAt(day, time, clinic.zone) },
    ...{ title: say(kind), note: say(`${kind}-note`), place: null, alarm: atOnce },
  });
  const open = days.filter((day) => !off.has(day));
  const booking = await bookingOf(access, patientId);
  return {
    name: say('name'),
    personId: patientId,
    madeAt: access.now,
    events: [
      ...(plan.items.length === 0 ? [] : open.map((day) => reminder('morning', day, morningTime))),
      ...open
        .filter((day) => isPlannedOn(programmes, day, items))
        .map((day) => reminder('session', day, sessionTime)),
      ...(booking && booking.day >= access.day
        ? [
            {
              kind: 'review' as const,
              day: booking.day,
              at: booking.time === null ? null : instantAt(booking.day, booking.time, clinic.zone),
              ...{ title: say('review'), note: say('review-note'), place: booking.place },
              alarm: booking.time === null ? eveningBefore : dayBefore,
            },
          ]
        : []),
      ...(await retestsOf(access, patientId)).flatMap(({ on }): CalendarEvent[] =>
        on !== null && on >= access.day
          ? [
              {
                ...{ kind: 'retest', day: on, at: null, title: say('retest'), note: say('retest-note') },
                ...{ place: null, alarm: eveningBefore },
              },
            ]
          : [],
      ),
    ],
  };
};
