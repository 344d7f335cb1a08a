/** Beside a number: its bounds or a hint of its own, and what a figure with another unit was read as. */
import type { ReactNode } from 'react';
import { unitWords } from '#api/inputs/unit-words.ts';
import type { NumberField } from '#core/calculations/describe.ts';
import { say } from '#messages/en/staff/clinic.ts';
import { boundsInWords } from './field-words.ts';
import { readAs } from './typed-units.ts';

export const NumberHint = (props: {
  readonly field: NumberField;
  readonly typed: string;
  readonly hint: ReactNode;
}) => {
  const { field } = props;
  const read = readAs(props.typed, field.unit);
  return (
    <>
      {props.hint ?? boundsInWords(field)}
      {read === null ? null : (
        <span role="status">
          {' '}
          {say('will-be-read', { round: Math.round(read * 10) / 10, unit: unitWords(field.unit) })}
        </span>
      )}
    </>
  );
};
