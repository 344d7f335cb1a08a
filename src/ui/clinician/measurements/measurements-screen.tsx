/** Measurements: each kind with its newest values beside a small form, then everything as a list. */

import {
  type MeasurementForm as Descriptor,
  measurementForm,
} from '#core/assessment/measurements/measurement-fields.ts';
import type { EffusionRecord } from '#core/record/record.ts';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import { type Day, daysBetween } from '#core/time/day.ts';
import { say } from '#messages/en/staff/measurements.ts';
import { DataTable } from '#ui/design-system/data-table.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { Recorded } from '../answers.ts';
import { withDistance } from './distance-words.ts';
import { EffusionForm } from './effusion-form.tsx';
import { MeasurementForm } from './measurement-form.tsx';
import { measurementInWords, newestBySubject, subjectOf } from './measurement-words.ts';

export interface MeasurementsProps {
  readonly patientId: string;
  readonly forms: readonly Descriptor[];
  /** Oldest first. */
  readonly rows: readonly Recorded[];
  readonly effusions: readonly EffusionRecord[];
  readonly day: Day;
  /** Days a measured occlusion pressure may be used. */
  readonly pressureValidDays: number;
  /** The kind whose form stands open. */
  readonly open: string | null;
}

const Before = ({ lines }: { readonly lines: readonly string[] }) =>
  lines.length === 0 ? (
    <span className="soft">{say('not-measured')}</span>
  ) : (
    <span className="before">{lines.join(' · ')}</span>
  );

/** Only a limb occlusion pressure has an age past which nothing may rest on it. */
export const isOld = (row: Pick<Recorded, 'kind' | 'day'>, day: Day, validDays: number): boolean =>
  row.kind === 'limb-occlusion-pressure' && daysBetween(row.day, day) > validDays;

const newestLines = (
  rows: readonly Recorded[],
  kind: string,
  day: Day,
  validDays: number,
): readonly string[] =>
  newestBySubject(rows.filter((row) => row.kind === kind)).map((row) => {
    const subject = subjectOf(row);
    const value = withDistance(row, measurementInWords(row));
    const date = dayInWords(row.day, day);
    const dated = isOld(row, day, validDays) ? say('out-of-date', { value, date }) : `${value} (${date})`;
    return subject ? `${subject}: ${dated}` : dated;
  });

const effusionLines = (rows: readonly EffusionRecord[], day: Day): readonly string[] =>
  [...new Map(rows.map((row) => [row.joint, row])).values()].map(
    (row) => `${jointInWords(row.joint)}: ${row.grade} (${dayInWords(row.day, day)})`,
  );

const columns = [
  { key: 'day', title: 'Day' },
  { key: 'kind', title: 'Measurement' },
  { key: 'subject', title: 'Of' },
  { key: 'value', title: 'Value' },
];

const valueInWords = (row: Recorded): string => {
  const value = withDistance(row, measurementInWords(row));
  if (row.answeredAtHome) return say('at-home', { value });
  return row.confirmed ? say('unusual', { value }) : value;
};

export const MeasurementsScreen = (props: MeasurementsProps) => (
  <div className="stack-wide">
    <section className="measure-kinds screen-only" aria-label={say('record')}>
      {props.forms.map((form) => (
        <Disclosure
          key={form.kind}
          isOpen={props.open === form.kind}
          summary={
            <span className="measure-summary">
              <span>{form.title}</span>{' '}
              <Before lines={newestLines(props.rows, form.kind, props.day, props.pressureValidDays)} />
            </span>
          }
        >
          <MeasurementForm
            patientId={props.patientId}
            form={form}
            day={props.day}
            previous={props.rows.findLast((row) => row.kind === form.kind) ?? null}
          />
        </Disclosure>
      ))}
      <Disclosure
        isOpen={props.open === 'effusion'}
        summary={
          <span className="measure-summary">
            <span>{say('effusion')}</span> <Before lines={effusionLines(props.effusions, props.day)} />
          </span>
        }
      >
        <EffusionForm patientId={props.patientId} />
      </Disclosure>
    </section>
    <DataTable
      caption={say('all')}
      columns={columns}
      rows={[...props.rows].reverse().map((row) => ({
        key: row.id,
        cells: [
          dayInWords(row.day, props.day),
          measurementForm(row.kind)?.title ?? row.kind,
          subjectOf(row),
          valueInWords(row),
        ],
      }))}
      empty={say('none')}
    />
  </div>
);
