'use client';
import { Button } from '#ui/design-system/button.tsx';
/** A list to tick: "None of these" is a press of its own, and so is going on with what is ticked. */
import { CheckboxGroup } from '#ui/design-system/checkbox-group.tsx';
import { WaysBack } from './answer-page.tsx';

export interface TickListProps<V extends string> {
  readonly name: string;
  readonly question: string;
  readonly hint?: string;
  readonly options: readonly { readonly value: V; readonly label: string }[];
  readonly ticked: readonly string[];
  /** Of the button while nothing is ticked, and with so many ticked. */
  readonly noneText: string;
  readonly someText: (count: number) => string;
  readonly onTick: (ticked: readonly string[]) => void;
  readonly onContinue: (chosen: readonly V[]) => void;
}

export const TickList = <V extends string>(props: TickListProps<V>) => {
  const chosen = props.options.map(({ value }) => value).filter((value) => props.ticked.includes(value));
  return (
    <div className="stack ask">
      <CheckboxGroup<string>
        name={props.name}
        legend={props.question}
        legendIsHeading
        hint={props.hint}
        options={props.options}
        chosen={chosen}
        onChoose={props.onTick}
      />
      <Button
        tone="plain"
        isLarge
        isWide
        className={chosen.length === 0 ? 'answer' : 'answer answer-stays'}
        onClick={() => props.onContinue(chosen)}
      >
        {chosen.length === 0 ? props.noneText : props.someText(chosen.length)}
      </Button>
      <WaysBack />
    </div>
  );
};
