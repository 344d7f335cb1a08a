'use client';
/** One question, one Continue. An empty answer is asked for once more, and can be left where that is true. */
import { type ReactNode, useState } from 'react';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { t } from '#ui/language/words.ts';

export interface QuestionPageProps {
  /** id of the first control. */
  readonly field: string;
  readonly isAnswered: boolean;
  /** Said when Continue is pressed on an empty answer. */
  readonly whenEmpty: string;
  readonly onContinue: () => void;
  /** Left out where the answer is needed. */
  readonly onLeave?: () => void;
  readonly continueText?: string;
  readonly children: (error: string | undefined) => ReactNode;
}

export const QuestionPage = (props: QuestionPageProps) => {
  const [isAsked, setAsked] = useState(false);
  const error = isAsked && !props.isAnswered ? props.whenEmpty : undefined;
  return (
    <form
      method="post"
      className="stack"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (props.isAnswered) props.onContinue();
        else setAsked(true);
      }}
    >
      <ErrorSummary problems={error ? [{ field: props.field, text: error }] : []} />
      {props.children(error)}
      <div className="actions">
        <Button type="submit" isLarge isWide>
          {props.continueText ?? t('ask.continue')}
        </Button>
        <div className="actions-quiet">
          <Button tone="quiet" onClick={() => window.history.back()}>
            {t('ask.back')}
          </Button>
          {props.onLeave ? (
            <Button tone="quiet" onClick={props.onLeave}>
              {t('ask.skip')}
            </Button>
          ) : null}
        </div>
      </div>
    </form>
  );
};
