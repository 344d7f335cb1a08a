/** What is true now is asked again once a session was left. Pure. */

import type { Score, SessionDraft } from './draft.ts';
import { wasLeft } from './left-open/away.ts';
import { partsOf } from './step-names.ts';
import { afterSteps, stepsOf } from './steps.ts';

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
