'use client';
/** Questions before a visit: a first page, one question a page, then check and send. */
import { useEffect, useState } from 'react';
import { Button, LinkButton } from '#ui/design-system/button.tsx';
import { DefinitionList } from '#ui/design-system/definition-list.tsx';
import { Notice } from '#ui/design-system/notice.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import './words.ts';
import { t, translate } from '#ui/language/words.ts';
import { callPatient } from '../call.ts';
import type { QuestionsAnswer } from './answers.ts';
import { useSavedAnswers } from './use-saved-answers.ts';
import {
  answersToSend,
  type Given,
  type GivenById,
  isUnsaid,
  notGiven,
  type Question,
} from './visit-answers.ts';
import { VisitQuestion } from './visit-question.tsx';

const Start = ({ answer, onBegin }: { readonly answer: QuestionsAnswer; readonly onBegin: () => void }) => (
  <div className="stack">
    <PageHeading>{t('visit.title')}</PageHeading>
    <p>{t('visit.lead')}</p>
    <p>{t('visit.note')}</p>
    {answer.sentAt === null ? null : (
      <Notice title={t(answer.isConfirmed ? 'visit.confirmed' : 'visit.sent-before')} />
    )}
    <Button isLarge isWide onClick={onBegin}>
      {t('visit.begin')}
    </Button>
    <p className="seldom">
      <a href="/pre-visit/consents">{t('consent.title')}</a>
    </p>
  </div>
);

const wordOf = {
  yes: 'ask.yes',
  no: 'ask.no',
  'not-known': 'ask.unknown',
  'not-applicable': 'visit.does-not-apply',
} as const;

/** "Yes. You have not said which …", with what was added. */
const givenInWords = (question: Question, one: Given): string => {
  if (one.answer === null) return t('ask.not-answered');
  const unsaid = isUnsaid(question, one) ? `. ${t('visit.not-said')}` : '';
  const note = one.note.trim() === '' ? '' : ` – ${one.note.trim()}`;
  return `${t(wordOf[one.answer])}${unsaid}${note}`;
};

interface CheckProps {
  readonly questions: readonly Question[];
  readonly given: GivenById;
  readonly onChange: (place: number) => void;
  readonly onSend: () => Promise<boolean>;
}

const Check = ({ questions, given, onChange, onSend }: CheckProps) => {
  const [state, setState] = useState<'open' | 'sending' | 'failed'>('open');
  const rows = questions.map((question, place) => ({ question, place, one: given[question.id] ?? notGiven }));
  const answered = rows.filter(({ one }) => one.answer !== null).length;
  const told = rows.filter(({ one }) => one.answer !== 'no' || one.note.trim() !== '');
  return (
    <div className="stack">
      <PageHeading>{t('visit.check')}</PageHeading>
      <p>{t('visit.check-note', { answered, all: questions.length })}</p>
      <DefinitionList
        rows={told.map(({ question, place, one }) => ({
          key: question.id,
          name: translate(question.question),
          value: givenInWords(question, one),
          action: (
            <Button tone="quiet" onClick={() => onChange(place)}>
              {t('ask.change')}
              <span className="visually-hidden">: {translate(question.question)}</span>
            </Button>
          ),
        }))}
      />
      {told.length < rows.length ? <p className="soft">{t('visit.all-no')}</p> : null}
      {state === 'failed' ? <Notice tone="care" isAnnounced title={t('visit.not-sent')} /> : null}
      <Button
        isLarge
        isWide
        aria-disabled={state === 'sending' || answered === 0 || undefined}
        onClick={() => {
          if (state === 'sending' || answered === 0) return;
          setState('sending');
          void onSend().then((taken) => setState(taken ? 'open' : 'failed'));
        }}
      >
        {t(state === 'sending' ? 'visit.sending' : 'visit.send')}
      </Button>
    </div>
  );
};

const Sent = () => (
  <div className="stack" role="status">
    <PageHeading>{t('visit.sent')}</PageHeading>
    <p>{t('visit.note')}</p>
    <LinkButton href="/today" isLarge isWide>
      {t('frame.home')}
    </LinkButton>
  </div>
);

export const VisitApp = ({
  answer,
  ownerId,
}: {
  readonly answer: QuestionsAnswer;
  readonly ownerId: string;
}) => {
  const { questions } = answer;
  const { state, change, drop } = useSavedAnswers(ownerId);
  const [isSent, setSent] = useState(false);
  const { place, given } = state;
  const go = (to: number) => change({ place: to, given });
  // biome-ignore lint/correctness/useExhaustiveDependencies: focus follows the page that is shown.
  useEffect(() => {
    if (place >= 0) document.querySelector<HTMLElement>('h1')?.focus();
  }, [place, isSent]);
  if (isSent) return <Sent />;
  if (place < 0) return <Start answer={answer} onBegin={() => go(0)} />;
  const question = questions[place];
  if (!question) {
    return (
      <Check
        questions={questions}
        given={given}
        onChange={go}
        onSend={async () => {
          const taken = await callPatient('preVisit.send', { answers: answersToSend(questions, given) });
          if (taken) drop();
          setSent(taken);
          return taken;
        }}
      />
    );
  }
  return (
    <VisitQuestion
      key={question.id}
      question={question}
      given={given[question.id] ?? notGiven}
      clinic={answer.clinic}
      limbs={answer.limbs}
      number={place + 1}
      all={questions.length}
      onGive={(one) => change({ place, given: { ...given, [question.id]: one } })}
      onNext={() => go(place + 1)}
      onBack={() => go(place - 1)}
    />
  );
};
