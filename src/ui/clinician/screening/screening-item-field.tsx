'use client';
/** One screening question: yes, no or not known, with what it asks further and what was said before. */
import { memo } from 'react';
import type { AskedItem } from '#api/clinician/question-in-english.ts';
import { joints } from '#core/exercises/joints.ts';
import type { ScreeningAnswer } from '#core/screening/screening.ts';
import { CheckboxGroup } from '#ui/design-system/checkbox-group.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { optionInWords } from '../forms/field-words.ts';
import { asksMore, type ItemState, limbOptions } from './screening-form-state.ts';

const answers: readonly { readonly value: ScreeningAnswer; readonly label: string }[] = [
  { value: 'yes', label: 'Yes' },
  { value: 'no', label: 'No' },
  { value: 'not-known', label: 'Not known' },
];

export interface ScreeningItemFieldProps {
  readonly item: AskedItem;
  readonly state: ItemState;
  readonly previous: string | null;
  readonly onChange: (id: string, state: ItemState) => void;
}

const limbChoices = limbOptions.map((value) => ({ value, label: optionInWords(value) }));
const jointChoices = joints.map((value) => ({ value, label: optionInWords(value) }));

const More = ({ item, state, onChange }: Omit<ScreeningItemFieldProps, 'previous'>) => {
  const change = (more: Partial<ItemState>) => onChange(item.id, { ...state, ...more });
  return (
    <div className="screening-more stack-close">
      {item.asks.details.length > 0 ? (
        <CheckboxGroup
          name={`${item.id}-details`}
          legend="Which"
          hint="If you tick none, all of them count."
          options={item.asks.details.map(({ id, label }) => ({ value: id, label }))}
          chosen={state.details}
          onChoose={(details) => change({ details })}
        />
      ) : null}
      {item.asks.limbs ? (
        <CheckboxGroup
          name={`${item.id}-limbs`}
          legend="Which limbs"
          hint="If you tick none, every limb counts."
          isWrapped
          options={limbChoices}
          chosen={state.limbs as (typeof limbOptions)[number][]}
          onChoose={(limbs) => change({ limbs })}
        />
      ) : null}
      {item.asks.joints ? (
        <CheckboxGroup
          name={`${item.id}-joints`}
          legend="Which joints"
          hint="If you tick none, every joint counts."
          isWrapped
          options={jointChoices}
          chosen={state.joints as (typeof joints)[number][]}
          onChoose={(chosen) => change({ joints: chosen })}
        />
      ) : null}
    </div>
  );
};

/** Drawn again only when its own answer changes: the sheet is long. */
export const ScreeningItemField = memo(({ item, state, previous, onChange }: ScreeningItemFieldProps) => (
  <div className="screening-item">
    <RadioGroup
      name={item.id}
      legend={item.question}
      hint={
        <>
          {item.clinicianLabel}
          {item.mark === 'memory' && !item.clinicianLabel.includes('from memory') ? ' (from memory)' : ''}
          {previous === null ? null : (
            <>
              {' · '}
              <strong>Before: {previous}</strong>
            </>
          )}
        </>
      }
      isWrapped
      options={answers}
      chosen={state.answer}
      onChoose={(answer) => onChange(item.id, { ...state, answer })}
    />
    {asksMore(item, state) ? <More item={item} state={state} onChange={onChange} /> : null}
  </div>
));
