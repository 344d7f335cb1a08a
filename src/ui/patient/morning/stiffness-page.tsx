'use client';
/** How long the joint was stiff: common lengths, or exact minutes. */
import { useState } from 'react';
import type { Joint } from '#core/exercises/joints.ts';
import { Button } from '#ui/design-system/button.tsx';
import { NumberField } from '#ui/design-system/number-field.tsx';
import { readNumber } from '#ui/design-system/read-number.ts';
import { AnswerPage, Question, WaysBack } from '../questions/answer-page.tsx';
import type { Score } from '../session/draft.ts';
import { t } from '../words.ts';
import type { MorningEvent } from './morning.ts';
import { jointMorning, type MorningDraft } from './morning-draft.ts';

/** The common lengths, in minutes. */
export const lengths = ['0', '5', '10', '15', '30', '45', '60'] as const;
type Length = (typeof lengths)[number];
/** A day has no more minutes. */
const mostMinutes = 1440;

export interface StiffnessPageProps {
  readonly draft: MorningDraft;
  readonly joint: Joint;
  readonly send: (event: MorningEvent) => void;
}

const problemWith = (typed: string): string | null => {
  const minutes = readNumber(typed);
  if (minutes === null) return t('morning.stiff-missing');
  return Number.isInteger(minutes) && minutes >= 0 && minutes <= mostMinutes
    ? null
    : t('morning.stiff-number');
};

interface TypedProps {
  readonly joint: Joint;
  readonly before: string;
  readonly onTake: (minutes: number) => void;
}

const TypedMinutes = ({ joint, before, onTake }: TypedProps) => {
  const [typed, setTyped] = useState(before);
  const [isAsked, setAsked] = useState(false);
  const problem = problemWith(typed);
  return (
    <div className="stack ask">
      <Question>{t('morning.stiffness', { joint })}</Question>
      <NumberField
        name={`stiffness-${joint}-minutes`}
        label={t('morning.stiff-other-label')}
        isWhole
        error={isAsked && problem !== null ? problem : undefined}
        value={typed}
        onChange={(event) => setTyped(event.target.value)}
      />
      <Button
        isLarge
        isWide
        onClick={() => (problem === null ? onTake(Number(readNumber(typed))) : setAsked(true))}
      >
        {t('ask.continue')}
      </Button>
      <WaysBack />
    </div>
  );
};

export const StiffnessPage = ({ draft, joint, send }: StiffnessPageProps) => {
  const [isTyped, setTyped] = useState(false);
  const given = jointMorning(draft, joint).stiffnessMinutes;
  const text = given === null ? null : String(given);
  const isListed = text === null || text === 'unknown' || lengths.some((length) => length === text);
  const take = (stiffnessMinutes: Score) => {
    send({ type: 'answer', joint, answer: { stiffnessMinutes } });
    send({ type: 'next' });
  };
  if (isTyped) return <TypedMinutes joint={joint} before={isListed ? '' : (text ?? '')} onTake={take} />;
  return (
    <div className="answers-pairs">
      <AnswerPage<Length | 'other' | 'unknown'>
        question={t('morning.stiffness', { joint })}
        hint={t('morning.stiffness-hint')}
        answers={[
          ...lengths.map((value) => ({ value, label: t(`morning.stiff-${value}`) })),
          { value: 'other', label: t('morning.stiff-other') },
          { value: 'unknown', label: t('ask.unknown'), isApart: true },
        ]}
        given={isListed ? (text as Length | 'unknown' | null) : 'other'}
        onAnswer={(value) => {
          if (value === 'other') setTyped(true);
          else take(value === 'unknown' ? value : Number(value));
        }}
      />
    </div>
  );
};
