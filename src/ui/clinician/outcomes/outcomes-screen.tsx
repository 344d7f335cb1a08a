/** What care brought: goals and how they stand, then each thing measured, against norm and error. */

import type { OutcomeLine } from '#core/assessment/course/judgement.ts';
import { outcomeLines } from '#core/assessment/course/lines.ts';
import type { Goal } from '#core/episode/goals.ts';
import { goalStateWords } from '#core/episode/goals.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/outcomes.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { CourseAnswer, Patient } from '../answers.ts';
import { Sources } from '../review/findings-view.tsx';
import { type ClinicClock, momentInWords } from '../when.ts';
import { GoalForm } from './goal-form.tsx';

export interface OutcomesProps {
  readonly patient: Patient;
  readonly course: CourseAnswer;
  readonly clock: ClinicClock;
  readonly day: Day;
}

const firstInWords = ({ text, day: on }: OutcomeLine['readings'][number], day: Day): string =>
  say('first', { value: text, date: dayInWords(on, day) });

const dueInWords = (date: string, isOverdue: boolean): string =>
  isOverdue ? say('by-day-passed', { date }) : say('by-day', { date });

const decisionsInForceOf = ({ state, byDay, isOverdue, said }: Goal, { clock, day }: OutcomesProps): string =>
  [
    goalStateWords[state],
    byDay ? dueInWords(dayInWords(byDay, day), isOverdue) : '',
    said ? say('recorded-by', { name: said.by, time: momentInWords(said.at, clock) }) : say('set-at-start'),
  ]
    .filter(Boolean)
    .join('; ');

const GoalView = (props: OutcomesProps & { readonly goal: Goal; readonly place: number }) => {
  const { goal, patient, place } = props;
  return (
    <li className="stack-close keep-together">
      <p>
        <strong>“{goal.goal}”</strong> <span className="soft">{decisionsInForceOf(goal, props)}</span>
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
        <GoalForm patientId={patient.id} goal={goal.goal} prefix={`goal-${place}-`} />
      </Disclosure>
    </li>
  );
};

const Goals = (props: OutcomesProps) => (
  <section className="stack">
    <h2>{say('goals')}</h2>
    {props.course.goals.length === 0 ? <p className="soft">{say('no-goal')}</p> : null}
    <ul className="plain-list stack">
      {props.course.goals.map((goal, place) => (
        <GoalView key={goal.goal} goal={goal} place={place} {...props} />
      ))}
    </ul>
    <div className="screen-only">
      <Disclosure summary={say('set-goal')}>
        <GoalForm patientId={props.patient.id} goal={null} prefix="goal-new-" />
      </Disclosure>
    </div>
  </section>
);

const Line = ({
  line,
  day,
  patientId,
}: {
  readonly line: OutcomeLine;
  readonly day: Day;
  readonly patientId: string;
}) => {
  const workings = [...line.norm.workings, ...line.change.workings];
  const first = line.readings[0]!;
  const newest = line.readings.at(-1)!;
  return (
    <article className="stack-close outcome keep-together" data-outcome={line.key}>
      <h3>{line.title}</h3>
      <p>
        <strong>{newest.text}</strong>{' '}
        <span className="soft">
          {dayInWords(newest.day, day)}
          {line.readings.length > 1 ? `; ${firstInWords(first, day)}` : ''}
        </span>
      </p>
      <p>{line.norm.sentence}</p>
      <p>{say('change', { sentence: line.change.sentence })}</p>
      {line.change.parts ? (
        <ul>
          {line.change.parts.map((part) => (
            <li key={part}>{part}</li>
          ))}
        </ul>
      ) : null}
      <div className="row screen-only">
        <a href={`/patients/${patientId}/measurements?kind=${line.kind}`}>
          {say('again')}
          <span className="visually-hidden">: {line.title}</span>
        </a>
      </div>
      {workings.length > 0 ? (
        <Disclosure summary={say('calculation')}>
          <Sources workings={workings} />
        </Disclosure>
      ) : null}
    </article>
  );
};

/** Every reading, for reading and copying. */
const Readings = ({ lines, day }: { readonly lines: readonly OutcomeLine[]; readonly day: Day }) => (
  <DataTable
    caption={say('readings')}
    columns={[
      { key: 'what', title: 'Measures' },
      { key: 'day', title: 'Day' },
      { key: 'value', title: 'Value' },
    ]}
    rows={lines.flatMap((line) =>
      line.readings.map((reading, place) => ({
        key: `${line.key} ${place}`,
        cells: [
          line.title,
          <span key="day" className="one-line">
            {dayInWords(reading.day, day)}
          </span>,
          reading.text,
        ],
      })),
    )}
  />
);

export const OutcomesScreen = (props: OutcomesProps) => {
  const { patient, course, day } = props;
  const person = { sex: patient.profile?.formulaSex ?? null, birthDay: patient.birthDay };
  const lines = outcomeLines(course.measurements, course.effusions, person);
  return (
    <div className="stack-wide">
      <Goals {...props} />
      <section className="stack-wide">
        <h2>Measures</h2>
        <p className="soft">{say('measures-note')}</p>
        {lines.length === 0 ? (
          <p>
            {say('none')} <a href={`/patients/${patient.id}/measurements`}>{say('record')}</a>
          </p>
        ) : null}
        {lines.map((line) => (
          <Line key={line.key} line={line} day={day} patientId={patient.id} />
        ))}
      </section>
      {lines.length > 0 ? <Readings lines={lines} day={day} /> : null}
    </div>
  );
};
