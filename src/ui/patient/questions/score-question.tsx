/** A question answered by a number from 0 to 10, on a page of its own. */
import { Question, WaysBack } from './answer-page.tsx';
import { Scores, type ScoresProps } from './scores.tsx';

export interface ScoreQuestionProps extends ScoresProps {
  readonly question: string;
  readonly hint?: string;
}

export const ScoreQuestion = ({ question, hint, ...scale }: ScoreQuestionProps) => (
  <div className="stack ask">
    <Question>{question}</Question>
    {hint ? <p className="field-hint">{hint}</p> : null}
    <Scores {...scale} />
    <WaysBack />
  </div>
);
