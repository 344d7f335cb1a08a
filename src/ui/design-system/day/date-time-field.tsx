/** A civil day and a time of day, each by the browser’s own field; said back in words beneath, as a day is. */
import type { FocusEvent } from 'react';
import { dateTimeParts } from '#core/time/date-time.ts';
import { clockTimeText, wholeDayText } from '../../language/text-of-time.ts';
import { ErrorMessage } from '../error-message.tsx';
import type { FieldWords } from '../field-frame.tsx';
import { dateTimeFrom, textPartsOf } from './date-time-parts.ts';
import { dayBounds } from './day-field.tsx';
import { notADay } from './day-parts.ts';

interface DateTimeFieldProps extends FieldWords {
  /** YYYY-MM-DDTHH:MM, empty, or what was typed of it so far. */
  readonly value: string;
  readonly mayLackTime: boolean;
  readonly onDateTime: (text: string) => void;
}

const saidBack = (value: string): string => {
  const parts = dateTimeParts(value);
  if (!parts) return '';
  const day = wholeDayText(parts.day);
  return parts.time === null ? day : `${day}, ${clockTimeText(parts.time)}`;
};

/** What the browser cannot read is empty to a page: it is told apart, so that it is not taken for left out. */
const unread = ({ currentTarget: { validity } }: FocusEvent<HTMLInputElement>): boolean => validity.badInput;

export const DateTimeField = (props: DateTimeFieldProps) => {
  const { name, id = name, label, hint, error, isOptional, value, mayLackTime, onDateTime } = props;
  const { day, time } = textPartsOf(value);
  const described =
    [hint ? `${id}-hint` : '', error ? `${id}-error` : ''].filter(Boolean).join(' ') || undefined;
  const control = { 'aria-invalid': error ? true : undefined, 'aria-describedby': described } as const;
  return (
    <fieldset className={error ? 'field field-wrong' : 'field'}>
      <legend className="field-label">
        {label}
        {isOptional ? <span className="field-optional"> (optional)</span> : null}
      </legend>
      {hint ? (
        <div className="field-hint" id={`${id}-hint`}>
          {hint}
        </div>
      ) : null}
      {error ? <ErrorMessage id={`${id}-error`}>{error}</ErrorMessage> : null}
      <div className="day-boxes">
        <span className="day-box">
          <label htmlFor={id}>Day</label>
          <input
            {...control}
            {...dayBounds}
            id={id}
            name={name}
            type="date"
            className="input input-day"
            value={day === notADay ? '' : day}
            onChange={(event) => onDateTime(dateTimeFrom(event.target.value, time))}
            onBlur={(event) => (unread(event) ? onDateTime(dateTimeFrom(notADay, time)) : undefined)}
          />
        </span>
        <span className="day-box">
          <label htmlFor={`${id}-time`}>{mayLackTime ? 'Time (optional)' : 'Time'}</label>
          <input
            {...control}
            id={`${id}-time`}
            name={`${name}-time`}
            type="time"
            className="input input-day"
            value={time === notADay ? '' : time}
            onChange={(event) => onDateTime(dateTimeFrom(day, event.target.value))}
            onBlur={(event) => (unread(event) ? onDateTime(dateTimeFrom(day, notADay)) : undefined)}
          />
        </span>
      </div>
      <p className="day-said soft small" aria-live="polite">
        {saidBack(value)}
      </p>
    </fieldset>
  );
};
