/**
 * The pages of a session in order, worked out from the answers so far. A step is a short text:
 * "before:left-knee", "set:0:2" (exercise 0, set 2), "check".
 */
import { prescribedLoadKg } from '#core/decision/dose/volume.ts';
import type { Joint } from '#core/exercises/joints.ts';
import { type LimbSign, limbSigns } from '#core/prescribing/occlusion/limb-check.ts';
import { asksReason, type ItemDraft, type SessionDraft, setOf } from './draft.ts';
import { hurtAtSet, isLimbChanged, isOut, reportedNew } from './left-out.ts';
import { signsOf } from './limb-signs.ts';
import { type Step, type StepParts, stepAt } from './step-names.ts';

/** The sign a "limb" or "limb-later" step asks about. */
export const signOf = ({ set }: Pick<StepParts, 'set'>): LimbSign =>
  limbSigns[Math.max(1, set) - 1] ?? 'colour';

/** Joints a set was stopped for; one that is not followed has no number to ask for. */
const jointsToAsk = (draft: SessionDraft, item: ItemDraft, set: number): readonly Joint[] =>
  setOf(item, set).stopReason === 'joint-pain'
    ? draft.joints.filter((joint) => item.joints.includes(joint))
    : [];

/** Nothing is left to go on with after the last set, or once a cuff is off. */
const hasSetLeft = ({ dose }: ItemDraft, set: number): boolean =>
  dose.method !== 'occlusion' && set < dose.sets;

/** "stop:0:2", "stop-pain:0:2:left-knee": why a set ended early, and what follows from it. */
const stopSteps = (draft: SessionDraft, item: ItemDraft, index: number, set: number): readonly Step[] => {
  if (!asksReason(item, set)) return [];
  const {
    isStopped,
    repetitions,
    asksCount = isStopped && repetitions === null,
    stopReason,
  } = setOf(item, set);
  const isHurt = hurtAtSet(draft, item, set).length > 0;
  return [
    ...(asksCount ? [stepAt('stop-count', index, set)] : []),
    stepAt('stop', index, set),
    ...jointsToAsk(draft, item, set).map((joint) => stepAt('stop-pain', index, set, joint)),
    ...(isHurt ? [stepAt('stop-advice', index, set)] : []),
    ...(!isHurt && stopReason !== null && hasSetLeft(item, set) ? [stepAt('stop-next', index, set)] : []),
  ];
};

const setSteps = (draft: SessionDraft, item: ItemDraft, index: number): readonly Step[] => {
  const { dose } = item;
  const isCuff = dose.method === 'occlusion';
  const steps: Step[] = [];
  for (let set = 1; set <= dose.sets; set++) {
    steps.push(stepAt('set', index, set));
    // With a cuff on, the reason can wait until it is off.
    if (!isCuff) steps.push(...stopSteps(draft, item, index, set));
    if (item.leftAt === set || hurtAtSet(draft, item, set).length > 0) break;
    // With a cuff on nothing is asked between the sets; one that comes down in each rest has its page.
    if (isCuff ? dose.inflation === 'intermittent' && set < dose.sets : true)
      steps.push(stepAt('rest', index, set));
  }
  return steps;
};

const reasonSteps = (draft: SessionDraft, item: ItemDraft, index: number): readonly Step[] =>
  item.sets.flatMap((_, place) => stopSteps(draft, item, index, place + 1));

/** "limb:0", "limb:0:2", "limb:0:3": one page for each sign. */
const limbSteps = (item: ItemDraft, index: number, name: 'limb' | 'limb-later'): readonly Step[] =>
  signsOf(item, name === 'limb-later').map((sign) => {
    const place = limbSigns.indexOf(sign);
    return place === 0 ? stepAt(name, index) : stepAt(name, index, place + 1);
  });

