'use client';
/** How long the joint was stiff: common lengths, or exact minutes. */
import { useState } from 'react';
import type { Joint } from '#core/exercises/joints.ts';
import { NumberField } from '#ui/design-system/number-field.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { readNumber } from '#ui/design-system/read-number.ts';
import { QuestionPage } from '../questions/question-page.tsx';
import type { Score } from '../session/draft.ts';
import { t } from '../words.ts';
import type { MorningEvent } from './morning.ts';
import { jointMorning, type MorningDraft } from './morning-draft.ts';

const lengths = ['0', '5', '10', '15', '30', '60'] as const;
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

/** What is chosen and typed on the page, kept apart from what has been taken as the answer. */
const useLength = (draft: MorningDraft, joint: Joint) => {
  const given = jointMorning(draft, joint).stiffnessMinutes;
  const text = given === null ? null : String(given);
  const isListed = text !== null && (lengths.some((length) => length === text) || text === 'unknown');
  const [chosen, setChosen] = useState<string | null>(text === null ? null : isListed ? text : 'other');
  const [typed, setTyped] = useState(isListed || text === null ? '' : text);
  const problem = chosen === 'other' ? problemWith(typed) : null;
  const minutes = Number(readNumber(chosen === 'other' ? typed : (chosen ?? '')));
  const answer: Score = chosen === 'unknown' ? chosen : minutes;
  return { chosen, setChosen, typed, setTyped, problem, answer };
};

export const StiffnessPage = ({ draft, joint, send }: StiffnessPageProps) => {
  const { chosen, setChosen, typed, setTyped, problem, answer } = useLength(draft, joint);
  const name = `stiffness-${joint}`;
  const goOn = () => {
    send({ type: 'answer', joint, answer: { stiffnessMinutes: answer } });
    send({ type: 'next' });
  };
  return (
    <QuestionPage
      field={chosen === 'other' ? `${name}-minutes` : name}
      isAnswered={chosen !== null && problem === null}
      whenEmpty={problem ?? t('ask.choose-one')}
      onContinue={goOn}
      onLeave={() => send({ type: 'next' })}
    >
      {(error) => (
        <>
          <RadioGroup<string>
            name={name}
            legend={t('morning.stiffness', { joint })}
            legendIsHeading
            hint={t('morning.stiffness-hint')}
            error={chosen === 'other' ? undefined : error}
            options={[
              ...lengths.map((value) => ({ value, label: t(`morning.stiff-${value}`) })),
              { value: 'other', label: t('morning.stiff-other') },
              { value: 'unknown', label: t('ask.unknown'), isApart: true },
            ]}
            chosen={chosen}
            onChoose={setChosen}
          />
          {chosen === 'other' ? (
            <NumberField
              name={`${name}-minutes`}
              label={t('morning.stiff-other-label')}
              isWhole
              error={error}
              value={typed}
              onChange={(event) => setTyped(event.target.value)}
            />
          ) : null}
        </>
      )}
    </QuestionPage>
  );
};
