'use client';
/** The short way: what was said yesterday, as statements to be agreed with as a whole or asked one by one. */
import { AnswerPage } from '../questions/answer-page.tsx';
import { t } from '../words.ts';
import { usualStatements } from './joint-questions.ts';
import type { MorningEvent } from './morning.ts';
import type { MorningDraft } from './morning-draft.ts';
import { offered } from './morning-steps.ts';

export interface UsualPageProps {
  readonly draft: MorningDraft;
  readonly send: (event: MorningEvent) => void;
}

export const UsualPage = ({ draft, send }: UsualPageProps) => (
  <AnswerPage<boolean>
    question={t('morning.usual-title')}
    answers={[
      { value: true, label: t('morning.usual-yes') },
      { value: false, label: t('morning.usual-no') },
    ]}
    given={draft.isUsual}
    onAnswer={(isUsual) => send({ type: isUsual ? 'usual' : 'not-usual' })}
  >
    <ul className="statements">
      {usualStatements(draft, offered(draft) ?? []).map((text) => (
        <li key={text}>{text}</li>
      ))}
    </ul>
  </AnswerPage>
);
