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

const Part = (props: {
  readonly of: DateTimeFieldProps;
  readonly part: 'day' | 'time';
  readonly label: string;
}) => {
  const { of, part, label } = props;
  const { name, id = name, hint, error, value, onDateTime } = of;
  const typed = textPartsOf(value);
  const suffix = part === 'day' ? '' : '-time';
  const put = (text: string) => onDateTime(dateTimeFrom({ ...typed, [part]: text }));
  return (
    <span className="day-box">
      <label htmlFor={`${id}${suffix}`}>{label}</label>
      <input
        {...(part === 'day' ? dayBounds : {})}
        id={`${id}${suffix}`}
        name={`${name}${suffix}`}
        type={part === 'day' ? 'date' : 'time'}
        className="input input-day"
        value={typed[part] === notADay ? '' : typed[part]}
        onChange={(event) => put(event.target.value)}
        onBlur={(event) => (unread(event) ? put(notADay) : undefined)}
        aria-invalid={error ? true : undefined}
        aria-describedby={
          [hint ? `${id}-hint` : '', error ? `${id}-error` : ''].join(' ').trim() || undefined
        }
      />
    </span>
  );
};

export const DateTimeField = (props: DateTimeFieldProps) => {
  const { name, id = name, label, hint, error, isOptional, value, mayLackTime } = props;
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
        <Part of={props} part="day" label="Day" />
        <Part of={props} part="time" label={mayLackTime ? 'Time (optional)' : 'Time'} />
      </div>
      <p className="day-said soft small" aria-live="polite">
        {saidBack(value)}
      </p>
    </fieldset>
  );
};
