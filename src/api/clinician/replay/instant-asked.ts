/** The past instant that is asked for: as a decision names it, or a day by the clinic's clock, with or without a time. */
import { dateTimeParts } from '#core/time/date-time.ts';
import { addDays } from '#core/time/day.ts';
import type { Access } from '#data/access.ts';
import { instantAt } from '#data/civil-time.ts';
import { clinicOf } from '#data/patients/people.ts';
import { Problem } from '../../errors.ts';

const epochMs = /^\d{12,14}$/;

/** A day without a time is looked at from its end; today from now. */
export const instantAsked = async (access: Access, asked: string): Promise<number> => {
  const zone = (await clinicOf(access.store, access.clinicId))?.zone ?? 'UTC';
  const parts = dateTimeParts(asked);
  if (!parts && !epochMs.test(asked))
    throw new Problem('refused', 'Enter a day and a time, such as 2026-03-02T18:00.');
  if (!parts || parts.time !== null) {
    const at = parts ? instantAt(parts.day, parts.time!, zone) : Number(asked);
    if (at > access.now) throw new Problem('refused', 'Enter a day and a time that are not still to come.');
    return at;
  }
  if (parts.day > access.day) throw new Problem('refused', 'Enter a day that is not still to come.');
  return Math.min(access.now, instantAt(addDays(parts.day, 1), '00:00', zone) - 1);
};
