'use client';
/**
 * One question whose answers are buttons: pressing one answers and goes on. Nothing is preselected; what was
 * answered before is outlined and named when the page is come back to.
 */
import type { ReactNode } from 'react';
import { Button } from '#ui/design-system/button.tsx';
import { t } from '#ui/language/words.ts';

interface Answer<V> {
  readonly value: V;
  readonly label: string;
  /** Shown large in place of the label, which stays its name. */
  readonly figure?: number | undefined;
  /** Stands small under the figure. */
  readonly under?: string | undefined;
  /** "I don't know" and the like: dashed, apart from the others. */
  readonly isApart?: boolean;
}

interface AnswersProps<V> {
  readonly answers: readonly Answer<V>[];
  readonly given?: V | null;
  readonly onAnswer: (value: V) => void;
  /** Short answers, three to a row. */
  readonly isInRows?: boolean;
}

const classOf = (isApart = false, isGiven = false) =>
  ['button', 'button-plain', 'answer', isApart ? 'answer-apart' : '', isGiven ? 'answer-given' : '']
    .filter(Boolean)
    .join(' ');

/** The answers of the question whose heading has the id "question". */
const Answers = <V extends string | number | boolean>({
  answers,
  given,
  onAnswer,
  isInRows,
}: AnswersProps<V>) => (
  // biome-ignore lint/a11y/useSemanticElements: a fieldset holds fields; these are buttons.
  <div role="group" aria-labelledby="question" className={isInRows ? 'answers answers-rows' : 'answers'}>
    {answers.map(({ value, label, figure, under, isApart }) => (
      <button
        key={String(value)}
        type="button"
        value={String(value)}
        className={classOf(isApart, given === value)}
        onClick={() => onAnswer(value)}
        {...(figure === undefined
          ? {}
          : { 'aria-label': given === value ? `${label}, ${t('ask.given')}` : label })}
      >
        {figure === undefined ? label : <span className="score-figure figure">{figure}</span>}
        {under ? <span className="score-word">{under}</span> : null}
        {given === value ? <span className="answer-before">{t('ask.given')}</span> : null}
      </button>
    ))}
  </div>
);

/** The heading of a question: it takes the focus when the page is new, and names its answers. */
export const Question = ({ caption, children }: { caption?: ReactNode; children: ReactNode }) => (
  <h1 className="page-heading" id="question" tabIndex={-1}>
    {caption ? <span className="page-caption">{caption}</span> : null}
    {children}
  </h1>
);

/** Quiet ways left, at the foot of every question. */
export const WaysBack = ({ children }: { readonly children?: ReactNode }) => (
  <div className="actions-quiet">
    <Button tone="quiet" onClick={() => window.history.back()}>
      {t('ask.back')}
    </Button>
    {children}
  </div>
);

export interface AnswerPageProps<V> extends AnswersProps<V> {
  readonly question: string;
  readonly caption?: ReactNode;
  readonly hint?: string;
  /** Between question and answers. */
  readonly children?: ReactNode;
  /** Behind the answers. */
  readonly after?: ReactNode;
}

export const AnswerPage = <V extends string | number | boolean>(props: AnswerPageProps<V>) => (
  <div className="stack ask">
    <Question caption={props.caption}>{props.question}</Question>
    {props.hint ? <p className="field-hint">{props.hint}</p> : null}
    {props.children}
    <Answers
      answers={props.answers}
      given={props.given}
      onAnswer={props.onAnswer}
      isInRows={props.isInRows}
    />
    {props.after}
    <WaysBack />
  </div>
);
