/** The days ahead of one person as a calendar: sessions, morning questions, the booked review, what is to be measured. */
import { nextLimitFrom } from '#core/decision/dose/limits.ts';
import { daysOff } from '#core/episode/episode-status.ts';
import { asksNothing } from '#core/episode/suspensions.ts';
import { openSigns } from '#core/plan/plan.ts';
import { isWithClinicianAlone } from '#core/prescribing/place-of-dose.ts';
import { exerciseWeekdays } from '#core/prescribing/programme/exercise-weekdays.ts';
import { weekdayOf } from '#core/prescribing/programme/planned-sessions.ts';
import { addDays, type Day } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { retestsOf } from '#data/assessment/retest-plans.ts';
import { dayAt, instantAt } from '#data/civil-time.ts';
import { careAroundOf } from '#data/episode/care-around.ts';
import { episodesOf } from '#data/episode/episodes.ts';
import { limitsOfPerson } from '#data/episode/limits-of-person.ts';
import { clinicOf, type Patient, patientOf } from '#data/patients/people.ts';
import { planOf } from '#data/plan/plan-of.ts';
import { inForce, prescriptionsOf } from '#data/prescribing/prescriptions.ts';
import { programmesOf } from '#data/prescribing/programmes.ts';
import { bookingOf } from '#data/review/review-bookings.ts';
import { newestScreening } from '#data/screening/screenings.ts';
import type { sentences } from '#messages/en/language.ts';
import { textOf } from '#messages/every-language.ts';
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

interface PlannedDays {
  readonly mornings: readonly Day[];
  readonly sessions: readonly Day[];
}

const nothing: PlannedDays = { mornings: [], sessions: [] };

/**
 * Days of a break are left out, and sessions from the day on which a limit begins that the doses do not know. With
 * an open warning sign nobody is reminded to exercise; what is stopped or paused counts for no day, nor does what is
 * done only with a clinician beside, who chooses the day.
 */
const plannedDays = async (access: Access, patient: Patient, zone: string): Promise<PlannedDays> => {
  const care = await careAroundOf(access, patient.id, await newestScreening(access, patient.id));
  if (asksNothing(care)) return nothing;
  const versions = inForce(await prescriptionsOf(access, patient.id));
  const plan = await planOf(access, patient, versions);
  if (plan.items.length === 0) return nothing;
  const signed = versions.map(({ itemId, dose, signedAt, recordedAt }) => ({
    ...{ itemId, dose, signedOn: dayAt(signedAt ?? recordedAt, zone) },
  }));
  const weekdaysOn = exerciseWeekdays(signed, await programmesOf(access, patient.id), access.day);
  const days = Array.from({ length: weeksAhead * 7 }, (_, at) => addDays(access.day, at));
  const off = daysOff(await episodesOf(access, patient.id), access.day, days.at(-1)!);
  const mornings = days.filter((day) => !off.has(day));
  const changesOn = nextLimitFrom(await limitsOfPerson(access, patient.id), access.day);
  const alone = new Set(signed.filter(({ dose }) => !isWithClinicianAlone(dose)).map(({ itemId }) => itemId));
  const items =
    openSigns(plan).length > 0
      ? []
      : plan.items.filter(({ itemId, today }) => today !== 'none' && alone.has(itemId));
  // Where the patient chooses the days, none is named.
  const isPlanned = (day: Day) =>
    items.some(({ itemId }) => weekdaysOn(itemId, day)?.includes(weekdayOf(day)) === true);
  return {
    mornings,
    sessions: mornings.filter((day) => (changesOn === null || day < changesOn) && isPlanned(day)),
  };
};

type Say = (key: keyof (typeof sentences)['calendar']) => string;

const reviewOf = async (
  access: Access,
  patientId: string,
  zone: string,
  say: Say,
): Promise<CalendarEvent[]> => {
  const booking = await bookingOf(access, patientId);
  if (!booking || booking.day < access.day) return [];
  const { day, time, place } = booking;
  const at = time === null ? null : instantAt(day, time, zone);
  const alarm = time === null ? eveningBefore : dayBefore;
  return [{ kind: 'review', day, at, title: say('review'), note: say('review-note'), place, alarm }];
};

const retestsAhead = async (access: Access, patientId: string, say: Say): Promise<CalendarEvent[]> =>
  (await retestsOf(access, patientId)).flatMap(({ on }): CalendarEvent[] =>
    on === null || on < access.day
      ? []
      : [
          {
            ...{ kind: 'retest', day: on, at: null, title: say('retest'), note: say('retest-note') },
            ...{ place: null, alarm: eveningBefore },
          },
        ],
  );

/** null when the person is not of this clinic. */
export const personCalendarOf = async (
  access: Access,
  patientId: string,
  language: LanguageTag,
): Promise<Calendar | null> => {
  const patient = await patientOf(access, patientId);
  const clinic = await clinicOf(access.store, access.clinicId);
  if (!patient || !clinic) return null;
  const say: Say = (key) => textOf('calendar', key)[language];
  const reminder = (kind: 'session' | 'morning', day: Day, time: string): CalendarEvent => ({
    ...{ kind, day, at: instantAt(day, time, clinic.zone) },
    ...{ title: say(kind), note: say(`${kind}-note`), place: null, alarm: atOnce },
  });
  const { mornings, sessions } = await plannedDays(access, patient, clinic.zone);
  return {
    name: say('name'),
    language,
    personId: patientId,
    madeAt: access.now,
    events: [
      ...mornings.map((day) => reminder('morning', day, morningTime)),
      ...sessions.map((day) => reminder('session', day, sessionTime)),
      ...(await reviewOf(access, patientId, clinic.zone, say)),
      ...(await retestsAhead(access, patientId, say)),
    ],
  };
};
