/**
 * 0 to 10 as eleven buttons: the ends carry words. Nothing is preselected; a high number is an answer like any
 * other. A file of its own, since today's page needs the numbers and nothing else of a question.
 */
import { t } from '#ui/language/words.ts';
import type { Score } from '../session/draft.ts';

export interface ScoresProps {
  readonly low: string;
  readonly high: string;
  readonly given?: Score | null;
  readonly isDisabled?: boolean;
  readonly onAnswer: (score: Score) => void;
}

const scores: readonly Score[] = [...Array.from({ length: 11 }, (_, score) => score), 'unknown'];

const classOf = (score: Score, isGiven: boolean) =>
  ['score', `score-${score}`, score === 'unknown' ? 'answer-apart' : '', isGiven ? 'answer-given' : '']
    .filter(Boolean)
    .join(' ');

/** The numbers of the question whose heading has the id "question". */
export const Scores = ({ low, high, given, isDisabled, onAnswer }: ScoresProps) => (
  // biome-ignore lint/a11y/useSemanticElements: a fieldset holds fields; these are buttons.
  <div role="group" aria-labelledby="question" className="scores">
    {scores.map((score) => {
      const text = score === 'unknown' ? t('ask.unknown') : score === 0 ? low : score === 10 ? high : null;
      return (
        <button
          key={score}
          type="button"
          value={score}
          disabled={isDisabled}
          className={classOf(score, given === score)}
          onClick={() => onAnswer(score)}
        >
          {score === 'unknown' ? null : <span className="score-figure figure">{score}</span>}
          {text ? <span className="score-word">{text}</span> : null}
          {given === score ? <span className="answer-before">{t('ask.given')}</span> : null}
        </button>
      );
    })}
  </div>
);
