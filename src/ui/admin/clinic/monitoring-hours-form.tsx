'use client';
/** The hours in which somebody reads what patients send, a line for each day, said back as patients will read them. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import {
  type HoursByDay,
  monitoringHoursFromDays,
  type Weekday,
  weekdays,
} from '#core/episode/monitoring-hours.ts';
import { say } from '#messages/en/staff/administration/clinic.ts';
import { hoursText } from '#messages/hours.ts';
import { Button } from '#ui/design-system/button.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { ScriptedForm, SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { Asked } from '../../account/asked.tsx';
import { useAsking } from '../../account/use-asking.ts';
import { changeOrConflict } from '../change-or-conflict.ts';
import { DetailHistory, type DetailHistoryProps } from './detail-history.tsx';

export interface MonitoringHoursProps extends DetailHistoryProps {
  readonly hours: {
    readonly byDay: HoursByDay;
    readonly inWords: string;
    /** What stood here, as it goes back with a change. */
    readonly seen: string;
  };
}

const fieldOf = (day: Weekday): string => `hours.${day}`;
const asOnMonday: readonly Weekday[] = ['Tue', 'Wed', 'Thu', 'Fri'];

const willRead = (typed: HoursByDay): string => {
  const read = monitoringHoursFromDays(typed);
  if (!read.ok) return '';
  return read.hours.length === 0
    ? say('hours.none')
    : say('hours.will-read', { hours: hoursText(read.hours).en });
};

interface DaysProps {
  readonly typed: HoursByDay;
  readonly errorOf: (field: string) => string | undefined;
  readonly onType: (days: Partial<HoursByDay>) => void;
}

const Days = ({ typed, errorOf, onType }: DaysProps) => (
  <fieldset className="days">
    <legend className="field-legend">{say('hours.legend')}</legend>
    <p className="field-hint" id="hours-hint">
      {say('hours.hint')}
    </p>
    {weekdays.map((day) => (
      <TextField
        key={day}
        name={fieldOf(day)}
        label={say(`day.${day}`)}
        maxLength={100}
        autoComplete="off"
        value={typed[day]}
        error={errorOf(fieldOf(day))}
        onChange={(event) => onType({ [day]: event.target.value })}
      />
    ))}
    <Button
      tone="plain"
      onClick={() => onType(Object.fromEntries(asOnMonday.map((day) => [day, typed.Mon])))}
    >
      {say('hours.copy')}
    </Button>
  </fieldset>
);

const HoursForm = ({ hours, onSaved }: Pick<MonitoringHoursProps, 'hours'> & { onSaved: () => void }) => {
  const router = useRouter();
  const asking = useAsking(fieldOf('Mon'));
  const [typed, setTyped] = useState(hours.byDay);
  const save = (event: FormEvent) => {
    event.preventDefault();
    const read = monitoringHoursFromDays(typed);
    if (!read.ok) return asking.t(read.refused.map(({ field, reason }) => ({ field, text: reason })));
    const entry = { hours: typed, seen: hours.seen };
    void asking.ask(
      () => changeOrConflict('admin.clinicDetails.enterHours', entry, () => router.refresh()),
      () => {
        onSaved();
        router.refresh();
      },
    );
  };
  return (
    <ScriptedForm className="stack-close" onSubmit={save}>
      <Asked asking={asking} />
      <Days
        typed={typed}
        errorOf={asking.errorOf}
        onType={(days) => {
          setTyped({ ...typed, ...days });
        }}
      />
      <p className="soft" aria-live="polite">
        {willRead(typed)}
      </p>
      <SendButton aria-disabled={asking.isBusy || undefined}>{say('hours.save')}</SendButton>
    </ScriptedForm>
  );
};

export const MonitoringHoursPart = ({ hours, changes, zone }: MonitoringHoursProps) => {
  const [isSaved, setSaved] = useState(false);
  return (
    <section className="stack-close" id="hours">
      <h2>{say('hours')}</h2>
      <p className="soft">{say('hours.lead')}</p>
      <p>{hours.inWords === '' ? say('hours.none') : say('hours.now', { hours: hours.inWords })}</p>
      <Disclosure summary={say('hours.change')} isOpen={hours.inWords === '' || undefined}>
        <HoursForm hours={hours} onSaved={() => setSaved(true)} />
      </Disclosure>
      <span role="status">{isSaved ? say('hours.saved') : ''}</span>
      <DetailHistory changes={changes} zone={zone} />
    </section>
  );
};
