/** How much pain is all right while exercising, as the plan says it: once for all joints of one limit. */
import { jointsByPainLimit } from '#core/record/followed-joints.ts';
import type { planPaper } from '#messages/en/sentences/papers/plan.ts';
import { everyLanguage } from '#messages/every-language.ts';
import { listed } from '#messages/formats.ts';
import type { LanguageTag } from '#messages/languages.ts';
import { pageWord } from '#messages/page-words.ts';
import type { Args } from '#messages/sentence.ts';
import type { PlanPaper } from './plan-paper.ts';

interface Words {
  readonly tag: LanguageTag;
  readonly say: <Key extends 'no-joint' | 'no-limit'>(
    key: Key,
    ...values: Args<(typeof planPaper)[Key]>
  ) => string;
}

const limitsOf = (joints: PlanPaper['joints']) =>
  joints.flatMap(({ joint, acceptablePainLimit: limit }) => (limit === null ? [] : [{ joint, limit }]));

const unlimited = (joints: PlanPaper['joints']) =>
  joints.filter(({ acceptablePainLimit }) => acceptablePainLimit === null);

export const painAllowed = ({ joints, clinic }: PlanPaper, { say, tag }: Words): readonly string[] => {
  if (joints.length === 0) return [say('no-joint', { phone: clinic.phone })];
  const { locale } = everyLanguage[tag];
  const allowed = jointsByPainLimit(limitsOf(joints)).map(({ limit, joints: of }) => {
    const where = listed(
      of.map((joint) => pageWord(tag, 'pain.in', { joint })),
      locale,
    );
    return pageWord(tag, 'pain.limit', { where, limit });
  });
  return [...allowed, ...unlimited(joints).map(({ joint }) => say('no-limit', { joint }))];
};
