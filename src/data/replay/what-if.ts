/** What other settings would have said of one patient, or of everybody of a clinic. */
import {
  addedUp,
  byWeek,
  nothingLooked,
  type OtherDay,
  type WhatIf,
  type WhatIfWeek,
  whatIf,
} from '#core/decision/what-if/what-if.ts';
import { addDays, type Day } from '#core/time/day.ts';
import type { Access } from '../access.ts';
import { peopleOf } from '../patients/people.ts';
import { decideTwice, type Moved } from './gather-anew.ts';

/** Weeks looked back over where nobody says otherwise. */
export const usualWeeks = 12;
export const mostWeeks = 52;

export interface WhatIfAsked {
  readonly moved: Moved;
  readonly weeks: number;
}

export interface WhatIfSince extends WhatIf {
  readonly since: Day;
  /** Every week looked at, oldest first. */
  readonly byWeek: readonly WhatIfWeek[];
}

const firstDay = (access: Access, weeks: number): Day => addDays(access.day, -7 * weeks);

const withWeeks = (found: WhatIf, since: Day, weeks: number): WhatIfSince => ({
  ...found,
  since,
  byWeek: byWeek(since, weeks, found.days),
});

export const whatIfOf = async (
  access: Access,
  patientId: string,
  { moved, weeks }: WhatIfAsked,
): Promise<WhatIfSince> => {
  const since = firstDay(access, weeks);
  return withWeeks(whatIf(await decideTwice(access, patientId, since, moved)), since, weeks);
};

interface ClinicDay extends OtherDay {
  readonly patientId: string;
}

export interface ClinicWhatIf extends Omit<WhatIfSince, 'days'> {
  /** Whose days would have been others. */
  readonly patients: number;
  /** Oldest first. */
  readonly days: readonly ClinicDay[];
}

export interface Progress {
  readonly done: number;
  readonly of: number;
}

/** Asked after each person, with how far it is; what answers no ends it. */
export type GoesOn = (progress: Progress) => Promise<boolean>;

/** Everybody one after another; null where it was stopped on the way. */
export const whatIfOfClinic = async (
  access: Access,
  { moved, weeks }: WhatIfAsked,
  goesOn: GoesOn = async () => true,
): Promise<ClinicWhatIf | null> => {
  const since = firstDay(access, weeks);
  const people = await peopleOf(access);
  const days: ClinicDay[] = [];
  let sum = nothingLooked;
  let patients = 0;
  for (const [place, { id }] of people.entries()) {
    const own = whatIf(await decideTwice(access, id, since, moved));
    sum = { ...addedUp(sum, own), days: [] };
    patients += own.days.length > 0 ? 1 : 0;
    days.push(...own.days.map((day) => ({ ...day, patientId: id })));
    if (!(await goesOn({ done: place + 1, of: people.length }))) return null;
  }
  days.sort((a, b) => (a.day < b.day ? -1 : a.day > b.day ? 1 : 0));
  return { ...withWeeks(sum, since, weeks), byWeek: byWeek(since, weeks, days), patients, days };
};
