/** One answer out of several: native radios, stacked, the whole row a target. */
import { ChoiceFrame, type ChoiceGroupProps, optionId } from './choice-group.tsx';

export type RadioGroupProps<V extends string = string> = ChoiceGroupProps<V> & {
  /** What was chosen before; null or left out means nothing is chosen. With onChoose the group is controlled. */
  readonly chosen?: V | null;
  readonly onChoose?: (value: V) => void;
};

export const RadioGroup = <V extends string>(props: RadioGroupProps<V>) => (
  <ChoiceFrame {...props}>
    {props.options.map((option, index) => {
      const isChosen = props.chosen === option.value;
      const state = props.onChoose
        ? { checked: isChosen, onChange: () => props.onChoose?.(option.value) }
        : { defaultChecked: isChosen };
      return (
        <label key={option.value} className={option.isApart ? 'choice choice-apart' : 'choice'}>
          <input
            type="radio"
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
