/**
 * A civil day. Near ones by the browser’s own field, whose order of parts follows the browser and not the page:
 * the day is said back in words beneath it. A day of birth in three boxes, as people know it by heart.
 */
import type { FocusEvent } from 'react';
import { isDay } from '#core/time/day.ts';
import { wholeDayText } from '../../language/text-of-time.ts';
import { ErrorMessage } from '../error-message.tsx';
import { controlProps, FieldFrame, type FieldWords } from '../field-frame.tsx';
import { birthParts, dayOfParts, notADay, type PartOfDay, partsOfDay } from './day-parts.ts';

interface DayFieldProps extends FieldWords {
  /** YYYY-MM-DD, empty, or what was typed of a day so far. */
  readonly value: string;
  readonly onDay: (day: string) => void;
}

/** While a year is typed the browser hands on 0002, 0020 and 0202: taken away, the rest could not be typed. */
const wholeDay = /^\d{4}-\d\d-\d\d$/;

/** Without bounds a browser takes years of five figures. */
export const dayBounds = { min: '1900-01-01', max: '2199-12-31' } as const;

const SaidBack = ({ value }: Pick<DayFieldProps, 'value'>) => (
  <p className="day-said soft small" aria-live="polite">
    {isDay(value) ? wholeDayText(value) : ''}
  </p>
);

export const DayField = ({ value, onDay, ...words }: DayFieldProps) => {
  // A day that does not exist reads as empty: it is told apart, so that it is not taken for left out.
  const leave = ({ currentTarget: { validity, value: day } }: FocusEvent<HTMLInputElement>) => {
    if (validity.badInput) onDay(notADay);
    else if (value === notADay) onDay(day);
  };
  return (
    <FieldFrame {...words}>
      <input
        {...controlProps(words)}
        type="date"
        className="input input-day"
        {...dayBounds}
        value={wholeDay.test(value) ? value : ''}
        onChange={(event) => onDay(event.target.value)}
        onBlur={leave}
      />
      <SaidBack value={value} />
    </FieldFrame>
  );
};

const Box = (props: {
  readonly part: PartOfDay;
  readonly of: DayFieldProps;
  readonly parts: Readonly<Record<PartOfDay, string>>;
}) => {
  const { part, of, parts } = props;
  const { name, id = name } = of;
  const { label, size } = birthParts[part];
  // The first has the id of the field: a message about the day leads to it.
  const boxId = part === 'day' ? id : `${id}-${part}`;
  return (
    <span className="day-box">
      <label htmlFor={boxId}>{label}</label>
      <input
        id={boxId}
        name={`${name}-${part}`}
        type="text"
        inputMode="numeric"
        autoComplete="off"
        maxLength={size}
        className={`input day-box-${part}`}
        value={parts[part]}
        onChange={(event) => of.onDay(dayOfParts({ ...parts, [part]: event.target.value }))}
        aria-invalid={of.error ? true : undefined}
        aria-describedby={of.error ? `${id}-error` : undefined}
      />
    </span>
  );
};

export const BirthDayField = (props: DayFieldProps) => {
  const { name, id = name, label, hint, error, isOptional, value } = props;
  const parts = partsOfDay(value);
  return (
    <fieldset className={error ? 'field field-wrong' : 'field'}>
      <legend className="field-label">
        {label}
        {isOptional ? <span className="field-optional"> (optional)</span> : null}
      </legend>
      {hint ? <div className="field-hint">{hint}</div> : null}
      {error ? <ErrorMessage id={`${id}-error`}>{error}</ErrorMessage> : null}
      <div className="day-boxes">
        {(['day', 'month', 'year'] as const).map((part) => (
          <Box key={part} part={part} of={props} parts={parts} />
        ))}
      </div>
      <SaidBack value={value} />
    </fieldset>
  );
};
