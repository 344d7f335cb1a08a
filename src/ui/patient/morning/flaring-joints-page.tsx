'use client';
/** Which of up to three joints flare: every answer is one press, and whoever is not sure is asked one by one. */
import type { Joint } from '#core/exercises/joints.ts';
import { AnswerPage } from '../questions/answer-page.tsx';
import { t } from '../words.ts';
import { hintOf } from './joint-questions.ts';
import type { MorningEvent } from './morning.ts';
import { jointMorning, type MorningDraft } from './morning-draft.ts';
import { jointsAsked } from './morning-steps.ts';

interface FlaringProps {
  readonly draft: MorningDraft;
  readonly send: (event: MorningEvent) => void;
}

const inWords = ([first, ...others]: readonly Joint[]): string =>
  others.reduce(
    (text, joint) => t('morning.and-joint', { text, joint }),
    first ? t('morning.the-joint', { joint: first }) : '',
  );

/** One of them, or two of three; all and none have words of their own. */
const someOf = (joints: readonly Joint[]): readonly (readonly Joint[])[] => [
  ...joints.map((joint) => [joint]),
  ...(joints.length > 2 ? joints.map((left) => joints.filter((joint) => joint !== left)).toReversed() : []),
];

const keyOf = (joints: readonly Joint[]): string => joints.join(' ');

/** What was said before, where it was said of all. */
const givenOf = (draft: MorningDraft, joints: readonly Joint[]): string | null => {
  if (draft.alike?.flare === false) return 'singly';
  const said = joints.map((joint) => jointMorning(draft, joint).flare);
  return said.every((one) => typeof one === 'boolean')
    ? keyOf(joints.filter((_, place) => said[place]))
    : null;
};

export const FlaringJointsPage = ({ draft, send }: FlaringProps) => {
  const joints = jointsAsked(draft, 'flare');
  const some = someOf(joints);
  return (
    <AnswerPage<string>
      question={t('morning.flares')}
      hint={hintOf('flare')}
      answers={[
        { value: keyOf(joints), label: t('morning.all-of-these') },
        ...some.map((named) => ({ value: keyOf(named), label: inWords(named) })),
        { value: '', label: t('morning.none-of-these') },
        { value: 'singly', label: t('morning.either-singly'), isApart: true },
      ]}
      given={givenOf(draft, joints)}
      onAnswer={(value) =>
        value === 'singly'
          ? send({ type: 'alike', id: 'flare', answer: 'singly' })
          : send({ type: 'flares', joints: [joints, ...some].find((named) => keyOf(named) === value) ?? [] })
      }
    >
      <ul className="statements">
        {joints.map((joint) => (
          <li key={joint}>{t('morning.the-joint', { joint })}</li>
        ))}
      </ul>
    </AnswerPage>
  );
};
