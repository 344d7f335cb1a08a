/** What is entered, from where, and for which day. */
import { boundField } from '#ui/design-system/bound-field.ts';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import type { Typed } from './answers.ts';
import type { FieldsProps } from './joint-fields.tsx';

export type Kind = 'session' | 'morning';
export type Way = 'clinic-from-paper' | 'clinic-by-phone';

interface HeadProps {
  readonly kind: Kind | null;
  readonly way: Way | null;
  readonly onKind: (kind: Kind) => void;
  readonly onWay: (way: Way) => void;
}

export const Head = ({ kind, way, onKind, onWay, ...fields }: FieldsProps & HeadProps) => (
  <>
    <RadioGroup<Kind>
      name="kind-of-entry"
      legend="What are you entering?"
      error={fields.errorOf('kind-of-entry')}
      options={[
        { value: 'session', label: 'A session' },
        { value: 'morning', label: 'A morning' },
      ]}
      chosen={kind}
      onChoose={onKind}
    />
    <RadioGroup<Way>
      name="way"
      legend="Where do the answers come from?"
      error={fields.errorOf('way')}
      options={[
        { value: 'clinic-from-paper', label: 'From paper', hint: 'Recorded as written on that day.' },
        { value: 'clinic-by-phone', label: 'By phone', hint: 'Recorded as answered now.' },
      ]}
      chosen={way}
      onChoose={onWay}
    />
    <TextField {...boundField(fields, 'day')} type="date" label="Which day are the answers for?" />
  </>
);

export const missing = (kind: Kind | null, way: Way | null, typed: Typed) => [
  ...(kind === null ? [{ field: 'kind-of-entry', text: 'Choose what you are entering.' }] : []),
  ...(way === null ? [{ field: 'way', text: 'Choose where the answers come from.' }] : []),
  ...(typed.day ? [] : [{ field: 'day', text: 'Enter the day the answers are for.' }]),
  ...(kind === 'session' && !typed.kind ? [{ field: 'kind', text: 'Choose which session was done.' }] : []),
];
