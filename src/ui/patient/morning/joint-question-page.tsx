'use client';
/** The page of a question about a joint, by the kind of its answer; pressing one answers and goes on. */
import type { Joint } from '#core/exercises/joints.ts';
import type { JointQuestion } from '#core/record/morning-questions.ts';
import { AnswerPage } from '../questions/answer-page.tsx';
import { ScoreQuestion } from '../questions/score-question.tsx';
import { YesNoQuestion } from '../questions/yes-no-question.tsx';
import type { Score, YesNo } from '../session/draft.ts';
import { t } from '../words.ts';
import { type Choice, choiceText, endsOf, hintOf } from './joint-questions.ts';
import type { MorningEvent } from './morning.ts';
import { type JointMorning, jointMorning, type MorningDraft } from './morning-draft.ts';
import { StiffnessPage } from './stiffness-page.tsx';

interface Asked {
  readonly draft: MorningDraft;
  readonly joint: Joint;
  readonly question: JointQuestion;
  readonly send: (event: MorningEvent) => void;
}

/** What stands on the page of a question: its answer so far, and how a new one is taken. */
const onPage = <V extends JointMorning[JointQuestion['answer']['name']]>(asked: Asked) => {
  const { draft, joint, question, send } = asked;
  const { id, answer } = question;
  return {
    question: t(`morning.${id}`, { joint }),
    hint: hintOf(id),
    given: jointMorning(draft, joint)[answer.name] as V | null,
    onAnswer: (value: V) => {
      send({ type: 'answer', joint, answer: { [answer.name]: value } });
      send({ type: 'next' });
    },
  };
};

const ScorePage = (asked: Asked) => {
  const [low, high] = endsOf(asked.question.id);
  return <ScoreQuestion {...onPage<Score>(asked)} low={low} high={high} />;
};

const ChoicePage = ({ values, ...asked }: Asked & { readonly values: readonly Choice[] }) => (
  <AnswerPage<Choice | 'unknown'>
    {...onPage<Choice | 'unknown'>(asked)}
    answers={[
      ...values.map((value) => ({ value, label: choiceText(asked.question.id, value) })),
      { value: 'unknown', label: t('ask.unknown'), isApart: true },
    ]}
  />
);

export const JointQuestionPage = (asked: Asked) => {
  const { answer } = asked.question;
  if (answer.kind === 'flag') return <YesNoQuestion {...onPage<YesNo>(asked)} />;
  if (answer.kind === 'enum') return <ChoicePage {...asked} values={answer.values} />;
  return answer.unit === '{score}' ? <ScorePage {...asked} /> : <StiffnessPage {...asked} />;
};
