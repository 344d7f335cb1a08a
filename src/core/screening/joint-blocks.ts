/** Joints that screening forbids to load, and what that leaves of one exercise. Callers gate by exercise, not by limb alone. */

import { joints as everyJoint, type Joint, jointNameOf, type Limb, type Side } from '../exercises/joints.ts';
import type { Eligibility, Method } from '../prescribing/methods.ts';
import type { Day } from '../time/day.ts';
import { screeningItem } from './items.ts';
import { mostCautious } from './outcomes.ts';
import { counts, jointsOf } from './reasons-from-answers.ts';
import type { Clearance, MethodOutcome, MethodReason, Screening } from './screening.ts';

export interface JointBlock {
  readonly joint: Joint;
  readonly reason: MethodReason;
}

const blocksFrom = ({ answers }: Screening): readonly JointBlock[] =>
  answers.filter(counts).flatMap((answer) => {
    const item = screeningItem(answer.item);
    if (!item?.blocksJoints) return [];
    const blocks = item.blocksJoints;
    const blocked =
      blocks === 'answered'
        ? jointsOf(answer)
        : everyJoint.filter((joint) => blocks.includes(jointNameOf(joint)));
    return blocked.map((joint) => ({
      joint,
      reason: {
        code: `${item.id}-${joint}`,
        from: item.id,
        eligibility: 'closed-until-cleared' as const,
        text: `${item.clinicianLabel}: ${joint} is not loaded until a physician has judged it.`,
        clearedBy: 'physician' as const,
        support: item.support,
      },
    }));
  });

/** Of one screening every exercise of a list asks the same. */
const known = new WeakMap<Screening, readonly JointBlock[]>();

/** Joints closed to loading by the answers; a hot joint not named closes every joint. */
export const jointBlocks = (screening: Screening | null): readonly JointBlock[] => {
  if (!screening) return [];
  const blocks = known.get(screening) ?? blocksFrom(screening);
  known.set(screening, blocks);
  return blocks;
};

interface ExerciseToCheck {
  readonly method: Method;
  readonly limb: Limb | 'trunk';
  readonly side: Side | 'both';
  /** Every joint it loads, main and carried. */
  readonly joints: readonly Joint[];
}

const trunkRefused: MethodReason = {
  code: 'trunk-refused',
  from: 'method',
  eligibility: 'closed',
  text: 'Occlusion work is for arms and legs only.',
  clearedBy: null,
  support: 'occlusion-position-stand-2019',
};

const notJudged: MethodReason = {
  code: 'not-judged',
  from: 'screening',
  eligibility: 'closed',
  text: 'No screening outcome was given for this method and limb; nothing opens without one.',
  clearedBy: null,
  support: 'clinic',
};

export interface ExerciseEligibilityInput {
  readonly exercise: ExerciseToCheck;
  /** What methodOutcomes returned. */
  readonly outcomes: readonly MethodOutcome[];
  readonly screening: Screening | null;
  readonly clearances: readonly Clearance[];
  readonly today: Day;
}

const isCleared = (block: JointBlock, input: ExerciseEligibilityInput): boolean =>
  input.clearances.some(
    (clearance) =>
      clearance.method === input.exercise.method &&
      clearance.findings.includes(block.reason.code) &&
      clearance.by.trim() !== '' &&
      clearance.reason.trim() !== '' &&
      clearance.day >= (input.screening?.day ?? input.today) &&
      clearance.day <= input.today,
  );

const reachesExercise = (outcome: MethodOutcome, exercise: ExerciseToCheck): boolean => {
  if (outcome.method !== exercise.method) return false;
  if (exercise.limb === 'trunk') return true;
  return outcome.limb === exercise.limb && (exercise.side === 'both' || outcome.side === exercise.side);
};

/** What is left of one exercise: its limb (all limbs for the trunk), its sides, and the joints it loads. */
export const exerciseEligibility = (
  input: ExerciseEligibilityInput,
): { readonly eligibility: Eligibility; readonly reasons: readonly MethodReason[] } => {
  const { exercise } = input;
  const judged = input.outcomes.filter((outcome) => reachesExercise(outcome, exercise));
  const fromJoints = jointBlocks(input.screening)
    .filter((block) => exercise.joints.includes(block.joint))
    .map(
      (block): MethodReason =>
        isCleared(block, input) ? { ...block.reason, eligibility: 'open-with-precautions' } : block.reason,
    );
  const all = [
    ...(exercise.method === 'occlusion' && exercise.limb === 'trunk' ? [trunkRefused] : []),
    ...(judged.length === 0 ? [notJudged] : []),
    ...judged.flatMap((outcome) => outcome.reasons),
    ...fromJoints,
  ];
  // The same reason found on several limbs is said once, per opening.
  const reasons = [
    ...new Map(all.map((reason) => [`${reason.code} ${reason.eligibility}`, reason])).values(),
  ];
  return { eligibility: mostCautious(reasons.map((reason) => reason.eligibility)), reasons };
};
