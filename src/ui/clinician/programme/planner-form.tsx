'use client';
/** The week of the exercises in force: weekdays ticked, a template to begin from, and what it comes to as it is ticked. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useMemo, useState } from 'react';
import type { ProgrammeItem, Weekday } from '#core/prescribing/programme/planned-sessions.ts';
import type { ProgrammeValues } from '#core/prescribing/programme/session-length.ts';
import { laidOut, weekTemplates } from '#core/prescribing/programme/templates.ts';
import { type PlannedExercise, refusedIn, weekPlan } from '#core/prescribing/programme/week-plan.ts';
import { say } from '#messages/en/staff/programme.ts';
import { client } from '#ui/clinician/client.ts';
import { useSubmit } from '#ui/clinician/forms/use-submit.ts';
import { Button } from '#ui/design-system/button.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { dayCountInWords, weekdayNames, workInWords } from './planner-words.ts';
import { WeekView } from './week-view.tsx';

const WeekRow = (props: {
  readonly exercise: PlannedExercise;
  readonly chosen: readonly Weekday[];
  readonly onSwitch: (day: Weekday) => void;
}) => (
  <tr>
    <th scope="row">
      {props.exercise.title}
      <span className="choice-hint">{workInWords(props.exercise.dose)}</span>
    </th>
    {weekdayNames.map(({ day, short, title }) => (
      <td key={day} className="week-cell">
        <label className="week-box">
          <span className="week-name" aria-hidden="true">
            {short}
          </span>
          <input
            type="checkbox"
            aria-label={`${props.exercise.title}, ${title}`}
            checked={props.chosen.includes(day)}
            onChange={() => props.onSwitch(day)}
          />
        </label>
      </td>
    ))}
    <td>{dayCountInWords(props.chosen.length, props.exercise.dose.sessionsPerWeek)}</td>
  </tr>
);

const Templates = (props: {
  readonly onTake: (id: string) => void;
  readonly isOpen?: boolean | undefined;
}) => (
  <Disclosure summary={say('template')} {...(props.isOpen ? { isOpen: true } : {})}>
    <ul className="plain-list">
      {weekTemplates.map(({ id, title, about }) => (
        <li key={id} className="row">
          <Button tone="plain" onClick={() => props.onTake(id)}>
            {title}
          </Button>
          <span className="soft">{about}</span>
        </li>
      ))}
    </ul>
  </Disclosure>
);

const Grid = (props: {
  readonly exercises: readonly PlannedExercise[];
  readonly daysOf: (itemId: string) => readonly Weekday[];
  readonly onSwitch: (itemId: string, day: Weekday) => void;
}) => (
  /* biome-ignore lint/a11y/noNoninteractiveTabindex: a box that scrolls must be reachable by keyboard. */
  <section className="table-scroll" aria-label="Weekdays" tabIndex={0}>
    <table className="table week">
      <caption>{say('caption')}</caption>
      <thead>
        <tr>
          <th scope="col">Exercise</th>
          {weekdayNames.map(({ day, short, title }) => (
            <th key={day} scope="col" className="week-cell" abbr={title}>
              {short}
            </th>
          ))}
          <th scope="col">Days</th>
        </tr>
      </thead>
      <tbody>
        {props.exercises.map((exercise) => (
          <WeekRow
            key={exercise.itemId}
            exercise={exercise}
            chosen={props.daysOf(exercise.itemId)}
            onSwitch={(day) => props.onSwitch(exercise.itemId, day)}
          />
        ))}
      </tbody>
    </table>
  </section>
);

export interface PlannerFormProps {
  readonly patientId: string;
  readonly exercises: readonly PlannedExercise[];
  readonly lines: readonly ProgrammeItem[];
  readonly values: ProgrammeValues;
  /** The week is begun here: its templates stand open. */
  readonly isBegun?: boolean;
  readonly onSaved?: () => void;
}

/** The week on the page, and how it changes. */
const useWeek = ({
  exercises,
  lines: given,
  values,
}: Pick<PlannerFormProps, 'exercises' | 'lines' | 'values'>) => {
  const [items, setItems] = useState(given);
  const plan = useMemo(() => weekPlan(exercises, items, values), [exercises, items, values]);
  const daysOf = (itemId: string) => items.find((item) => item.itemId === itemId)?.weekdays ?? [];
  const change = (itemId: string, day: Weekday) => {
    const known = daysOf(itemId);
    const next = known.includes(day) ? known.filter((one) => one !== day) : [...known, day].sort();
    setItems([...items.filter((item) => item.itemId !== itemId), { itemId, weekdays: next }]);
  };
  const take = (id: string) => {
    const template = weekTemplates.find((one) => one.id === id);
    if (template) setItems(laidOut(template, exercises));
  };
  /** A line for each exercise in force; one that ended is not carried on. */
  const wanted = () => exercises.map(({ itemId }) => ({ itemId, weekdays: daysOf(itemId) }));
  return { plan, daysOf, change, take, wanted };
};

const refusedText = say('refused');

export const PlannerForm = ({ patientId, isBegun, onSaved, ...given }: PlannerFormProps) => {
  const router = useRouter();
  const week = useWeek(given);
  const [saved, setSaved] = useState('');
  const submit = useSubmit('', 'save-programme');
  const { exercises } = given;
  const save = (event: FormEvent) => {
    event.preventDefault();
    const isRefused = refusedIn(week.plan).length > 0;
    void submit.send(isRefused ? [{ field: 'save-programme', text: refusedText }] : [], async () => {
      const programme = { lines: week.wanted() };
      const version = await client.clinician.prescriptions.saveProgramme.mutate({ patientId, programme });
      setSaved(say('saved', { version }));
      if (onSaved) onSaved();
      else router.refresh();
    });
  };
  return (
    <ScriptedForm className="stack" onSubmit={save} onChange={() => setSaved('')}>
      <ErrorSummary problems={submit.problems} />
      <Templates onTake={week.take} isOpen={isBegun} />
      <Grid exercises={exercises} daysOf={week.daysOf} onSwitch={week.change} />
      <WeekView
        plan={week.plan}
        titleOf={(itemId) => exercises.find((one) => one.itemId === itemId)?.title ?? itemId}
      />
      <div className="row">
        <SendButton id="save-programme" aria-disabled={submit.isBusy || undefined}>
          {say('save')}
        </SendButton>
        <span role="status">{saved}</span>
      </div>
    </ScriptedForm>
  );
};
