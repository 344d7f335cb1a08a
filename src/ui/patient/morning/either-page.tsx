'use client';
/**
 * Another joint and extra pain relief on one page: every pair of answers is one press, and whoever is not sure of
 * one of them is asked each by itself.
 */
import { AnswerPage } from '../questions/answer-page.tsx';
import { t } from '../words.ts';
import type { MorningEvent } from './morning.ts';
import type { Either, MorningDraft } from './morning-draft.ts';

interface EitherProps {
  readonly draft: MorningDraft;
  readonly send: (event: MorningEvent) => void;
}

/** What was said before, where it was said by one press. */
const givenOf = ({ either, otherJointWorse, relief }: MorningDraft): Either | null => {
  if (either !== 'together') return either ?? null;
  if (otherJointWorse === true) return relief === true ? 'both' : 'other-joint';
  return relief === true ? 'relief' : 'neither';
};

export const EitherPage = ({ draft, send }: EitherProps) => (
  <AnswerPage<Either>
    question={t('morning.either')}
    answers={[
      { value: 'neither', label: t('morning.either-none') },
      { value: 'other-joint', label: t('morning.echo-other-joint') },
      { value: 'relief', label: t('morning.echo-relief') },
      { value: 'both', label: t('morning.either-both') },
      { value: 'singly', label: t('morning.either-singly'), isApart: true },
    ]}
    given={givenOf(draft)}
    onAnswer={(answer) => send({ type: 'either', answer })}
  >
    <ul className="statements">
      <li>
        {t('before.other-joint')} {t('before.other-joint-hint')}
      </li>
      <li>
        {t('morning.relief')} {t('before.relief-hint')}
      </li>
    </ul>
  </AnswerPage>
);
