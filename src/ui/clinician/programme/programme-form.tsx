'use client';
/** Weekdays for each exercise in force. Saving makes a new version that begins today. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import type { ProgrammeLine, Weekday } from '#core/programme/planned-sessions.ts';
import { Button } from '#ui/shared/button.tsx';
import { ErrorSummary } from '#ui/shared/error-summary.tsx';
import { client } from '../client.ts';
import { useSubmit } from '../forms/use-submit.ts';

export const weekdays = [
  { day: 1, short: 'Mon', title: 'Monday' },
  { day: 2, short: 'Tue', title: 'Tuesday' },
  { day: 3, short: 'Wed', title: 'Wednesday' },
  { day: 4, short: 'Thu', title: 'Thursday' },
  { day: 5, short: 'Fri', title: 'Friday' },
  { day: 6, short: 'Sat', title: 'Saturday' },
  { day: 7, short: 'Sun', title: 'Sunday' },
] as const satisfies readonly { day: Weekday; short: string; title: string }[];

export interface ProgrammeRow {
  readonly lineId: string;
  readonly title: string;
  readonly perWeek: number;
}

type Days = Readonly<Record<string, readonly Weekday[]>>;

const daysFrom = (lines: readonly ProgrammeLine[]): Days =>
  Object.fromEntries(lines.map((line) => [line.lineId, line.weekdays]));

/** Whether the days ticked are those prescribed. */
export const dayCountInWords = (ticked: number, perWeek: number): string =>
  ticked === perWeek ? `${ticked} of ${perWeek} a week` : `${ticked} ticked, ${perWeek} a week prescribed`;

const WeekRow = (props: {
  readonly row: ProgrammeRow;
  readonly chosen: readonly Weekday[];
  readonly onSwitch: (day: Weekday) => void;
}) => (
  <tr>
    <th scope="row">{props.row.title}</th>
    {weekdays.map(({ day, short, title }) => (
      <td key={day} className="week-cell">
        <label className="week-box">
          <input
            type="checkbox"
            aria-label={`${props.row.title}, ${title}`}
            checked={props.chosen.includes(day)}
            onChange={() => props.onSwitch(day)}
          />
          <span className="week-name" aria-hidden="true">
            {short}
          </span>
        </label>
      </td>
    ))}
    <td>{dayCountInWords(props.chosen.length, props.row.perWeek)}</td>
  </tr>
);

const Week = (props: {
  readonly rows: readonly ProgrammeRow[];
  readonly days: Days;
  readonly onSwitch: (lineId: string, day: Weekday) => void;
}) => (
  // biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reachable by keyboard.
  <section className="table-scroll" aria-label="Weekdays" tabIndex={0}>
    <table className="table week">
      <caption>Weekdays of each exercise in force</caption>
      <thead>
        <tr>
          <th scope="col">Exercise</th>
          {weekdays.map(({ day, short, title }) => (
            <th key={day} scope="col" className="week-cell" abbr={title}>
              {short}
            </th>
          ))}
          <th scope="col">Days</th>
        </tr>
      </thead>
      <tbody>
        {props.rows.map((row) => (
          <WeekRow
            key={row.lineId}
            row={row}
            chosen={props.days[row.lineId] ?? []}
            onSwitch={(day) => props.onSwitch(row.lineId, day)}
          />
        ))}
      </tbody>
    </table>
  </section>
);

export const ProgrammeForm = (props: {
  readonly patientId: string;
  readonly rows: readonly ProgrammeRow[];
  readonly lines: readonly ProgrammeLine[];
}) => {
  const router = useRouter();
  const [days, setDays] = useState<Days>(daysFrom(props.lines));
  const [saved, setSaved] = useState('');
  const submit = useSubmit('', 'save-programme');
  const change = (lineId: string, day: Weekday) => {
    const known = days[lineId] ?? [];
    const next = known.includes(day) ? known.filter((one) => one !== day) : [...known, day].sort();
    setSaved('');
    setDays({ ...days, [lineId]: next });
  };
  const save = (event: FormEvent) => {
    event.preventDefault();
    void submit.send([], async () => {
      const lines = props.rows.map(({ lineId }) => ({ lineId, weekdays: days[lineId] ?? [] }));
      const version = await client.staff.prescriptions.saveProgramme.mutate({
        patientId: props.patientId,
        programme: { lines },
      });
      setSaved(`Saved as version ${version}; it holds from today.`);
      router.refresh();
    });
  };
  return (
    <form method="post" className="stack" noValidate onSubmit={save}>
      <ErrorSummary problems={submit.problems} />
      <Week rows={props.rows} days={days} onSwitch={change} />
      <div className="row">
        <Button type="submit" id="save-programme" aria-disabled={submit.isBusy || undefined}>
          Save the week
        </Button>
        <span role="status">{saved}</span>
      </div>
    </form>
  );
};
