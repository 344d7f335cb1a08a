'use client';
/** One question about several joints at once: the same answer for all of them, or each by itself, up to three on this page. */
import type { Joint } from '#core/exercises/joints.ts';
import type { JointQuestion, QuestionId } from '#core/record/morning-questions.ts';
import { AnswerPage } from '../questions/answer-page.tsx';
import { t } from '../words.ts';
import { EachJoint } from './each-joint.tsx';
import { FlaringJointsPage } from './flaring-joints-page.tsx';
import { choiceText, hintOf } from './joint-questions.ts';
import type { MorningEvent } from './morning.ts';
import { type JointMorning, jointMorning, type MorningDraft } from './morning-draft.ts';
import { areEachOnOnePage, jointsAsked } from './morning-steps.ts';
import { lengths } from './stiffness-page.tsx';

interface AlikeProps {
  readonly draft: MorningDraft;
  readonly question: JointQuestion;
  readonly send: (event: MorningEvent) => void;
}

type Value = NonNullable<JointMorning[JointQuestion['answer']['name']]>;

const choicesOf = ({
  id,
  answer,
}: JointQuestion): readonly { value: string; label: string; said: Value }[] => {
  if (answer.kind === 'enum')
    return answer.values.map((value) => ({ value, label: choiceText(id, value), said: value as Value }));
  if (answer.kind === 'flag')
    return [
      { value: 'no', label: t('morning.none-of-these'), said: false },
      { value: 'yes', label: t('morning.all-of-these'), said: true },
    ];
  return lengths.map((value) => ({ value, label: t(`morning.stiff-${value}`), said: Number(value) }));
};

/** What was said before, where the same was said of all. */
const givenOf = ({ draft, question }: AlikeProps, joints: readonly Joint[]): string | null => {
  if (draft.alike?.[question.id] === false) return 'singly';
  const [joint] = joints;
  const said = joint && jointMorning(draft, joint)[question.answer.name];
  if (draft.alike?.[question.id] !== true || said === null || said === undefined) return null;
  return said === 'unknown' ? said : (choicesOf(question).find((one) => one.said === said)?.value ?? null);
};

const questionText: Readonly<Partial<Record<QuestionId, () => string>>> = {
  stiffness: () => t('morning.all-stiff'),
  swelling: () => t('morning.all-swollen'),
  flare: () => t('morning.flares'),
};

/** Up to three joints are answered each on this page; an exact time has a page of its own. */
const waysOfEach = ({ draft, question: { id } }: AlikeProps) =>
  !areEachOnOnePage(draft, id)
    ? [{ value: 'singly', label: t('morning.not-alike') }]
    : id === 'stiffness'
      ? [{ value: 'singly', label: t('morning.stiff-other') }]
      : [];

const QuestionOfAll = (props: AlikeProps) => {
  const { draft, question, send } = props;
  const { id, answer } = question;
  const joints = jointsAsked(draft, id);
  const choices = choicesOf(question);
  const isEach = areEachOnOnePage(draft, id);
  return (
    <AnswerPage<string>
      question={questionText[id]?.() ?? ''}
      hint={hintOf(id)}
      isInRows={isEach}
      answers={[
        ...choices.map(({ value, label }) => ({ value, label })),
        ...waysOfEach(props),
        { value: 'unknown', label: t('ask.unknown'), isApart: true },
      ]}
      after={isEach ? <EachJoint {...props} joints={joints} choices={choices} /> : null}
      given={givenOf(props, joints)}
      onAnswer={(value) => {
        const said = choices.find((one) => one.value === value)?.said ?? 'unknown';
        send({ type: 'alike', id, answer: value === 'singly' ? 'singly' : { [answer.name]: said } });
      }}
    >
      <ul className="statements">
        {joints.map((joint) => (
          <li key={joint}>{t('morning.the-joint', { joint })}</li>
        ))}
      </ul>
      {isEach ? <h2>{t('morning.alike')}</h2> : null}
    </AnswerPage>
  );
};

export const AlikePage = (props: AlikeProps) =>
  props.question.id === 'flare' && areEachOnOnePage(props.draft, 'flare') ? (
    <FlaringJointsPage draft={props.draft} send={props.send} />
  ) : (
    <QuestionOfAll {...props} />
  );
