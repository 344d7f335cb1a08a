/** What care brought: each thing measured, drawn along one time with its error and norm; goals beside. */
import { errorGroupWords } from '#core/assessment/change/error-group.ts';
import type { OutcomeLine } from '#core/assessment/course/judgement.ts';
import { outcomeLines } from '#core/assessment/course/lines.ts';
import { personMeasured } from '#core/assessment/course/measured.ts';
import type { RetestDue } from '#core/assessment/retest-plan.ts';
import type { CuffDue } from '#core/prescribing/occlusion/pressure/remeasure-plan.ts';
import type { DoseDay } from '#core/review/dose-days.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/outcomes.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { CourseAnswer, Patient } from '../answers.ts';
import { withDistance } from '../measurements/distance-words.ts';
import type { ClinicClock } from '../when.ts';
import { CuffPressures } from './cuff-pressures.tsx';
import { Goals } from './goals.tsx';
import { HomeQuestions, type HomeQuestionsProps } from './home-questions.tsx';
import type { Span } from './line-scale.ts';
import { MeasureRow } from './measure-row.tsx';
import { Retests } from './retests.tsx';
import { SideToSide } from './side-to-side.tsx';
import { TimeAxis } from './time-axis.tsx';

export interface OutcomesProps {
  readonly patient: Patient;
  readonly course: CourseAnswer;
  readonly doseDays: readonly DoseDay[];
  readonly retests: readonly RetestDue[];
  readonly cuffs: readonly CuffDue[];
  readonly atHome: HomeQuestionsProps['atHome'];
  readonly clock: ClinicClock;
  readonly day: Day;
}

/** Every reading, for reading and copying; and the days on which doses changed. */
const Readings = ({
  lines,
  doseDays,
  day,
}: Pick<OutcomesProps, 'doseDays' | 'day'> & { readonly lines: readonly OutcomeLine[] }) => (
  <Disclosure summary={say('readings')}>
    <DataTable
      caption={say('readings')}
      columns={[
        { key: 'what', title: 'Measures' },
        { key: 'day', title: 'Day' },
        { key: 'value', title: 'Value' },
      ]}
      rows={[
        ...lines.flatMap((line) =>
          line.readings.map((reading, place) => ({
            key: `${line.key} ${place}`,
            cells: [line.title, dayInWords(reading.day, day), withDistance(reading, reading.text)],
          })),
        ),
        ...doseDays.map((one) => ({
          key: `dose-${one.day}-${one.isSigned}`,
          cells: [
            say(one.isSigned ? 'picture.signed' : 'picture.changed'),
            dayInWords(one.day, day),
            one.steps.join('; '),
          ],
        })),
      ]}
    />
  </Disclosure>
);

/** Whose error of measuring holds, and where that is said. */
const WhoseError = ({ patient: { id, profile } }: Pick<OutcomesProps, 'patient'>) => {
  const group = profile?.errorGroup ?? null;
  return (
    <p className="soft">
      {group === 'none-of-these'
        ? say('group.no-fit')
        : group
          ? say('group.named', { group: errorGroupWords[group] })
          : say('group.none')}{' '}
      <a className="screen-only" href={`/patients/${id}/care/first-visit?step=reason`}>
        {say(group ? 'group.change' : 'group.name')}
      </a>
    </p>
  );
};

const firstDay = (lines: readonly OutcomeLine[], doseDays: readonly DoseDay[], day: Day): Day =>
  [
    ...lines.flatMap(({ readings }) => readings.map((one) => one.day)),
    ...doseDays.map((one) => one.day),
  ].reduce((a, b) => (b < a ? b : a), day);

const Measures = ({ patient, doseDays, day, lines }: OutcomesProps & { lines: readonly OutcomeLine[] }) => {
  const span: Span = { from: firstDay(lines, doseDays, day), to: day };
  return (
    <section>
      <div className="side-head">
        <h2>Outcomes</h2>
        <p className="soft">{say('picture.key')}</p>
      </div>
      <WhoseError patient={patient} />
      <div className="measure measure-axis">
        <span />
        <TimeAxis span={span} doses={doseDays} day={day} />
        <span />
      </div>
      {lines.map((line) => (
        <MeasureRow
          key={line.key}
          line={line}
          span={span}
          doses={doseDays}
          day={day}
          patientId={patient.id}
        />
      ))}
      <p className="soft">{say('measures-note')}</p>
      <Readings lines={lines} doseDays={doseDays} day={day} />
    </section>
  );
};

export const OutcomesScreen = (props: OutcomesProps) => {
  const { patient, course, retests, cuffs, atHome, clock, day } = props;
  const lines = outcomeLines(course.measurements, course.effusions, personMeasured(patient));
  return (
    <div className="work-answer outcomes">
      <div className="stack-wide">
        {lines.length > 0 ? (
          <Measures {...props} lines={lines} />
        ) : (
          <section className="stack-close">
            <h2>Outcomes</h2>
            <p>
              {say('none')} <a href={`/patients/${patient.id}/measurements`}>{say('record')}</a>
            </p>
          </section>
        )}
        <HomeQuestions patientId={patient.id} atHome={atHome} clock={clock} day={day} />
      </div>
      <div className="stack-wide">
        <Goals patientId={patient.id} goals={course.goals} clock={clock} day={day} />
        <SideToSide measurements={course.measurements} operations={course.operations} day={day} />
        <Retests patientId={patient.id} retests={retests} stopped={course.stoppedRetests} day={day} />
        <CuffPressures patientId={patient.id} cuffs={cuffs} day={day} />
      </div>
    </div>
  );
};
