/**
 * The pages of a session in order, worked out from the answers so far. A step is a short text:
 * "before:left-knee", "set:0:2" (exercise 0, set 2), "check".
 */
import { type LimbSign, limbSigns } from '#core/prescribing/occlusion/limb-check.ts';
import {
  asksReason,
  type ItemDraft,
  isLimbChanged,
  isOut,
  plannedLoadKg,
  reportedNew,
  type SessionDraft,
  setOf,
  signsOf,
} from './draft.ts';

export interface StepParts {
  readonly name: string;
  /** Joint of a question, or empty. */
  readonly joint: string;
  readonly item: number;
  readonly set: number;
}

export const partsOf = (step: string): StepParts => {
  const [name = '', second = '', third = ''] = step.split(':');
  const isNumber = /^\d+$/.test(second);
  return {
    name,
    joint: isNumber ? '' : second,
    item: isNumber ? Number(second) : -1,
    set: third === '' ? 0 : Number(third),
  };
};

/** The sign a "limb" or "limb-later" step asks about. */
export const signOf = ({ set }: Pick<StepParts, 'set'>): LimbSign =>
  limbSigns[Math.max(1, set) - 1] ?? 'colour';

const setSteps = (item: ItemDraft, index: number): readonly string[] => {
  const { dose } = item;
  const isCuff = dose.method === 'occlusion';
  const steps: string[] = [];
  for (let set = 1; set <= dose.sets; set++) {
    steps.push(`set:${index}:${set}`);
    // With a cuff on, the reason can wait until it is off.
    if (!isCuff && asksReason(item, set)) steps.push(`stop:${index}:${set}`);
    if (item.leftAt === set) break;
    if (set < dose.sets || !isCuff) steps.push(`rest:${index}:${set}`);
  }
  return steps;
};

const reasonSteps = (item: ItemDraft, index: number): readonly string[] =>
  item.sets.flatMap((_, at) => (asksReason(item, at + 1) ? [`stop:${index}:${at + 1}`] : []));

/** "limb:0", "limb:0:2", "limb:0:3": one page for each sign. */
const limbSteps = (item: ItemDraft, index: number, name: 'limb' | 'limb-later'): readonly string[] =>
  signsOf(item, name === 'limb-later').map((sign) => {
    const place = limbSigns.indexOf(sign);
    return place === 0 ? `${name}:${index}` : `${name}:${index}:${place + 1}`;
  });

const cuffSteps = (item: ItemDraft, index: number): readonly string[] => [
  `line:${index}`,
  `cuff-on:${index}`,
  ...setSteps(item, index),
  `cuff-off:${index}`,
  `seated:${index}`,
  ...limbSteps(item, index, 'limb'),
  ...(isLimbChanged(item) ? limbSteps(item, index, 'limb-later') : []),
  ...reasonSteps(item, index),
];

const itemSteps = (draft: SessionDraft, item: ItemDraft, index: number): readonly string[] => {
  if (isOut(draft, item)) return [];
  return item.dose.method === 'occlusion'
    ? cuffSteps(item, index)
    : [`line:${index}`, ...setSteps(item, index)];
};

/** Work was done in at least one set. */
export const didWork = (draft: SessionDraft): boolean => draft.items.some((item) => item.sets.length > 0);

const isEased = (item: ItemDraft): boolean => item.isEasierSession && !item.planned.isEasierSession;

/** Something is told between the questions and the exercises: news, less work, or none. */
const showsOffer = (draft: SessionDraft): boolean =>
  reportedNew(draft) ||
  draft.items.some((item) => item.leftOut === 'offer' || isEased(item)) ||
  draft.items.every((item) => isOut(draft, item));

const usedCuff = (draft: SessionDraft): boolean =>
  draft.items.some((item) => item.restrictions.length > 0 && item.sets.length > 0);

const afterSteps = (draft: SessionDraft): readonly string[] => {
  if (draft.items.every((item) => isOut(draft, item))) return [];
  return [
    'flags-during',
    ...draft.joints.flatMap((joint) => [`during:${joint}`, `after:${joint}`, `gave-way:${joint}`]),
    'burn',
    ...(usedCuff(draft) ? ['cuff'] : []),
    'extra',
  ];
};

export const stepsOf = (draft: SessionDraft): readonly string[] => [
  'flags-before',
  ...draft.joints.map((joint) => `before:${joint}`),
  'other-joint',
  'relief',
  'news',
  ...(showsOffer(draft) ? ['offer'] : []),
  ...draft.items.flatMap((item, index) => itemSteps(draft, item, index)),
  ...afterSteps(draft),
  'check',
];

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
export const asksLoad = (item: ItemDraft): boolean => plannedLoadKg(item.dose) > 0;

/** Sets of an exercise that were really begun, for the counter and the entry. */
export const reachedSets = (item: ItemDraft): number =>
  item.sets.filter((_, index) => {
    const { repetitions, lostCount, isStopped, finishedAt } = setOf(item, index + 1);
    return repetitions !== null || lostCount || isStopped || finishedAt !== null;
  }).length;
