'use client';
/** One screening question: yes, no or not known, with what it asks further and what was said before. */
import { memo } from 'react';
import type { AskedItem } from '#api/clinician/question-in-english.ts';
import { joints } from '#core/exercises/joints.ts';
import { leftUnsaid } from '#core/screening/answer-remarks.ts';
import type { ScreeningAnswer } from '#core/screening/screening.ts';
import { say } from '#messages/en/staff/screening.ts';
import { CheckboxGroup } from '#ui/design-system/checkbox-group.tsx';
import { DayField } from '#ui/design-system/day/day-field.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import { optionInWords } from '../forms/field-words.ts';
import { asksMore, type ItemState, limbOf, limbOptions } from './screening-form-state.ts';

const plainAnswers: readonly { readonly value: ScreeningAnswer; readonly label: string }[] = [
  { value: 'yes', label: 'Yes' },
  { value: 'no', label: 'No' },
  { value: 'not-known', label: say('not-known') },
];
const withNotApplicable = [
  ...plainAnswers,
  { value: 'not-applicable', label: say('not-applicable') } as const,
];

export interface ScreeningItemFieldProps {
  readonly item: AskedItem;
  readonly state: ItemState;
  readonly previous: string | null;
  readonly onChange: (id: string, state: ItemState) => void;
}

const limbChoices = limbOptions.map((value) => ({ value, label: optionInWords(value) }));
const jointChoices = joints.map((value) => ({ value, label: optionInWords(value) }));

const unsaidInWords = (item: AskedItem, state: ItemState): readonly string[] =>
  leftUnsaid(item.asks, {
    answer: state.answer ?? 'not-known',
    details: state.details,
    limbs: state.limbs.map(limbOf),
    joints: state.joints,
  }).map((name) =>
    name === 'which'
      ? item.ifWhichNotSaid === null
        ? say('which-unsaid')
        : say('which-unsaid-until', { meanwhile: item.ifWhichNotSaid })
      : say('named-unsaid', { what: name }),
  );

/** A detail that a "yes" needs and does not have, with what stands meanwhile. */
const NotSaid = ({ item, state }: Pick<ScreeningItemFieldProps, 'item' | 'state'>) => (
  <div role="status">
    {unsaidInWords(item, state).map((text) => (
      <p key={text}>
        <strong>{text}</strong>
      </p>
    ))}
  </div>
);

const More = ({ item, state, onChange }: Omit<ScreeningItemFieldProps, 'previous'>) => {
  const change = (more: Partial<ItemState>) => onChange(item.id, { ...state, ...more });
  return (
    <div className="screening-more stack-close">
      {item.asks.details.length > 0 ? (
        <CheckboxGroup
          name={`${item.id}-details`}
          legend="Which"
          options={item.asks.details.map(({ id, label }) => ({ value: id, label }))}
          chosen={state.details}
          onChoose={(details) => change({ details })}
        />
      ) : null}
      {item.asks.limbs ? (
        <CheckboxGroup
          name={`${item.id}-limbs`}
          legend={say('which-limbs')}
          isWrapped
          options={limbChoices}
          chosen={state.limbs as (typeof limbOptions)[number][]}
          onChoose={(limbs) => change({ limbs })}
        />
      ) : null}
      {item.asks.joints ? (
        <CheckboxGroup
          name={`${item.id}-joints`}
          legend={say('which-joints')}
          isWrapped
          options={jointChoices}
          chosen={state.joints as (typeof joints)[number][]}
          onChoose={(chosen) => change({ joints: chosen })}
        />
      ) : null}
      {item.asks.day ? (
        <DayField
          id={`${item.id}-day`}
          name={`${item.id}-day`}
          label={say('last-happened')}
          isOptional
          value={state.day}
          onDay={(day) => change({ day })}
        />
      ) : null}
      <NotSaid item={item} state={state} />
    </div>
  );
};

const Note = ({ item, state, onChange }: Omit<ScreeningItemFieldProps, 'previous'>) => (
  <TextField
    id={`${item.id}-note`}
    name={`${item.id}-note`}
    label="Note"
    hint={say('note-hint')}
    isOptional
    maxLength={200}
    value={state.note}
    onChange={(event) => onChange(item.id, { ...state, note: event.target.value })}
  />
);

/** Drawn again only when its own answer changes: the sheet is long. */
export const ScreeningItemField = memo(({ item, state, previous, onChange }: ScreeningItemFieldProps) => (
  <div className="screening-item">
    <RadioGroup
      name={item.id}
      legend={item.question}
      hint={
        <>
          {item.clinicianLabel}
          {item.mark === 'memory' && !item.clinicianLabel.includes(say('from-memory'))
            ? ` (${say('from-memory')})`
            : ''}
          {previous === null ? null : (
            <>
              {' · '}
              <strong>{say('before', { previous })}</strong>
            </>
          )}
        </>
      }
      isWrapped
      options={item.asks.notApplicable ? withNotApplicable : plainAnswers}
      chosen={state.answer}
      onChoose={(answer) => onChange(item.id, { ...state, answer })}
    />
    {asksMore(item, state) ? <More item={item} state={state} onChange={onChange} /> : null}
    {state.answer === null ? null : state.answer === 'yes' || state.note !== '' ? (
      <Note item={item} state={state} onChange={onChange} />
    ) : (
      <Disclosure summary={say('note-add')}>
        <Note item={item} state={state} onChange={onChange} />
      </Disclosure>
    )}
  </div>
));
