'use client';
/** What the clinic asks now and then: one question a page, a check, and where a warning sign is told. */
import '../asked-words.ts';
import '../today/seldom-words.ts';
import { useState } from 'react';
import { mostLetters, type OwnAnswer } from '#core/assessment/questionnaires/questionnaire.ts';
import { Button } from '#ui/design-system/button.tsx';
import { MonitoringHours } from '#ui/design-system/monitoring-hours.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { LongTextField } from '#ui/design-system/text-field.tsx';
import { RingText } from '#ui/language/ring-text.tsx';
import { t } from '#ui/language/words.ts';
import { Question, WaysBack } from '../questions/answer-page.tsx';
import { CheckList } from '../questions/check-list.tsx';
import { ScoreQuestion } from '../questions/score-question.tsx';
import { YesNoQuestion } from '../questions/yes-no-question.tsx';
import { answerText, placeAt, questionText } from './home-draft.ts';
import { type HomeAnswersHandle, type HomeQuestionsProps, useHomeAnswers } from './use-home-answers.ts';

type Asked = HomeQuestionsProps & { readonly own: HomeAnswersHandle };

/** Nobody looks at these answers at once: a warning sign is told elsewhere. */
const WhereSigns = ({ clinic }: Pick<Asked, 'clinic'>) => (
  <p className="soft">
    <RingText
      text={t('home-questions.signs', { clinic: clinic.name, phone: clinic.phone })}
      clinic={clinic}
    />
  </p>
);

interface OnPage {
  readonly question: string;
  readonly hint: string;
  /** undefined = not answered yet. */
  readonly given: OwnAnswer | undefined;
  readonly onAnswer: (answer: OwnAnswer) => void;
}

const known = (answer: number | boolean | 'unknown'): OwnAnswer => (answer === 'unknown' ? null : answer);

const ScorePage = ({
  page,
  low,
  high,
}: {
  readonly page: OnPage;
  readonly low: string;
  readonly high: string;
}) => (
  <ScoreQuestion
    question={page.question}
    hint={page.hint}
    low={low}
    high={high}
    given={typeof page.given === 'number' ? page.given : page.given === null ? 'unknown' : null}
    onAnswer={(score) => page.onAnswer(known(score))}
  />
);

const YesNoPage = ({ page }: { readonly page: OnPage }) => (
  <YesNoQuestion
    question={page.question}
    hint={page.hint}
    given={typeof page.given === 'boolean' ? page.given : page.given === null ? 'unknown' : null}
    onAnswer={(answer) => page.onAnswer(known(answer))}
  />
);

interface WordsPageProps {
  readonly page: OnPage;
  readonly isReady: boolean;
  readonly onType: (text: string) => void;
}

const WordsPage = ({ page, isReady, onType }: WordsPageProps) => {
  const [isAsked, setAsked] = useState(false);
  const typed = typeof page.given === 'string' ? page.given : '';
  const isEmpty = typed.trim() === '';
  return (
    <div className="stack ask">
      <Question>{page.question}</Question>
      <p className="field-hint">{page.hint}</p>
      <LongTextField
        name="text"
        label={t('home-questions.own-words')}
        maxLength={mostLetters}
        value={typed}
        disabled={!isReady}
        error={isAsked && isEmpty ? t('home-questions.empty') : undefined}
        onChange={(event) => onType(event.target.value)}
      />
      <Button isLarge isWide onClick={() => (isEmpty ? setAsked(true) : page.onAnswer(typed))}>
        {t('ask.continue')}
      </Button>
      <Button tone="plain" isLarge isWide onClick={() => page.onAnswer(null)}>
        {t('ask.unknown')}
      </Button>
      <WaysBack />
    </div>
  );
};

const QuestionPage = ({ own, due, place }: Asked & { readonly place: number }) => {
  const question = due.questions[place]!;
  const page: OnPage = {
    question: questionText(question),
    hint: t('home-questions.place', {
      title: due.title ?? t('home-questions.activities'),
      place: place + 1,
      count: due.questions.length,
    }),
    given: own.draft.slots[place]?.answer,
    onAnswer: (answer) => own.answer(place, answer),
  };
  switch (question.kind) {
    case 'activity':
      return (
        <ScorePage
          page={page}
          low={t('home-questions.activity-low')}
          high={t('home-questions.activity-high')}
        />
      );
    case 'score':
      return <ScorePage page={page} low={question.low ?? ''} high={question.high ?? ''} />;
    case 'yes-no':
      return <YesNoPage page={page} />;
    case 'words':
      return <WordsPage page={page} isReady={own.isReady} onType={(text) => own.type(place, text)} />;
  }
};

const CheckPage = ({ own, due, onStep }: Asked) => (
  <CheckList
    rows={due.questions.map((question, place) => ({
      step: String(place),
      name: questionText(question),
      value: answerText(question, own.draft.slots[place]),
    }))}
    onChange={onStep}
    onSend={() => void own.send()}
  />
);

const SentPage = ({ clinic, arrivalOf, sentId, onHome }: Asked & { readonly sentId: string }) => (
  <div className="stack">
    <PageHeading>{t('home-questions.sent')}</PageHeading>
    <p aria-live="polite">{t(`done.${arrivalOf(sentId)}`)}</p>
    <WhereSigns clinic={clinic} />
    <Button isLarge isWide onClick={onHome}>
      {t('frame.home')}
    </Button>
    <MonitoringHours clinic={clinic} isFolded />
  </div>
);

export const HomeQuestionsScreen = (props: HomeQuestionsProps) => {
  const own = useHomeAnswers(props);
  const asked = { ...props, own };
  if (own.sentId !== null) return <SentPage {...asked} sentId={own.sentId} />;
  const place = placeAt(own.draft, props.step);
  return (
    <div className="stack-wide">
      {place === null ? <CheckPage {...asked} /> : <QuestionPage key={place} {...asked} place={place} />}
      <WhereSigns clinic={props.clinic} />
    </div>
  );
};
