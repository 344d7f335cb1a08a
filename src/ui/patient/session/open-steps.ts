/** What "something is different" and "not all of this is right" have opened. */
import type { Joint } from '#core/exercises/joints.ts';
import type { SessionDraft } from './draft.ts';
import { partsOf } from './step-names.ts';
import { beforeSteps, eachAfter } from './steps.ts';

/** Questions that "something is different" has opened and that are not answered yet. */
export const openSteps = (draft: SessionDraft): readonly string[] =>
  [
    ...(draft.isUsual === false ? beforeSteps(draft) : []),
    ...(draft.isRight === false ? eachAfter(draft) : []),
  ].filter((step) => {
    const { name, joint } = partsOf(step);
    if (name === 'other-joint') return (draft.otherJointWorse ?? null) === null;
    if (name === 'relief') return draft.relief === null;
    if (name === 'news') return draft.news === null;
    if (name === 'flags-during') return draft.flagsDuring === null;
    if (name === 'gave-way') return draft.gaveWay[joint as Joint] === undefined;
    return name === 'extra' && draft.didExtra === null;
  });
