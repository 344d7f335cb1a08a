/** What is entered, from where, and for which day. */
import { isDay } from '#core/time/day.ts';
import { say } from '#messages/en/staff/data-entry.ts';
import { DayField } from '#ui/design-system/day/day-field.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
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
      legend={say('what-are-you-entering')}
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
      legend={say('where-from')}
      error={fields.errorOf('way')}
      options={[
        { value: 'clinic-from-paper', label: say('from-paper'), hint: say('recorded-as-written') },
        { value: 'clinic-by-phone', label: say('by-phone'), hint: say('recorded-as-answered-now') },
      ]}
      chosen={way}
      onChoose={onWay}
    />
    <DayField
      name="day"
      label={say('which-day')}
      value={fields.typed.day ?? ''}
      error={fields.errorOf('day')}
      onDay={(day) => fields.onType('day', day)}
    />
  </>
);

export const missing = (kind: Kind | null, way: Way | null, typed: Typed) => [
  ...(kind === null ? [{ field: 'kind-of-entry', text: say('choose-what') }] : []),
  ...(way === null ? [{ field: 'way', text: say('choose-where-from') }] : []),
  ...(isDay(typed.day ?? '') ? [] : [{ field: 'day', text: say('enter-the-day') }]),
  ...(kind === 'session' && !typed.kind ? [{ field: 'kind', text: say('choose-the-session') }] : []),
];