const cuffSteps = (draft: SessionDraft, item: ItemDraft, index: number): readonly Step[] => [
  stepAt('item', index),
  stepAt('cuff-on', index),
  ...setSteps(draft, item, index),
  stepAt('cuff-off', index),
  ...limbSteps(item, index, 'limb'),
  ...(isLimbChanged(item) ? limbSteps(item, index, 'limb-later') : []),
  ...reasonSteps(draft, item, index),
];

const itemSteps = (draft: SessionDraft, item: ItemDraft, index: number): readonly Step[] => {
  if (isOut(draft, item)) return [];
  return item.dose.method === 'occlusion'
    ? cuffSteps(draft, item, index)
    : [stepAt('item', index), ...setSteps(draft, item, index)];
};

const isEased = (item: ItemDraft): boolean => item.isEasierSession && !item.planned.isEasierSession;

/** Something is told between the questions and the exercises: news, less work, or none. */
export const showsOffer = (draft: SessionDraft): boolean =>
  reportedNew(draft) ||
  draft.items.some((item) => item.leftOut === 'offer' || isEased(item)) ||
  draft.items.every((item) => isOut(draft, item));

const usedCuff = (draft: SessionDraft): boolean =>
  draft.items.some((item) => item.restrictions.length > 0 && item.sets.length > 0);

/** Asked one by one where the statements were not all right, and by a draft of an earlier release. */
export const eachAfter = (draft: SessionDraft): readonly Step[] => [
  ...(draft.signForm === 'short' ? (['flags-during'] as const) : []),
  ...draft.joints.map((joint) => stepAt('gave-way', joint)),
  'extra',
];

export const afterSteps = (draft: SessionDraft): readonly Step[] => {
  if (draft.items.every((item) => isOut(draft, item))) return [];
  const isEarlier = draft.isRight === undefined;
  return [
    ...(draft.signForm === 'short' ? [] : (['flags-during'] as const)),
    ...draft.joints.flatMap((joint): readonly Step[] => [stepAt('during', joint), stepAt('after', joint)]),
    'burn',
    ...(usedCuff(draft) ? (['cuff'] as const) : []),
    ...(isEarlier ? [] : (['statement'] as const)),
    ...(isEarlier || draft.isRight === false ? eachAfter(draft) : []),
  ];
};

export const beforeSteps = (draft: SessionDraft): readonly Step[] => [
  'flags-before',
  ...draft.joints.map((joint): Step => stepAt('before', joint)),
  ...(draft.isUsual === undefined ? [] : (['usual'] as const)),
  ...(draft.isUsual === undefined || draft.isUsual === false
    ? (['other-joint', 'relief', 'news'] as const)
    : []),
];

const allSteps = (draft: SessionDraft): readonly Step[] => [
  ...beforeSteps(draft),
  ...(showsOffer(draft) ? (['offer'] as const) : []),
  ...draft.items.flatMap((item, index) => itemSteps(draft, item, index)),
  ...afterSteps(draft),
  'check',
];

export const stepsOf: (draft: SessionDraft) => readonly string[] = allSteps;

/** The step after the present one. An answer may have taken the present step itself away. */
export const nextStep = (before: SessionDraft, after: SessionDraft): string => {
  const steps = stepsOf(after);
  const here = steps.indexOf(before.step);
  if (here >= 0) return steps[here + 1] ?? 'check';
  const earlier = stepsOf(before);
  const rest = earlier.slice(earlier.indexOf(before.step) + 1);
  return rest.find((step) => steps.includes(step)) ?? 'check';
};

/** The weight is asked only where there is one. */
export const asksLoad = (item: ItemDraft): boolean => prescribedLoadKg(item.dose) > 0;

/** Sets of an exercise that were really begun, for the counter and the entry. */
export const reachedSets = (item: ItemDraft): number =>
  item.sets.filter((_, index) => {
    const { repetitions, lostCount, isStopped, finishedAt } = setOf(item, index + 1);
    return repetitions !== null || lostCount || isStopped || finishedAt !== null;
  }).length;
