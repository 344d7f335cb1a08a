/** Label, hint and error around one control, tied to it by ids. */
import type { ReactNode } from 'react';
import { ErrorMessage } from './error-message.tsx';

/** What every field takes. The id defaults to the name. */
export interface FieldWords {
  readonly name: string;
  readonly id?: string;
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  /** Present means wrong: the message says how to put it right. */
  readonly error?: string;
  readonly isOptional?: boolean;
}

const fieldIds = ({ name, id = name, hint, error }: FieldWords) => {
  const hintId = hint ? `${id}-hint` : undefined;
  const errorId = error ? `${id}-error` : undefined;
  return {
    id,
    hintId,
    errorId,
    describedBy: [hintId, errorId].filter(Boolean).join(' ') || undefined,
  };
};

export const FieldFrame = (props: FieldWords & { readonly children: ReactNode }) => {
  const { id, hintId, errorId } = fieldIds(props);
  return (
    <div className={props.error ? 'field field-wrong' : 'field'}>
      <label className="field-label" htmlFor={id}>
        {props.label}
        {props.isOptional ? <span className="field-optional"> (optional)</span> : null}
      </label>
      {props.hint ? (
        <div className="field-hint" id={hintId}>
          {props.hint}
        </div>
      ) : null}
      {props.error && errorId ? <ErrorMessage id={errorId}>{props.error}</ErrorMessage> : null}
      {props.children}
    </div>
  );
};

/** The part of a field's props that belongs to the control itself. */
export const controlProps = <P extends FieldWords>(props: P) => {
  const { label: _label, hint: _hint, error, isOptional: _isOptional, ...control } = props;
  const { id, describedBy } = fieldIds(props);
  return { ...control, id, 'aria-describedby': describedBy, 'aria-invalid': error ? true : undefined };
};
