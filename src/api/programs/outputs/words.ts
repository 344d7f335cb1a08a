/** Pieces of what other programs are answered. Instants are told by UTC, days by the clinic’s calendar. */
import { z } from 'zod';
import { joints } from '#core/exercises/joints.ts';

export const instant = z.iso.datetime().describe('Instant of UTC.');
export const civilDay = z.iso.date().describe('Civil day of the clinic, or of the phone it was sent from.');
export const jointName = z.enum(joints as readonly [string, ...string[]]);
export const score = z
  .number()
  .nullable()
  .describe('From 0 to 10; null = not asked or not answered, never zero.');

export const instantText = (milliseconds: number): string => new Date(milliseconds).toISOString();
export const instantOrNull = (milliseconds: number | null): string | null =>
  milliseconds === null ? null : instantText(milliseconds);

/** What every list answers. */
export const listOf = <R extends z.ZodType>(row: R) =>
  z.object({
    rows: z.array(row),
    next: z.string().nullable().describe('Sent as `after` it gives the next page; null = this is the last.'),
  });
