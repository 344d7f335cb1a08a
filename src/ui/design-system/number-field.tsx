/**
 * A typed number. A text control with a keypad hint: type=number changes under a scrolling thumb
 * and hides what was typed. Read the value with `readNumber` of read-number.ts.
 */
import type { ComponentProps, ReactNode } from 'react';
import { controlProps, FieldFrame, type FieldWords } from './field-frame.tsx';

export type NumberFieldProps = FieldWords &
  Omit<ComponentProps<'input'>, keyof FieldWords | 'type' | 'inputMode'> & {
    /** Shown after the control and read with the label, such as "kg". */
    readonly unit?: ReactNode;
    readonly isWhole?: boolean;
  };

export const NumberField = ({ unit, isWhole, ...props }: NumberFieldProps) => {
  const words = unit
    ? {
        ...props,
        label: (
          <>
            {props.label}
            <span className="visually-hidden">, in {unit}</span>
          </>
        ),
      }
    : props;
  return (
    <FieldFrame {...words}>
      <div className="input-with-unit">
        <input
          {...controlProps(words)}
          type="text"
          inputMode={isWhole ? 'numeric' : 'decimal'}
          autoComplete="off"
          spellCheck={false}
          className="input input-short"
        />
        {unit ? <span aria-hidden="true">{unit}</span> : null}
      </div>
    </FieldFrame>
  );
};
