/** What today's page says of the morning check: whether it is due, and which answers stand. */
import { morningStateAt } from '#core/decision/morning-window.ts';
import type { EngineSettingValues } from '#core/decision/settings.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { asYesterday } from '#core/record/as-yesterday.ts';
import type { Baseline, MorningRecord } from '#core/record/record.ts';
import { addDays, type Day } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { minuteOfDay } from '#data/civil-time.ts';
import type { MorningOfDay } from '#data/entries/mornings-of-day.ts';
import type { Prescription } from '#data/prescribing/prescriptions.ts';
import type { TodayView } from './today-view.ts';

export interface MorningContext {
  readonly access: Access;
  /** Of the clinic. */
  readonly zone: string;
  readonly mornings: readonly MorningRecord[];
  /** Those of today that stand, with their entries. */
  readonly ofToday: readonly MorningOfDay[];
  /** Somebody is asked about a joint each morning, and care is not on a break. */
  readonly isAsked: boolean;
  readonly lateDays: number;
  readonly settings: EngineSettingValues;
  readonly versions: readonly Prescription[];
  readonly followed: readonly Joint[];
  readonly baselines: readonly Baseline[];
}

/** A check is late only where the dose has stood since before yesterday. */
const settledMs = 36 * 3_600_000;

const painsOf = ({ joints }: MorningRecord) => joints.map(({ joint, pain }) => ({ joint, pain }));

/** Answers of two phones between which nobody has chosen: the first and the newest. */
const twiceOf = (counting: readonly MorningOfDay[]): TodayView['morning']['twice'] => {
  const open = counting.filter(({ isAmendment }) => !isAmendment);
  const [first, last] = [open[0], open.at(-1)];
  if (!first || !last || first === last) return null;
  return {
    first: { entryId: first.entryId, pains: painsOf(first.record) },
    last: { entryId: last.entryId, pains: painsOf(last.record) },
  };
};

export const morningView = (at: MorningContext): TodayView['morning'] => {
  const { access, mornings, isAsked, ofToday, settings } = at;
  const [fromHour, toHour] = [settings['morning-from-hour'], settings['morning-to-hour']];
  const isAnswered = (day: Day) => mornings.some((morning) => morning.day === day);
  const counting = ofToday.filter(
    ({ record: { clockDoubtful, localMinute } }) =>
      !clockDoubtful &&
      (localMinute === undefined || morningStateAt(localMinute, fromHour, toHour) === 'open'),
  );
  const canBeLate = at.lateDays > 0 && isAsked;
  const hasBegun = at.versions.some((row) => access.now - (row.signedAt ?? access.now) > settledMs);
  return {
    due: isAsked && counting.length === 0,
    answered: isAnswered(access.day),
    yesterdayOpen: canBeLate && hasBegun && !isAnswered(addDays(access.day, -1)),
    canBeLate,
    fromHour,
    toHour,
    state: morningStateAt(minuteOfDay(access.now, at.zone), fromHour, toHour),
    entryId: ofToday.at(-1)?.entryId ?? null,
    twice: twiceOf(counting),
    asYesterday: asYesterday({ ...at, day: access.day }),
  };
};
