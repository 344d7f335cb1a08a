'use client';
/** The short way: what was said yesterday, as statements to be agreed with as a whole or asked one by one. */
import { AnswerPage } from '../questions/answer-page.tsx';
import { t } from '../words.ts';
import { usualStatements } from './joint-questions.ts';
import type { MorningEvent } from './morning.ts';
import type { MorningDraft } from './morning-draft.ts';
import { isOnceOffered, offered } from './morning-steps.ts';

export interface UsualPageProps {
  readonly draft: MorningDraft;
  readonly send: (event: MorningEvent) => void;
}

/** What was said before. */
const givenOf = (draft: MorningDraft): 'usual' | 'usual-joints' | 'not-usual' | null => {
  if (draft.isUsual === null) return null;
  if (!draft.isUsual) return 'not-usual';
  return isOnceOffered(draft) && !draft.isOnceUsual ? 'usual-joints' : 'usual';
};

export const UsualPage = ({ draft, send }: UsualPageProps) => (
  <AnswerPage<Extract<MorningEvent['type'], 'usual' | 'usual-joints' | 'not-usual'>>
    question={t('morning.usual-title')}
    answers={[
      { value: 'usual', label: t('morning.usual-yes') },
      ...(isOnceOffered(draft) ? [{ value: 'usual-joints' as const, label: t('morning.usual-joints') }] : []),
      { value: 'not-usual', label: t('morning.usual-no') },
    ]}
    given={givenOf(draft)}
    onAnswer={(type) => send({ type })}
  >
    <ul className="statements">
      {usualStatements(draft, offered(draft) ?? [], isOnceOffered(draft)).map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  </AnswerPage>
);
