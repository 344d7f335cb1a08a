/** Any number of answers, with an optional "none of these" that clears the others and is cleared by them. */
import type { ReactNode } from 'react';
import { ChoiceFrame, type ChoiceGroupProps, optionId } from './choice-group.tsx';

export type CheckboxGroupProps<V extends string = string> = ChoiceGroupProps<V> & {
  readonly chosen?: readonly V[];
  readonly onChoose?: (values: readonly V[]) => void;
};

/** The list after one box was switched. An option that stands apart excludes all others. */
export const switched = <V extends string>(
  options: readonly { readonly value: V; readonly isApart?: boolean }[],
  chosen: readonly V[],
  value: V,
): readonly V[] => {
  if (chosen.includes(value)) return chosen.filter((other) => other !== value);
  const apart = (one: V) => options.find((option) => option.value === one)?.isApart === true;
  return apart(value) ? [value] : [...chosen.filter((other) => !apart(other)), value];
};

export const CheckboxGroup = <V extends string>(props: CheckboxGroupProps<V>) => {
  const chosen = props.chosen ?? [];
  return (
    <ChoiceFrame {...props}>
      {props.options.map((option, index) => {
        const isChosen = chosen.includes(option.value);
        const state = props.onChoose
          ? {
              checked: isChosen,
              onChange: () => props.onChoose?.(switched(props.options, chosen, option.value)),
            }
          : { defaultChecked: isChosen };
        return (
          <label key={option.value} className={option.isApart ? 'choice choice-apart' : 'choice'}>
            <input
              type="checkbox"
              id={optionId(props.name, index)}
              name={props.name}
              value={option.value}
              {...state}
            />
            <span className="choice-text">
              {option.label}
              {option.hint ? <span className="choice-hint">{option.hint}</span> : null}
            </span>
          </label>
        );
      })}
    </ChoiceFrame>
  );
};

export interface CheckFieldProps {
  readonly name: string;
  readonly value?: string;
  readonly label: ReactNode;
  readonly hint?: ReactNode;
  readonly isChecked?: boolean;
  readonly onSwitch?: (isChecked: boolean) => void;
}

/** One box by itself. */
export const CheckField = ({ name, value, label, hint, isChecked, onSwitch }: CheckFieldProps) => (
  <label className="choice">
    <input
      type="checkbox"
      id={name}
      name={name}
      value={value}
      {...(onSwitch
        ? { checked: isChecked ?? false, onChange: (event) => onSwitch(event.target.checked) }
        : { defaultChecked: isChecked })}
    />
    <span className="choice-text">
      {label}
      {hint ? <span className="choice-hint">{hint}</span> : null}
    </span>
  </label>
);
