/** Time with the cuff on, by the clock on the wall: it goes on while the phone sleeps. */
import type { ItemDraft } from './draft.ts';

export const isCuffOn = (item: ItemDraft): boolean => item.restrictions.at(-1)?.to === null;

export const cuffOn = (item: ItemDraft, now: number): ItemDraft =>
  isCuffOn(item) ? item : { ...item, restrictions: [...item.restrictions, { from: now, to: null }] };

export const cuffOff = (item: ItemDraft, now: number): ItemDraft => ({
  ...item,
  restrictions: item.restrictions.map((one) => (one.to === null ? { ...one, to: now } : one)),
});

/** A stretch is never shorter than nothing; the time itself comes from a clock that is never set back. */
export const restrictedSeconds = (item: ItemDraft, now: number): number =>
  item.restrictions.reduce((sum, { from, to }) => sum + Math.max(0, (to ?? now) - from) / 1000, 0);

export const longestSeconds = (item: ItemDraft): number =>
  item.dose.method === 'occlusion' ? item.dose.capSeconds : Number.POSITIVE_INFINITY;

/** A clock that shows a time before the cuff went on says nothing of how long it is on: it comes off. */
export const isTimeUp = (item: ItemDraft, now: number): boolean =>
  isCuffOn(item) &&
  (restrictedSeconds(item, now) >= longestSeconds(item) || now < (item.restrictions.at(-1)?.from ?? now));

/** Instant the cuff last came off; null when it never was on, or still is. */
export const releasedAt = (item: ItemDraft): number | null => item.restrictions.at(-1)?.to ?? null;
