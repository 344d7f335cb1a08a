'use client';
/** Yes, no, and where it is true "I don't know", on a page of its own. */
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { t } from '#ui/language/words.ts';
import type { YesNo } from '../session/draft.ts';
import { QuestionPage } from './question-page.tsx';

export interface YesNoQuestionProps {
  readonly name: string;
  readonly question: string;
  readonly hint?: string;
  readonly chosen: YesNo | null;
  readonly onChoose: (answer: YesNo) => void;
  readonly onContinue: () => void;
  /** The answer is needed: no "I don't know", no leaving it. */
  readonly isNeeded?: boolean;
}

const textOf = (answer: YesNo | null): 'yes' | 'no' | 'unknown' | null =>
  answer === null ? null : answer === 'unknown' ? answer : answer ? 'yes' : 'no';

export const YesNoQuestion = (props: YesNoQuestionProps) => (
  <QuestionPage
    field={props.name}
    isAnswered={props.chosen !== null}
    whenEmpty={t(props.isNeeded ? 'ask.choose-must' : 'ask.choose-one')}
    onContinue={props.onContinue}
    onLeave={props.isNeeded ? undefined : props.onContinue}
  >
    {(error) => (
      <RadioGroup
        name={props.name}
        legend={props.question}
        legendIsHeading
        hint={props.hint}
        error={error}
        options={[
          { value: 'yes', label: t('ask.yes') },
          { value: 'no', label: t('ask.no') },
          ...(props.isNeeded ? [] : [{ value: 'unknown' as const, label: t('ask.unknown'), isApart: true }]),
        ]}
        chosen={textOf(props.chosen)}
        onChoose={(value) => props.onChoose(value === 'unknown' ? value : value === 'yes')}
      />
    )}
  </QuestionPage>
);
