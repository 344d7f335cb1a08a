/** What the recorded answers close. "Not known" counts as "yes"; what was not said is said to be so. */

import {
  joints as everyJoint,
  type Joint,
  jointNameOf,
  type Limb,
  type Side,
  sideOf,
} from '../exercises/joints.ts';
import type { Method } from '../prescribing/methods.ts';
import type { Day } from '../time/day.ts';
import { detailsNamed, effectsOf } from './effects-of-answer.ts';
import type { ScreeningEffect, ScreeningItem } from './item.ts';
import { itemsAskedAt, screeningItem } from './items.ts';
import type { MethodReason, Screening, ScreeningItemAnswer } from './screening.ts';

export interface Target {
  readonly method: Method;
  readonly limb: Limb;
  readonly side: Side;
}

/** A reason with the day it was found: a clearance given earlier does not reach it. */
export interface DatedReason extends MethodReason {
  readonly since: Day;
}

/** True unless the answer is a plain no, or the question does not apply. */
export const counts = ({ answer }: ScreeningItemAnswer): boolean =>
  answer !== 'no' && answer !== 'not-applicable';

const reachesLimb = (answer: ScreeningItemAnswer, effect: ScreeningEffect, target: Target): boolean => {
  if (effect.limb !== undefined && effect.limb !== target.limb) return false;
  if (effect.scope === 'everywhere' || !answer.limbs || answer.limbs.length === 0) return true;
  return answer.limbs.some((named) => named.limb === target.limb && named.side === target.side);
};

const limbWords = (answer: ScreeningItemAnswer, effect: ScreeningEffect): string =>
  effect.scope === 'answered-limbs' && !answer.limbs?.length
    ? ' No limb was named, so every limb counts.'
    : '';

const notKnownWords = (answer: ScreeningItemAnswer): string =>
  answer.answer === 'not-known' ? ' The answer was "not known", which counts as yes.' : '';

/** Joints an answer speaks of; every joint when it names none. */
export const jointsOf = (answer: ScreeningItemAnswer): readonly Joint[] => {
  const named = everyJoint.filter((joint) => answer.joints?.includes(joint));
  return named.length > 0 ? named : everyJoint;
};

const armJoints = ['shoulder', 'elbow', 'wrist', 'hand', 'thumb-base', 'finger-joint'];

const lieOn = (joint: Joint, target: Target): boolean => {
  const side = sideOf(joint);
  if (side === null) return true;
  return side === target.side && armJoints.includes(jointNameOf(joint)) === (target.limb === 'arm');
};

/** A hot joint closes its own loading (see joint-blocks.ts); the limb hears of it, and no cuff goes on it. */
const hotJointReason = (
  answer: ScreeningItemAnswer,
  item: ScreeningItem,
  target: Target,
  day: Day,
): readonly DatedReason[] => {
  const hot = jointsOf(answer).filter((joint) => lieOn(joint, target));
  if (hot.length === 0) return [];
  const unnamed = jointsOf(answer).length === everyJoint.length;
  const contraindicates = unnamed || target.method === 'occlusion';
  const where = unnamed ? 'no joint was named, so every joint counts' : hot.join(', ');
  return [
    {
      code: 'hot-joint',
      from: item.id,
      eligibility: contraindicates ? 'closed-until-cleared' : 'open-with-precautions',
      text: `Hot or clearly swollen joint (${where}): that joint is not loaded until a physician has judged it.${notKnownWords(answer)}`,
      clearedBy: contraindicates ? 'physician' : null,
      support: item.support,
      since: day,
    },
  ];
};

const reasonsOf = (answer: ScreeningItemAnswer, target: Target, day: Day): readonly DatedReason[] => {
  const item = screeningItem(answer.item);
  if (!item) {
    return [
      {
        code: 'unknown-item',
        from: answer.item,
        eligibility: 'closed',
        text: `The screening contains an item this version does not know (${answer.item}); use the current form.`,
        clearedBy: null,
        support: 'clinic',
        since: day,
      },
    ];
  }
  if (!counts(answer)) return [];
  const hot = item.blocksJoints === 'answered' ? hotJointReason(answer, item, target, day) : [];
  const reached = item.effects.filter(
    (effect) => effect.methods.includes(target.method) && reachesLimb(answer, effect, target),
  );
  return [
    ...hot,
    ...effectsOf(item, detailsNamed(answer, item, day), reached).map((effect) => ({
      code: effect.code,
      from: item.id,
      eligibility: effect.eligibility,
      text: effect.text + limbWords(answer, effect) + notKnownWords(answer),
      clearedBy: effect.clearedBy,
      support: effect.support ?? item.support,
      since: day,
    })),
  ];
};

/** Items nobody has answered: the minimum set closes, the rest is a precaution. Nothing waits for what is not asked at this age. */
const unanswered = (screening: Screening, target: Target, ageYears: number): readonly DatedReason[] => {
  const answered = new Set(screening.answers.map((answer) => answer.item));
  return itemsAskedAt(ageYears)
    .filter((item) => !answered.has(item.id))
    .filter(
      (item) =>
        item.minimumFor.includes(target.method) ||
        item.effects.some((effect) => effect.methods.includes(target.method)),
    )
    .map((item) => {
      const contraindicates = item.minimumFor.includes(target.method);
      return {
        code: `not-asked-${item.id}`,
        from: item.id,
        eligibility: contraindicates ? ('closed' as const) : ('open-with-precautions' as const),
        text: contraindicates
          ? `Not asked yet, and needed for this method: ${item.clinicianLabel}.`
          : `Not asked yet: ${item.clinicianLabel}.`,
        clearedBy: null,
        support: 'clinic',
        since: screening.day,
      };
    });
};

export const reasonsFromAnswers = (
  screening: Screening,
  target: Target,
  ageYears: number,
): readonly DatedReason[] => [
  ...screening.answers.flatMap((answer) => reasonsOf(answer, target, answer.askedOn ?? screening.day)),
  ...unanswered(screening, target, ageYears),
];
