/** What was measured, first and last with its verdict, and the goals as they stand. */
import { outcomeLines } from '#core/assessment/course/lines.ts';
import { personMeasured } from '#core/assessment/course/measured.ts';
import { goalStateWords } from '#core/episode/goals.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/record/summary.ts';
import { withDistance } from '../measurements/distance-words.ts';
import { dayAt } from '../when.ts';
import type { SummaryProps } from './summary-props.ts';

type Line = ReturnType<typeof outcomeLines>[number];

const verdictInWords = ({ readings, change }: Line, day: SummaryProps['day']): string =>
  readings.length === 1
    ? say('verdict.once', { date: dayInWords(readings[0]!.day, day) })
    : say(`verdict.${change.verdict}`);

const OutcomeLine = ({ line, day }: { readonly line: Line; readonly day: SummaryProps['day'] }) => {
  const [first, newest] = [line.readings[0]!, line.readings.at(-1)!];
  return (
    <li className="outcome-line keep-together">
      <span>{line.title}</span>
      <strong>{withDistance(newest, newest.text)}</strong>
      <span className="soft">
        {line.readings.length > 1
          ? `${say('outcomes.first', { value: withDistance(first, first.text) })} · `
          : ''}
        {verdictInWords(line, day)}
      </span>
    </li>
  );
};

export const OutcomesInShort = ({ patient, course, day }: SummaryProps) => {
  const lines = outcomeLines(course.measurements, course.effusions, personMeasured(patient));
  return (
    <section className="stack-close">
      <div className="side-head">
        <h2>{say('outcomes')}</h2>
        <a href={`/patients/${patient.id}/outcomes`}>Outcomes</a>
      </div>
      {lines.length === 0 ? <p className="soft">{say('outcomes.none')}</p> : null}
      <ul className="plain-list lined">
        {lines.map((line) => (
          <OutcomeLine key={line.key} line={line} day={day} />
        ))}
      </ul>
    </section>
  );
};

export const GoalsInShort = ({ course, clock, day }: SummaryProps) => (
  <section className="stack-close">
    <h2>{say('goals')}</h2>
    {course.goals.length === 0 ? <p className="soft">{say('goals.none')}</p> : null}
    <ul className="plain-list lined">
      {course.goals.map(({ goal, state, said }) => (
        <li key={goal} className="outcome-line">
          <span>“{goal}”</span>
          <strong>{goalStateWords[state]}</strong>
          <span className="soft">{said ? dayInWords(dayAt(said.at, clock.zone), day) : ''}</span>
        </li>
      ))}
    </ul>
  </section>
);
