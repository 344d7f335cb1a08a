/**
 * 0 to 10 as eleven native radios: the ends carry words and a whole line, one to nine stand in rows
 * of three under the thumb. Nothing is preselected; a high number is an answer like any other.
 */

import { ErrorMessage } from '#ui/design-system/error-message.tsx';
import { t } from '#ui/language/words.ts';
import type { Score } from '../session/draft.ts';

export interface ScoreQuestionProps {
  readonly name: string;
  readonly question: string;
  readonly hint?: string;
  readonly low: string;
  readonly high: string;
  readonly chosen: Score | null;
  readonly error?: string;
  readonly onChoose: (score: Score) => void;
}

const scores = Array.from({ length: 11 }, (_, score) => score);

export const ScoreQuestion = (props: ScoreQuestionProps) => {
  const { name, chosen, error } = props;
  const hintId = props.hint ? `${name}-hint` : '';
  const errorId = error ? `${name}-error` : '';
  const option = (value: Score, index: number, text: string | null) => (
    <label key={value} className={`score score-${value}`}>
      <input
        type="radio"
        id={index === 0 ? name : `${name}-${value}`}
        name={name}
        value={value}
        checked={chosen === value}
        onChange={() => props.onChoose(value)}
      />
      {value === 'unknown' ? null : <span className="score-figure figure">{value}</span>}
      {text ? <span className="score-word">{text}</span> : null}
    </label>
  );
  return (
    <fieldset
      className={error ? 'field field-wrong' : 'field'}
      aria-describedby={`${hintId} ${errorId}`.trim() || undefined}
    >
      <legend className="field-legend field-legend-heading">
        <h1 className="page-heading" tabIndex={-1}>
          {props.question}
        </h1>
      </legend>
      {props.hint ? (
        <p className="field-hint" id={hintId}>
          {props.hint}
        </p>
      ) : null}
      {error ? <ErrorMessage id={errorId}>{error}</ErrorMessage> : null}
      <div className="scores">
        {scores.map((score) =>
          option(score, score, score === 0 ? props.low : score === 10 ? props.high : null),
        )}
        {option('unknown', 11, t('ask.unknown'))}
      </div>
    </fieldset>
  );
};
