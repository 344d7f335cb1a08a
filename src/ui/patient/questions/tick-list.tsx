'use client';
/** A list to tick, ended by "None of these"; it must be answered one way or the other. */
import { CheckboxGroup } from '#ui/design-system/checkbox-group.tsx';
import { t } from '#ui/language/words.ts';
import { QuestionPage } from './question-page.tsx';

export interface TickListProps<V extends string> {
  readonly name: string;
  readonly question: string;
  readonly hint: string;
  readonly options: readonly { readonly value: V; readonly label: string }[];
  /** What is ticked; "none" stands for "None of these". */
  readonly ticked: readonly string[];
  readonly onTick: (ticked: readonly string[]) => void;
  readonly onContinue: (chosen: readonly V[]) => void;
}

export const TickList = <V extends string>(props: TickListProps<V>) => (
  <QuestionPage
    field={props.name}
    isAnswered={props.ticked.length > 0}
    whenEmpty={t('ask.choose-list')}
    onContinue={() =>
      props.onContinue(
        props.options.map(({ value }) => value).filter((value) => props.ticked.includes(value)),
      )
    }
  >
    {(error) => (
      <CheckboxGroup<string>
        name={props.name}
        legend={props.question}
        legendIsHeading
        hint={props.hint}
        error={error}
        options={[...props.options, { value: 'none', label: t('flags.none'), isApart: true }]}
        chosen={props.ticked}
        onChoose={props.onTick}
      />
    )}
  </QuestionPage>
);
