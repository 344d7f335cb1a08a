/** The pages of a morning check in order, worked out from the answers so far. */
import type { Joint } from '#core/exercises/joints.ts';
import { morningQuestions } from '#core/record/morning-questions.ts';
import { isWhole, questionsOf } from './joint-questions.ts';
import { asksSwellingOf, jointMorning, lastOffered, type MorningDraft } from './morning-draft.ts';

/** Two joints are asked about on one page; of more each has its own. */
const areTwo = ({ joints }: MorningDraft): boolean => joints.length === 2;

const swellingSteps = (draft: MorningDraft): readonly string[] => {
  const asked = draft.joints.filter((joint) => asksSwellingOf(draft, joint));
  if (!areTwo(draft) || asked.length < 2) return asked.map((joint) => `swelling:${joint}`);
  // How much is asked of the joints that were named.
  return ['swollen', ...(draft.swollen ?? []).map((joint) => `swelling:${joint}`)];
};

const each = (draft: MorningDraft): readonly string[] => [
  ...draft.joints.flatMap((joint) =>
    questionsOf(draft, joint).flatMap(({ id }) => (id === 'stiffness' ? [`${id}:${joint}`] : [])),
  ),
  ...swellingSteps(draft),
  ...(areTwo(draft) ? ['flares'] : draft.joints.map((joint) => `flare:${joint}`)),
  'relief',
];

/** The answers of yesterday that may stand for today; null = each is asked. */
export const offered = (draft: MorningDraft) => {
  const lasts = lastOffered(draft);
  return lasts?.every((last) => isWhole(draft, last)) ? lasts : null;
};

/** The signs come last: their answer sends the check. */
export const morningSteps = (draft: MorningDraft): readonly string[] => [
  ...draft.joints.map((joint) => `pain:${joint}`),
  ...(draft.asksUrine ? ['urine'] : []),
  ...(offered(draft) ? ['usual'] : []),
  ...(draft.isUsual === true && offered(draft) ? [] : each(draft)),
  'flags',
];

/** The first question that was passed over, as after a change that opened others. */
export const leftOpen = (draft: MorningDraft): string | undefined =>
  draft.isUsual === true
    ? undefined
    : each(draft).find((step) => {
        const [name = '', joint = ''] = step.split(':');
        if (name === 'relief') return draft.relief === null;
        if (name === 'swollen') return draft.swollen == null;
        if (name === 'flares') return draft.joints.some((one) => jointMorning(draft, one).flare === null);
        const question = morningQuestions.find(({ id }) => id === name);
        return question !== undefined && jointMorning(draft, joint as Joint)[question.answer.name] === null;
      });
