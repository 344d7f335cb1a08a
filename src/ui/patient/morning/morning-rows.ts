/** The morning's answers in lines, each with the step that changes it. */
import type { Joint } from '#core/exercises/joints.ts';
import type { JointQuestion } from '#core/record/morning-questions.ts';
import { scoreText, yesNoText } from '#ui/patient/questions/answers-in-words.ts';
import { type CheckRow, flagsText } from '../session/check-rows.ts';
import type { Score, YesNo } from '../session/draft.ts';
import { t } from '../words.ts';
import { choiceText, questionsOf } from './joint-questions.ts';
import { type JointMorning, jointMorning, type MorningDraft } from './morning-draft.ts';

const minutesText = (minutes: Score | null): string =>
  minutes === null
    ? t('ask.not-answered')
    : minutes === 'unknown'
      ? t('ask.unknown')
      : minutes === 0
        ? t('morning.stiff-0')
        : t('morning.stiff-minutes', { minutes });

/** An answer to a question of its kind; a choice has a sentence for each of its values. */
const answerText = ({ id, answer }: JointQuestion, given: JointMorning): string => {
  const said = given[answer.name];
  if (answer.kind === 'flag') return yesNoText(said as YesNo | null);
  if (answer.kind === 'integer')
    return answer.unit === '{score}' ? scoreText(said as Score | null) : minutesText(said as Score | null);
  if (said === null) return t('ask.not-answered');
  return said === 'unknown' ? t('ask.unknown') : choiceText(id, String(said));
};

const jointRows = (draft: MorningDraft, joint: Joint): readonly CheckRow[] =>
  questionsOf(draft, joint).map((question) => ({
    step: `${question.id}:${joint}`,
    name: t(`morning.${question.id}`, { joint }),
    value: answerText(question, jointMorning(draft, joint)),
  }));

export const morningRows = (draft: MorningDraft): readonly CheckRow[] => [
  ...(draft.asksUrine ? [{ step: 'urine', name: t('morning.urine'), value: yesNoText(draft.urine) }] : []),
  ...draft.joints.flatMap((joint) => jointRows(draft, joint)),
  { step: 'relief', name: t('morning.relief'), value: yesNoText(draft.relief) },
  { step: 'flags', name: t('flags.morning'), value: flagsText(draft.flags) },
];
