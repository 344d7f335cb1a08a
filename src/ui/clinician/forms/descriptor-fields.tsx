'use client';
/** The fields of a form, drawn from a descriptor. Nothing is preselected; bounds stand beside the field. */
import { unitWords } from '#api/inputs/unit-words.ts';
import type { NumberField as NumberDescriptor } from '#core/calculations/describe.ts';
import { say } from '#messages/en/staff/clinic.ts';
import { CheckboxGroup } from '#ui/design-system/checkbox-group.tsx';
import { DateTimeField } from '#ui/design-system/day/date-time-field.tsx';
import { BirthDayField, DayField } from '#ui/design-system/day/day-field.tsx';
import { NumberField } from '#ui/design-system/number-field.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { SelectField } from '#ui/design-system/select-field.tsx';
import { LongTextField, TextField } from '#ui/design-system/text-field.tsx';
import { type FieldsProps, type OneProps, wordsOf } from './field-props.ts';
import { labelOf, optionInWords } from './field-words.ts';
import { NumberHint } from './number-hint.tsx';
import { isAsked, linesOf, noneOfThese, notAnswered } from './typed.ts';

const NumberOf = (props: OneProps & { readonly field: NumberDescriptor }) => {
  const { at, hint, ...words } = wordsOf(props);
  return (
    <NumberField
      {...words}
      hint={<NumberHint field={props.field} typed={props.typed[at] ?? ''} hint={hint} />}
      unit={unitWords(props.field.unit) || undefined}
      isWhole={props.field.kind === 'integer'}
      value={props.typed[at] ?? ''}
      onChange={(event) => props.onType(at, event.target.value)}
    />
  );
};

const fewOptions = 4;
/** An address for email is the longest text that is one line. */
const longestLine = 254;

const ChoiceOf = (
  props: OneProps & { readonly options: readonly { readonly value: string; readonly label: string }[] },
) => {
  const { at, label, isOptional, ...words } = wordsOf(props);
  const chosen = props.typed[at] ?? '';
  const legend = isOptional ? say('optional', { label }) : label;
  return props.options.length <= fewOptions ? (
    <RadioGroup
      {...words}
      legend={legend}
      isWrapped
      options={props.options}
      chosen={chosen || null}
      onChoose={(value) => props.onType(at, value)}
    />
  ) : (
    <SelectField
      {...words}
      label={label}
      isOptional={isOptional}
      options={props.options}
      value={chosen}
      onChange={(event) => props.onType(at, event.target.value)}
    />
  );
};

const TextOf = (props: OneProps & { readonly isLong: boolean; readonly hintText?: string }) => {
  const { at, hint, ...words } = wordsOf(props);
  const shared = {
    ...words,
    hint: hint ?? props.hintText,
    value: props.typed[at] ?? '',
    autoComplete: 'off',
  };
  return props.isLong ? (
    <LongTextField {...shared} onChange={(event) => props.onType(at, event.target.value)} />
  ) : (
    <TextField {...shared} onChange={(event) => props.onType(at, event.target.value)} />
  );
};

const DayOf = (props: OneProps & { readonly isBirth: boolean }) => {
  const { at, ...words } = wordsOf(props);
  const Field = props.isBirth ? BirthDayField : DayField;
  return <Field {...words} value={props.typed[at] ?? ''} onDay={(day) => props.onType(at, day)} />;
};

const DateTimeOf = (props: OneProps & { readonly mayLackTime: boolean }) => {
  const { at, ...words } = wordsOf(props);
  return (
    <DateTimeField
      {...words}
      mayLackTime={props.mayLackTime}
      value={props.typed[at] ?? ''}
      onDateTime={(text) => props.onType(at, text)}
    />
  );
};

const SeveralOf = (props: OneProps & { readonly values: readonly string[] }) => {
  const { at, label, isOptional: _isOptional, ...words } = wordsOf(props);
  const known = new Map(props.choices?.[props.field.name]?.map(({ value, label }) => [value, label]));
  const options = props.values.map((value) => ({ value, label: known.get(value) ?? optionInWords(value) }));
  const apart = [
    { value: noneOfThese, label: say('none-of-these'), isApart: true },
    { value: notAnswered, label: say('asked-not-answered'), isApart: true },
  ];
  return (
    <CheckboxGroup
      {...words}
      legend={label}
      isWrapped
      options={props.field.nullable ? [...options, ...apart] : options}
      chosen={linesOf(props.typed[at] ?? '')}
      onChoose={(values) => props.onType(at, values.join('\n'))}
    />
  );
};

const yesNo = [
  { value: 'yes', label: 'Yes' },
  { value: 'no', label: 'No' },
] as const;

const optionsFor = (values: readonly string[]) =>
  values.map((value) => ({ value, label: optionInWords(value) }));

const OneField = (props: OneProps) => {
  const { field } = props;
  const known = props.choices?.[field.name];
  if (known && field.kind !== 'list') return <ChoiceOf {...props} options={known} />;
  switch (field.kind) {
    case 'number':
    case 'integer':
      return <NumberOf {...props} field={field} />;
    case 'enum':
      return <ChoiceOf {...props} options={optionsFor([...field.values, ...(field.also ?? [])])} />;
    case 'flag':
      return <ChoiceOf {...props} options={yesNo} />;
    case 'text':
      return <TextOf {...props} isLong={field.maxLength > longestLine} />;
    case 'day':
      return <DayOf {...props} isBirth={field.isBirth ?? false} />;
    case 'date-time':
      return <DateTimeOf {...props} mayLackTime={field.mayLackTime ?? false} />;
    case 'list':
      if (props.several?.[field.name]) return <SeveralOf {...props} values={props.several[field.name]!} />;
      if (field.of.kind === 'enum') return <SeveralOf {...props} values={field.of.values} />;
      return field.of.kind === 'record' ? (
        <TextOf
          {...props}
          isLong
          hintText={say('rows-one-per-line', { fields: field.of.fields.map(labelOf).join(', ') })}
        />
      ) : (
        <TextOf {...props} isLong={false} hintText={say('numbers-separated-by-spaces')} />
      );
    case 'record':
      return (
        <fieldset className="fields-group">
          <legend className="field-legend">{labelOf(field)}</legend>
          <DescriptorFields {...props} fields={field.fields} path={`${props.path ?? ''}${field.name}.`} />
        </fieldset>
      );
  }
};

export const DescriptorFields = (props: FieldsProps) => (
  <div className="fields">
    {props.fields
      .filter((field) => isAsked(field, props.typed, props.path ?? ''))
      .map((field) => (
        <OneField key={field.name} {...props} field={field} />
      ))}
  </div>
);
