/** Goals set with the patient and how each stands. */
import { type Goal, goalStateWords } from '#core/episode/goals.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/outcomes.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { type ClinicClock, momentInWords } from '../when.ts';
import { GoalForm } from './goal-form.tsx';

interface GoalsProps {
  readonly patientId: string;
  readonly goals: readonly Goal[];
  readonly clock: ClinicClock;
  readonly day: Day;
}

const dueInWords = (date: string, isOverdue: boolean): string =>
  isOverdue ? say('by-day-passed', { date }) : say('by-day', { date });

const standingInWords = ({ state, byDay, isOverdue, said }: Goal, { clock, day }: GoalsProps): string =>
  [
    goalStateWords[state],
    byDay ? dueInWords(dayInWords(byDay, day), isOverdue) : '',
    said ? say('recorded-by', { name: said.by, time: momentInWords(said.at, clock) }) : say('set-at-start'),
  ]
    .filter(Boolean)
    .join('; ');

const GoalView = (props: GoalsProps & { readonly goal: Goal; readonly place: number }) => {
  const { goal, patientId, place } = props;
  return (
    <li className="stack-close keep-together">
      <p>
        <strong>“{goal.goal}”</strong> <span className="soft">{standingInWords(goal, props)}</span>
      </p>
      {goal.note ? <p>{goal.note}</p> : null}
      <Disclosure
        summary={
          <>
            {say('progress')}
            <span className="visually-hidden">: {goal.goal}</span>
          </>
        }
      >
        <GoalForm patientId={patientId} goal={goal.goal} place={place} />
      </Disclosure>
    </li>
  );
};

export const Goals = (props: GoalsProps) => (
  <section className="stack-close">
    <div className="side-head">
      <h2>{say('goals')}</h2>
    </div>
    {props.goals.length === 0 ? <p className="soft">{say('no-goal')}</p> : null}
    <ul className="plain-list lined">
      {props.goals.map((goal, place) => (
        <GoalView key={goal.goal} goal={goal} place={place} {...props} />
      ))}
    </ul>
    <div className="screen-only">
      <Disclosure summary={say('set-goal')}>
        <GoalForm patientId={props.patientId} goal={null} place={0} />
      </Disclosure>
    </div>
  </section>
);
