/**
 * A session that was left. After half an hour warning signs and pain now are asked again before anything
 * goes on; on another civil day it is not gone on with at all. Half an hour is chosen, no source fixes it:
 * longer than any rest between sets, short enough that an answer about now still speaks of now. Pure.
 */
import type { SessionDraft } from '../draft.ts';
import { isCuffOn } from '../restriction.ts';

const awayMs = 30 * 60_000;

/** When something was last answered; drafts of an earlier release know only when sets were done. */
export const lastAnswerAt = ({ answeredAt, beganAt, items }: SessionDraft): number =>
  answeredAt ??
  Math.max(beganAt, ...items.flatMap(({ sets }) => sets.flatMap(({ finishedAt }) => finishedAt ?? [])));

export const wasLeft = (draft: SessionDraft, now: number): boolean =>
  // A cuff that is on comes off first, whatever else there is to ask.
  draft.endedAt === null && now - lastAnswerAt(draft) >= awayMs && !draft.items.some(isCuffOn);

/** Left, and of another civil day than the one it is now. One that runs over midnight is gone on with. */
export const isOfEarlierDay = (draft: SessionDraft, day: string, now: number): boolean =>
  draft.day !== day && wasLeft(draft, now);
