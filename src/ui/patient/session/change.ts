/** Small changes to a draft, shared by the reducers. */
import { emptySet, type LineDraft, type SessionDraft, type SetDraft } from './draft.ts';
import { nextStep } from './steps.ts';

export const withLine = (
  draft: SessionDraft,
  index: number,
  change: (line: LineDraft) => LineDraft,
): SessionDraft => ({
  ...draft,
  lines: draft.lines.map((line, at) => (at === index ? change(line) : line)),
});

export const withSet = (
  draft: SessionDraft,
  at: { readonly line: number; readonly set: number },
  change: Partial<SetDraft>,
): SessionDraft =>
  withLine(draft, at.line, (line) => {
    const sets = Array.from(
      { length: Math.max(line.sets.length, at.set) },
      (_, n) => line.sets[n] ?? emptySet,
    );
    return { ...line, sets: sets.map((set, n) => (n === at.set - 1 ? { ...set, ...change } : set)) };
  });

/** On to the next step, or back to the check page when the step was opened from there. */
export const forward = (before: SessionDraft, after: SessionDraft = before): SessionDraft =>
  after.isChanging
    ? { ...after, isChanging: false, step: 'check' }
    : { ...after, step: nextStep(before, after) };
