/** One of a long list. Starts on an empty line, never on the first option. */
import type { ComponentProps } from 'react';
import { controlProps, FieldFrame, type FieldWords } from './field-frame.tsx';

export type SelectFieldProps = FieldWords &
  Omit<ComponentProps<'select'>, keyof FieldWords> & {
    readonly options: readonly { readonly value: string; readonly label: string }[];
    /** Text of the empty first line. */
    readonly empty?: string;
  };

export const SelectField = ({ options, empty = 'Choose one', ...props }: SelectFieldProps) => (
  <FieldFrame {...props}>
    <select
      {...controlProps(props)}
      {...(props.value === undefined && props.defaultValue === undefined ? { defaultValue: '' } : {})}
      className="input"
    >
      <option value="">{empty}</option>
      {options.map((option) => (
        <option key={option.value} value={option.value}>
          {option.label}
        </option>
      ))}
    </select>
  </FieldFrame>
);
