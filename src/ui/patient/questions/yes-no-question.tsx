'use client';
/** Yes, no, and "I don't know", on a page of its own. */
import { t } from '#ui/language/words.ts';
import type { YesNo } from '../session/draft.ts';
import { AnswerPage } from './answer-page.tsx';

export interface YesNoQuestionProps {
  readonly question: string;
  readonly hint?: string;
  readonly given?: YesNo | null;
  readonly onAnswer: (answer: YesNo) => void;
}

export const YesNoQuestion = ({ question, hint, given, onAnswer }: YesNoQuestionProps) => (
  <AnswerPage<YesNo>
    question={question}
    hint={hint}
    answers={[
      { value: true, label: t('ask.yes') },
      { value: false, label: t('ask.no') },
      { value: 'unknown', label: t('ask.unknown'), isApart: true },
    ]}
    given={given}
    onAnswer={onAnswer}
  />
);
