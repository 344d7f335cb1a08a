/**
 * The pages of a session in order, worked out from the answers so far. A step is a short text:
 * "before:left-knee", "set:0:2" (exercise 0, set 2), "check".
 */
import { type LimbSign, limbSigns } from '#core/occlusion/limb-check.ts';
import {
  asksReason,
  isLimbChanged,
  isOut,
  type LineDraft,
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
  readonly line: number;
  readonly set: number;
}

export const partsOf = (step: string): StepParts => {
  const [name = '', second = '', third = ''] = step.split(':');
  const isNumber = /^\d+$/.test(second);
  return {
    name,
    joint: isNumber ? '' : second,
    line: isNumber ? Number(second) : -1,
    set: third === '' ? 0 : Number(third),
  };
};

/** The sign a "limb" or "limb-later" step asks about. */
export const signOf = ({ set }: Pick<StepParts, 'set'>): LimbSign =>
  limbSigns[Math.max(1, set) - 1] ?? 'colour';

const setSteps = (line: LineDraft, index: number): readonly string[] => {
  const { dose } = line;
  const isCuff = dose.method === 'occlusion';
  const steps: string[] = [];
  for (let set = 1; set <= dose.sets; set++) {
    steps.push(`set:${index}:${set}`);
    // With a cuff on, the reason can wait until it is off.
    if (!isCuff && asksReason(line, set)) steps.push(`stop:${index}:${set}`);
    if (line.leftAt === set) break;
    if (set < dose.sets || !isCuff) steps.push(`rest:${index}:${set}`);
  }
  return steps;
};

const reasonSteps = (line: LineDraft, index: number): readonly string[] =>
  line.sets.flatMap((_, at) => (asksReason(line, at + 1) ? [`stop:${index}:${at + 1}`] : []));

/** "limb:0", "limb:0:2", "limb:0:3": one page for each sign. */
const limbSteps = (line: LineDraft, index: number, name: 'limb' | 'limb-later'): readonly string[] =>
  signsOf(line, name === 'limb-later').map((sign) => {
    const place = limbSigns.indexOf(sign);
    return place === 0 ? `${name}:${index}` : `${name}:${index}:${place + 1}`;
  });

const cuffSteps = (line: LineDraft, index: number): readonly string[] => [
  `line:${index}`,
  `cuff-on:${index}`,
  ...setSteps(line, index),
  `cuff-off:${index}`,
  `seated:${index}`,
  ...limbSteps(line, index, 'limb'),
  ...(isLimbChanged(line) ? limbSteps(line, index, 'limb-later') : []),
  ...reasonSteps(line, index),
];

const lineSteps = (draft: SessionDraft, line: LineDraft, index: number): readonly string[] => {
  if (isOut(draft, line)) return [];
  return line.dose.method === 'occlusion'
    ? cuffSteps(line, index)
    : [`line:${index}`, ...setSteps(line, index)];
};

/** Work was done in at least one set. */
export const didWork = (draft: SessionDraft): boolean => draft.lines.some((line) => line.sets.length > 0);

const isEased = (line: LineDraft): boolean => line.isLighter && !line.planned.isLighter;

/** Something is told between the questions and the exercises: news, less work, or none. */
const tellsOffer = (draft: SessionDraft): boolean =>
  reportedNew(draft) ||
  draft.lines.some((line) => line.leftOut === 'offer' || isEased(line)) ||
  draft.lines.every((line) => isOut(draft, line));

const usedCuff = (draft: SessionDraft): boolean =>
  draft.lines.some((line) => line.restrictions.length > 0 && line.sets.length > 0);

const afterSteps = (draft: SessionDraft): readonly string[] => {
  if (draft.lines.every((line) => isOut(draft, line))) return [];
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
  ...(tellsOffer(draft) ? ['offer'] : []),
  ...draft.lines.flatMap((line, index) => lineSteps(draft, line, index)),
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
export const asksLoad = (line: LineDraft): boolean => plannedLoadKg(line.dose) > 0;

/** Sets of an exercise that were really begun, for the counter and the entry. */
export const reachedSets = (line: LineDraft): number =>
  line.sets.filter((_, index) => {
    const { repetitions, lostCount, isStopped, finishedAt } = setOf(line, index + 1);
    return repetitions !== null || lostCount || isStopped || finishedAt !== null;
  }).length;
