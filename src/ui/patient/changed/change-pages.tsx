'use client';
/** Where it is, since when, and in the patient's own words; then that it is kept. */
import { useState } from 'react';
import { Button } from '#ui/design-system/button.tsx';
import { MonitoringHours } from '#ui/design-system/monitoring-hours.tsx';
import { PageHeading } from '#ui/design-system/page-heading.tsx';
import { LongTextField } from '#ui/design-system/text-field.tsx';
import { RingText } from '#ui/language/ring-text.tsx';
import { t } from '#ui/language/words.ts';
import { AnswerPage, Question, WaysBack } from '../questions/answer-page.tsx';
import {
  type Beginning,
  beganText,
  beginnings,
  bodyAreas,
  type ChangePlace,
  isEmptyNote,
  mostLetters,
  placeText,
} from './change-draft.ts';
import type { ChangePage } from './use-change.ts';

export const PlacePage = ({ change: { draft, say }, followedJoints, onStep }: ChangePage) => (
  <AnswerPage<ChangePlace>
    question={t('changed.place')}
    answers={[
      ...[...followedJoints, ...bodyAreas, 'nowhere' as const].map((value) => ({
        value,
        label: placeText(value),
      })),
      { value: 'unknown', label: t('ask.unknown'), isApart: true },
    ]}
    given={draft.place}
    onAnswer={(place) => {
      say({ place });
      onStep('began');
    }}
  />
);

export const BeganPage = ({ change: { draft, say }, onStep }: ChangePage) => (
  <AnswerPage<Beginning>
    question={t('changed.began')}
    answers={[
      ...beginnings.map((value) => ({ value, label: beganText(value) })),
      { value: 'unknown', label: t('ask.unknown'), isApart: true },
    ]}
    given={draft.began}
    onAnswer={(began) => {
      say({ began });
      onStep('words');
    }}
  />
);

export const WordsPage = ({ change: { draft, isReady, say, send } }: ChangePage) => {
  const [isAsked, setAsked] = useState(false);
  const isEmpty = isEmptyNote(draft);
  return (
    <div className="stack ask">
      <Question>{t('changed.words')}</Question>
      <LongTextField
        name="text"
        label={t(isEmptyNote({ ...draft, text: '' }) ? 'home-questions.own-words' : 'changed.own-words')}
        hint={t('changed.kept')}
        maxLength={mostLetters}
        value={draft.text}
        disabled={!isReady}
        error={isAsked && isEmpty ? t('changed.empty') : undefined}
        onChange={(event) => say({ text: event.target.value })}
      />
      <Button isLarge isWide onClick={() => (isEmpty ? setAsked(true) : void send())}>
        {t('check.send')}
      </Button>
      <WaysBack />
    </div>
  );
};

export const SentPage = ({ change: { told }, clinic, arrivalOf, onHome }: ChangePage) => (
  <div className="stack">
    <PageHeading>{t('changed.sent')}</PageHeading>
    <p aria-live="polite">{t(`done.${arrivalOf(told.noteId ?? '')}`)}</p>
    <p>
      <RingText text={t('changed.worse', { clinic: clinic.name, phone: clinic.phone })} clinic={clinic} />
    </p>
    <Button isLarge isWide onClick={onHome}>
      {t('frame.home')}
    </Button>
    <MonitoringHours clinic={clinic} isFolded />
  </div>
);
