/** What care brought: goals and how they stand, then each thing measured, against norm and error. */

import type { OutcomeLine } from '#core/assessment/course/judgement.ts';
import { outcomeLines } from '#core/assessment/course/lines.ts';
import type { Goal } from '#core/episode/goals.ts';
import { goalStateWords } from '#core/episode/goals.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
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

const decisionsInForceOf = ({ state, byDay, isOverdue, said }: Goal, { clock, day }: OutcomesProps): string =>
  [
    goalStateWords[state],
    byDay ? `to be reached by ${dayInWords(byDay, day)}${isOverdue ? ', which has passed' : ''}` : '',
    said ? `recorded by ${said.by}, ${momentInWords(said.at, clock)}` : 'set at the start of the episode',
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
            Record progress<span className="visually-hidden">: {goal.goal}</span>
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
    <h2>Goals set with the patient</h2>
    {props.course.goals.length === 0 ? <p className="soft">No goal is set yet.</p> : null}
    <ul className="plain-list stack">
      {props.course.goals.map((goal, place) => (
        <GoalView key={goal.goal} goal={goal} place={place} {...props} />
      ))}
    </ul>
    <div className="screen-only">
      <Disclosure summary="Set a goal">
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
          {line.readings.length > 1 ? `; first ${first.text}, ${dayInWords(first.day, day)}` : ''}
        </span>
      </p>
      <p>{line.norm.sentence}</p>
      <p>Change: {line.change.sentence}</p>
      {line.change.parts ? (
        <ul>
          {line.change.parts.map((part) => (
            <li key={part}>{part}</li>
          ))}
        </ul>
      ) : null}
      <div className="row screen-only">
        <a href={`/patients/${patientId}/measurements?kind=${line.kind}`}>
          Measure again<span className="visually-hidden">: {line.title}</span>
        </a>
      </div>
      {workings.length > 0 ? (
        <Disclosure summary="Calculation and source">
          <Sources workings={workings} />
        </Disclosure>
      ) : null}
    </article>
  );
};

/** Every reading, for reading and copying. */
const Readings = ({ lines, day }: { readonly lines: readonly OutcomeLine[]; readonly day: Day }) => (
  <DataTable
    caption="Every reading, oldest first"
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
        <p className="soft">
          The latest reading beside the first. A difference counts as a change only when it exceeds the
          measurement error. This does not show what caused it.
        </p>
        {lines.length === 0 ? (
          <p>
            No outcome is measured yet.{' '}
            <a href={`/patients/${patient.id}/measurements`}>Record a measurement</a>
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
