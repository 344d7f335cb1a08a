/** Fieldset and legend around radios or checkboxes. Nothing is ever preselected. */
import type { ReactNode } from 'react';
import { ErrorMessage } from './error-message.tsx';

interface Choice<V extends string = string> {
  readonly value: V;
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  /** Stands apart from the others, such as "I don't know" or "none of these". */
  readonly isApart?: boolean;
}

export interface ChoiceGroupProps<V extends string = string> {
  readonly name: string;
  readonly legend: ReactNode;
  /** The legend is the h1 of the page; for pages that ask one question. */
  readonly legendIsHeading?: boolean;
  readonly hint?: ReactNode;
  readonly error?: string;
  readonly options: readonly Choice<V>[];
  /** Side by side; only for short options. */
  readonly isWrapped?: boolean;
  readonly className?: string;
}

/** The first control carries the group's name as its id, so that an error summary can link to it. */
export const optionId = (name: string, index: number): string => (index === 0 ? name : `${name}-${index}`);

export const ChoiceFrame = <V extends string>(
  props: ChoiceGroupProps<V> & { readonly children: ReactNode },
) => {
  const hintId = props.hint ? `${props.name}-hint` : undefined;
  const errorId = props.error ? `${props.name}-error` : undefined;
  return (
    <fieldset
      className={['field', props.error ? 'field-wrong' : '', props.className ?? ''].filter(Boolean).join(' ')}
      aria-describedby={[hintId, errorId].filter(Boolean).join(' ') || undefined}
    >
      <legend className={props.legendIsHeading ? 'field-legend field-legend-heading' : 'field-legend'}>
        {props.legendIsHeading ? (
          <h1 className="page-heading" tabIndex={-1}>
            {props.legend}
          </h1>
        ) : (
          props.legend
        )}
      </legend>
      {props.hint ? (
        <div className="field-hint" id={hintId}>
          {props.hint}
        </div>
      ) : null}
      {props.error && errorId ? <ErrorMessage id={errorId}>{props.error}</ErrorMessage> : null}
      <div className={props.isWrapped ? 'choices choices-wrap' : 'choices'}>{props.children}</div>
    </fieldset>
  );
};
