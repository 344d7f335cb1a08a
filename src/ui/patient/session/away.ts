/**
 * A session that was left. After half an hour warning signs and pain now are asked again before anything
 * goes on; on another civil day it is not gone on with at all. Half an hour is chosen, no source fixes it:
 * longer than any rest between sets, short enough that an answer about now still speaks of now. Pure.
 */
import type { Score, SessionDraft } from './draft.ts';
import { isCuffOn } from './restriction.ts';
import { partsOf } from './step-names.ts';
import { afterSteps, stepsOf } from './steps.ts';

const awayMs = 30 * 60_000;

/** When something was last answered; drafts of an earlier release know only when sets were done. */
export const lastAnswerAt = ({ answeredAt, beganAt, items }: SessionDraft): number =>
  answeredAt ??
  Math.max(beganAt, ...items.flatMap(({ sets }) => sets.flatMap(({ finishedAt }) => finishedAt ?? [])));

const wasLeft = (draft: SessionDraft, now: number): boolean =>
  // A cuff that is on comes off first, whatever else there is to ask.
  draft.endedAt === null && now - lastAnswerAt(draft) >= awayMs && !draft.items.some(isCuffOn);

/** Left, and of another civil day than the one it is now. One that runs over midnight is gone on with. */
export const isOfEarlierDay = (draft: SessionDraft, day: string, now: number): boolean =>
  draft.day !== day && wasLeft(draft, now);

/** Warning signs and pain now, in the order of the session. */
export const isAskedAgain = (step: string): boolean =>
  ['flags-before', 'before'].includes(partsOf(step).name);

/** Nothing is left to do once the questions after the work are reached. */
const hasWorkAhead = (draft: SessionDraft): boolean => {
  const steps = stepsOf(draft);
  const after = steps.indexOf(afterSteps(draft)[0] ?? '');
  return after >= 0 && steps.indexOf(draft.returnTo ?? draft.step) < after;
};

const isPainBefore = ([key]: readonly [string, Score]): boolean => partsOf(key).name === 'before';

/** The higher of two answers; a number said once stays said. */
export const higherScore = (a: Score | undefined, b: Score | undefined): Score | undefined =>
  typeof a !== 'number' ? (typeof b === 'number' ? b : (a ?? b)) : typeof b === 'number' && b > a ? b : a;

/** Opens both questions again. What was answered before them stands beside the new answers. */
const askedAgain = (draft: SessionDraft): SessionDraft => {
  const { before: _ticked, ...ticked } = draft.ticked;
  const scores = Object.entries(draft.scores);
  const earlier = { ...draft.earlierPain };
  for (const [key, score] of scores.filter(isPainBefore)) earlier[key] = higherScore(earlier[key], score)!;
  const place = draft.returnTo ?? draft.toConfirm?.from ?? draft.step;
  const open: SessionDraft = {
    ...draft,
    ticked,
    flagsBefore: null,
    scores: Object.fromEntries(scores.filter((one) => !isPainBefore(one))),
    earlierPain: earlier,
    returnTo: null,
    toConfirm: null,
    isChanging: false,
  };
  const backTo = draft.backTo ?? (isAskedAgain(place) ? null : place);
  return { ...open, step: stepsOf(open)[0] ?? 'check', backTo };
};

/** The session as it is gone on with at an instant: unchanged, or with both questions open again. */
export const resumed = (draft: SessionDraft, now: number): SessionDraft =>
  wasLeft(draft, now) && hasWorkAhead(draft) ? askedAgain(draft) : draft;
