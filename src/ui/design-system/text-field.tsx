/** One line of text, or several with `isLong`. */
import type { ComponentProps } from 'react';
import { controlProps, FieldFrame, type FieldWords } from './field-frame.tsx';

export type TextFieldProps = FieldWords & Omit<ComponentProps<'input'>, keyof FieldWords>;

export const TextField = ({ className = 'input', ...props }: TextFieldProps) => (
  <FieldFrame {...props}>
    <input type="text" {...controlProps(props)} className={className} />
  </FieldFrame>
);

export type LongTextFieldProps = FieldWords & Omit<ComponentProps<'textarea'>, keyof FieldWords>;

export const LongTextField = (props: LongTextFieldProps) => (
  <FieldFrame {...props}>
    <textarea rows={4} {...controlProps(props)} className="input" />
  </FieldFrame>
);
