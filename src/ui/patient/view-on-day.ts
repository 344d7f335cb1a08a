/**
 * The day a page shows when the phone has moved on without signal: the last view the clinic gave, read
 * for the phone's own day. What the clinic had stopped stays stopped; what it changed since is not known,
 * and past the clinic's limit nothing is begun by an old page. Pure.
 */

import type { TodayView } from '#api/patient/today-view.ts';
import { type MorningState, morningStateAt } from '#core/decision/morning-window.ts';
import { weekdayOf } from '#core/prescribing/programme/planned-sessions.ts';
import { addDays, daysBetween } from '#core/time/day.ts';
import { dateFormat } from '#messages/formats.ts';

/** The civil day on the phone's clock. */
export const phoneDay = (now: number): string => {
  const at = new Date(now);
  const two = (part: number) => String(part).padStart(2, '0');
  return `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
};

/** The civil day in a zone named as phones and servers name it; Swedish writes days as ISO 8601 does. */
const dayInZone = (now: number, zone: string): string =>
  dateFormat('sv-SE', {
    timeZone: zone,
    year: 'numeric',
    month: '2-digit',
    day: '2-digit',
  }).format(now);

/** What the hour is to the day: read on the phone, in its zone, but for the day of the clinic. */
export interface Moment {
  readonly day: string;
  readonly clinicDay: string;
  readonly morning: MorningState;
}

export const momentOf = ({ clinic, morning }: Pick<TodayView, 'clinic' | 'morning'>, now: number): Moment => {
  const at = new Date(now);
  const minute = at.getHours() * 60 + at.getMinutes();
  const { fromHour = 0, toHour = 24 } = morning;
  const day = phoneDay(now);
  return {
    day,
    clinicDay: clinic.zone === undefined ? day : dayInZone(now, clinic.zone),
    morning: morningStateAt(minute, fromHour, toHour),
  };
};

export interface DayView extends TodayView {
  /** Day the clinic gave this page, where that is not today. */
  readonly givenOn: string | null;
  /** Older than the clinic lets a phone go on by, or from before a limit that holds by now. */
  readonly isTooOld: boolean;
  /** Its day now; another than `day` where the phone is in another zone. */
  readonly clinicDay: string;
  readonly morningNow: MorningState;
}

/** What is recorded of a day the page was not made for: known where it lies near, else nothing. */
const ofOtherDay = (view: TodayView, day: string): Pick<TodayView, 'morning' | 'sessionSent' | 'sent'> => {
  const { mornings, sessions } = view.recordedDays ?? {
    mornings: view.morning.answered ? [view.day] : [],
    sessions: view.sessionSent ? [view.day] : [],
  };
  const isAnswered = mornings.includes(day);
  return {
    sessionSent: sessions.includes(day),
    sent: null,
    morning: {
      ...view.morning,
      due: view.followedJoints.length > 0 && !view.asksNothing && !isAnswered,
      answered: isAnswered,
      yesterdayOpen: view.morning.canBeLate && !mornings.includes(addDays(day, -1)),
      entryId: null,
      twice: null,
      // By a page given on another day nothing of the last morning is known.
      asYesterday: null,
    },
  };
};

export const viewOnDay = (view: TodayView, day: string, moment?: Moment): DayView => {
  const clinicDay = moment?.clinicDay ?? day;
  const ofClinic = {
    clinicDay,
    morningNow: moment?.morning ?? view.morning.state ?? 'open',
    givenOn: clinicDay > view.day ? view.day : null,
    isTooOld:
      daysBetween(view.day, clinicDay) > view.oldPageDays ||
      (!!view.changesOn && clinicDay >= view.changesOn),
  };
  if (day === view.day) return { ...view, ...ofClinic };
  const weekday = weekdayOf(day);
  return {
    ...view,
    ...ofClinic,
    ...ofOtherDay(view, day),
    day,
    exercises: view.exercises.map((one) => ({
      ...one,
      planned: one.weekdays === null || one.weekdays.includes(weekday),
    })),
  };
};
