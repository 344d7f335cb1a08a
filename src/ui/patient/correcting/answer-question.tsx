'use client';
/** One answer of a sent session, asked as it was asked. */
import type { SessionEntry } from '#core/record/entries.ts';
import { t } from '#ui/language/words.ts';
import { Question, WaysBack } from '../questions/answer-page.tsx';
import { ScoreQuestion } from '../questions/score-question.tsx';
import { YesNoQuestion } from '../questions/yes-no-question.tsx';
import { known } from '../session/entry.ts';
import { OtherCount } from '../session/other-count.tsx';
import { OtherWeight } from '../session/pages/other-weight.tsx';
import { heldIn, questionAt, type SentNames } from './answers-in-rows.ts';
import { type Answer, type AnswerPlace, answerAt } from './correction.ts';

export interface AnswerQuestionProps {
  readonly place: AnswerPlace;
  readonly entry: SessionEntry;
  /** As it was sent: a weight far over it is asked about once. */
  readonly sentAnswer: Answer;
  readonly names: SentNames;
  readonly onAnswer: (answer: Answer) => void;
}

/** Counts up to so many over what was sent stand as buttons. */
const shownOver = 4;

const scales = { during: 'pain', after: 'pain', burn: 'burn', cuff: 'cuff' } as const;

const Typed = ({ place, entry, sentAnswer, names, onAnswer }: AnswerQuestionProps) => {
  const given = answerAt(entry, place);
  const number = typeof given === 'number' ? given : null;
  return (
    <div className="stack ask">
      <Question>{questionAt(entry, place, names)}</Question>
      {place.what === 'set' ? (
        <OtherCount
          high={(number ?? 10) + shownOver}
          isHeld={heldIn(entry, place, names) !== null}
          onCount={(count) => onAnswer(count)}
          onLost={() => onAnswer(null)}
        />
      ) : (
        <OtherWeight
          plannedKg={typeof sentAnswer === 'number' ? sentAnswer : Number.POSITIVE_INFINITY}
          given={number}
          takeText={t('ask.continue')}
          onTake={onAnswer}
        />
      )}
      <WaysBack />
    </div>
  );
};

export const AnswerQuestion = (props: AnswerQuestionProps) => {
  const { place, entry, names, onAnswer } = props;
  const given = answerAt(entry, place);
  const question = questionAt(entry, place, names);
  if (place.what === 'set' || place.what === 'load') return <Typed {...props} />;
  if (place.what === 'gave-way' || place.what === 'extra')
    return (
      <YesNoQuestion
        question={question}
        given={typeof given === 'boolean' ? given : null}
        onAnswer={(answer) => onAnswer(known(answer))}
      />
    );
  const scale = scales[place.what];
  return (
    <ScoreQuestion
      question={question}
      low={t(`scale.${scale}-low`)}
      high={t(`scale.${scale}-high`)}
      given={typeof given === 'number' ? given : null}
      onAnswer={(answer) => onAnswer(known(answer))}
    />
  );
};
