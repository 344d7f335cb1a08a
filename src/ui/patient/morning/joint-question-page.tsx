'use client';
/** The page of a question about a joint, by the kind of its answer. */
import type { Joint } from '#core/exercises/joints.ts';
import type { JointQuestion } from '#core/record/morning-questions.ts';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { QuestionPage } from '../questions/question-page.tsx';
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
    name: `${id}-${joint}`,
    text: t(`morning.${id}`, { joint }),
    given: jointMorning(draft, joint)[answer.name] as V | null,
    take: (value: V) => send({ type: 'answer', joint, answer: { [answer.name]: value } }),
    next: () => send({ type: 'next' }),
  };
};

const ScorePage = (asked: Asked) => {
  const { name, text, given, take, next } = onPage<Score>(asked);
  const [low, high] = endsOf(asked.question.id);
  return (
    <QuestionPage
      field={name}
      isAnswered={given !== null}
      whenEmpty={t('ask.choose-number')}
      onContinue={next}
      onLeave={next}
    >
      {(error) => (
        <ScoreQuestion
          name={name}
          question={text}
          low={low}
          high={high}
          chosen={given}
          error={error}
          onChoose={take}
        />
      )}
    </QuestionPage>
  );
};

const ChoicePage = ({ values, ...asked }: Asked & { readonly values: readonly Choice[] }) => {
  const { name, text, given, take, next } = onPage<Choice | 'unknown'>(asked);
  const { id } = asked.question;
  return (
    <QuestionPage
      field={name}
      isAnswered={given !== null}
      whenEmpty={t('ask.choose-one')}
      onContinue={next}
      onLeave={next}
    >
      {(error) => (
        <RadioGroup<Choice | 'unknown'>
          name={name}
          legend={text}
          legendIsHeading
          hint={hintOf(id)}
          error={error}
          options={[
            ...values.map((value) => ({ value, label: choiceText(id, value) })),
            { value: 'unknown', label: t('ask.unknown'), isApart: true },
          ]}
          chosen={given}
          onChoose={take}
        />
      )}
    </QuestionPage>
  );
};

const YesNoPage = (asked: Asked) => {
  const { name, text, given, take, next } = onPage<YesNo>(asked);
  return (
    <YesNoQuestion
      name={name}
      question={text}
      hint={hintOf(asked.question.id)}
      chosen={given}
      onChoose={take}
      onContinue={next}
    />
  );
};

export const JointQuestionPage = (asked: Asked) => {
  const { answer } = asked.question;
  if (answer.kind === 'flag') return <YesNoPage {...asked} />;
  if (answer.kind === 'enum') return <ChoicePage {...asked} values={answer.values} />;
  return answer.unit === '{score}' ? <ScorePage {...asked} /> : <StiffnessPage {...asked} />;
};
