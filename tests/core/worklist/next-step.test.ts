/** The next thing to do for a person. The order is a choice of this project; it decides about no dose. */
import { describe, expect, it } from 'vitest';
import { firstVisitSteps } from '#core/episode/first-visit/first-visit-steps.ts';
import { dangers, worklistItemKinds } from '#core/worklist/item.ts';
import { type NextStepInput, nextStepOf, setupSteps } from '#core/worklist/next-step.ts';

const ready: NextStepInput = {
  items: [],
  isAway: false,
  isScreened: true,
  isTreatmentAnswered: true,
  followedJoints: ['left-knee', 'right-hip'],
  jointsWithBaseline: ['left-knee', 'right-hip'],
  isPrescribed: true,
  firstVisit: null,
};
const next = (over: Partial<NextStepInput>) => nextStepOf({ ...ready, ...over });
const item = (kind: (typeof worklistItemKinds)[number]) => ({
  kind,
  joint: 'left-knee' as const,
  decisionId: null,
});

describe('the next step', () => {
  it('is nothing where nothing waits and nothing is missing', () => {
    expect(next({})).toBeNull();
  });

  it('comes in the order of what nothing can be prescribed without', () => {
    const missing: Partial<NextStepInput>[] = [
      { isScreened: false },
      { isTreatmentAnswered: false },
      { followedJoints: [], jointsWithBaseline: [] },
      { jointsWithBaseline: ['left-knee'] },
    ];
    for (let from = 0; from < missing.length; from++) {
      const all = missing.slice(from).toReversed();
      expect(next(Object.assign({}, ...all))).toMatchObject({ because: 'setup', step: setupSteps[from] });
    }
  });

  it('is the first visit, where it goes on, until an exercise is prescribed', () => {
    for (const step of firstVisitSteps)
      expect(
        next({ isPrescribed: false, isScreened: false, firstVisit: step, items: [item('message')] }),
      ).toEqual({ because: 'first-visit', step });
    expect(next({ isPrescribed: false })).toEqual({ because: 'first-visit', step: 'exercise' });
  });

  it('is what the first visit leaves to do once a dose is signed, behind all that waits', () => {
    for (const step of ['week', 'invitation'] as const) {
      expect(next({ firstVisit: step })).toEqual({ because: 'first-visit', step });
      expect(next({ firstVisit: step, items: [item('baseline-due')] })).toMatchObject({ because: 'item' });
      expect(next({ firstVisit: step, isScreened: false })).toMatchObject({ because: 'setup' });
    }
    expect(next({ firstVisit: 'measurements' })).toBeNull();
  });

  it('names the joint that has no baseline', () => {
    expect(next({ jointsWithBaseline: ['left-knee'] })).toMatchObject({ joint: 'right-hip' });
  });

  it('puts danger before what is missing, and what is missing before everything else that waits', () => {
    for (const kind of worklistItemKinds) {
      const found = next({ items: [item(kind)], isScreened: false });
      expect([kind, found?.because]).toEqual([kind, dangers.includes(kind) ? 'item' : 'setup']);
    }
  });

  it('is the first item that waits where nothing is missing', () => {
    for (const kind of worklistItemKinds)
      expect(next({ items: [item(kind), item('baseline-due')] })).toEqual({
        because: 'item',
        kind,
        joint: 'left-knee',
        decisionId: null,
      });
  });

  it('says of a re-test what is to be measured', () => {
    expect(next({ items: [{ ...item('retest-due'), measure: 'timed-up-and-go' }] })).toMatchObject({
      measure: 'timed-up-and-go',
    });
  });

  it('begins nothing new for somebody on a break or out of care, and still names what arrived', () => {
    expect(next({ isAway: true, isScreened: false, isPrescribed: false })).toBeNull();
    expect(next({ isAway: true, isScreened: false, items: [item('message')] })).toMatchObject({
      kind: 'message',
    });
  });
});
