/** Time with the cuff on, by the clock on the wall: it goes on while the phone sleeps. */
import type { LineDraft } from './draft.ts';

export const isCuffOn = (line: LineDraft): boolean => line.restrictions.at(-1)?.to === null;

export const cuffOn = (line: LineDraft, now: number): LineDraft =>
  isCuffOn(line) ? line : { ...line, restrictions: [...line.restrictions, { from: now, to: null }] };

export const cuffOff = (line: LineDraft, now: number): LineDraft => ({
  ...line,
  restrictions: line.restrictions.map((one) => (one.to === null ? { ...one, to: now } : one)),
});

/** A stretch is never shorter than nothing; the time itself comes from a clock that is never set back. */
export const restrictedSeconds = (line: LineDraft, now: number): number =>
  line.restrictions.reduce((sum, { from, to }) => sum + Math.max(0, (to ?? now) - from) / 1000, 0);

export const longestSeconds = (line: LineDraft): number =>
  line.dose.method === 'occlusion' ? line.dose.capSeconds : Number.POSITIVE_INFINITY;

/** A clock that shows a time before the cuff went on says nothing of how long it is on: it comes off. */
export const isTimeUp = (line: LineDraft, now: number): boolean =>
  isCuffOn(line) &&
  (restrictedSeconds(line, now) >= longestSeconds(line) || now < (line.restrictions.at(-1)?.from ?? now));

/** Instant the cuff last came off; null when it never was on, or still is. */
export const releasedAt = (line: LineDraft): number | null => line.restrictions.at(-1)?.to ?? null;
