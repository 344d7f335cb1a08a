'use client';
/** One attempt to speak with the patient. Reached: what was found and advised. Not reached: when it is tried again. */
import { useRouter } from 'next/navigation';
import { say } from '#messages/en/staff/danger.ts';
import { boundField } from '#ui/design-system/bound-field.ts';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { PostedForm } from '#ui/design-system/posted/posted-form.tsx';
import { SendButton } from '#ui/design-system/posted/scripted-form.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { LongTextField, TextField } from '#ui/design-system/text-field.tsx';
import { recordContact } from '../forms/sent/danger.ts';
import { listText } from '../forms/sent/sent-form.ts';
import { type TypedForm, useSent } from '../forms/use-form.ts';

const whoReached = [
  { value: 'patient', label: say('the-patient') },
  { value: 'carer', label: say('carer') },
  { value: 'nobody', label: 'Nobody' },
] as const;
type Who = (typeof whoReached)[number]['value'];

const inHours = [1, 2, 4, 24] as const;

export interface ContactFormProps {
  readonly patientId: string;
  readonly signIds: readonly string[];
  readonly decisionIds: readonly string[];
  /** Hours after which a failed attempt is tried again, as proposed. */
  readonly againHours: number;
  /** Longest it may wait. */
  readonly mostHours: number;
  /** Told of the contact once it is on record, in place of reading the page anew; hours = nobody was reached. */
  readonly onRecorded?: (contactId: string, againInHours: number | null) => void;
}

const fieldOf = (at: TypedForm, name: string) => ({
  ...boundField(at, name),
  name: `${at.prefix}${name}`,
});

const Reached = ({ at }: { readonly at: TypedForm }) => (
  <div className="contact-said">
    <LongTextField {...fieldOf(at, 'found')} label="Found" />
    <LongTextField {...fieldOf(at, 'advised')} label="Advised" />
    <TextField {...fieldOf(at, 'referredTo')} label={say('referred-to')} isOptional />
  </div>
);

const hoursWith = (againHours: number, mostHours: number) =>
  [...new Set([againHours, mostHours, ...inHours])]
    .filter((count) => count <= mostHours)
    .toSorted((a, b) => a - b)
    .map((count) => ({ value: String(count), label: say('hours', { count }) }));

export const ContactForm = (props: ContactFormProps) => {
  const router = useRouter();
  const { patientId, onRecorded, mostHours } = props;
  const againHours = Math.min(props.againHours, mostHours);
  const about = { patientId, signIds: listText(props.signIds), decisionIds: listText(props.decisionIds) };
  const { at } = useSent({
    sent: recordContact,
    about,
    start: { againInHours: String(againHours) },
    onTaken: (contactId) => (onRecorded ? onRecorded(String(contactId), again) : router.refresh()),
  });
  const who = (at.typed.reached || null) as Who | null;
  const again = who === 'nobody' ? Number(at.typed.againInHours) : null;
  return (
    <PostedForm
      form={recordContact.name}
      about={about}
      className="stack-close screen-only"
      onSubmit={at.onSubmit}
    >
      <ErrorSummary problems={at.submit.problems} />
      <RadioGroup
        name={`${at.prefix}reached`}
        legend="Reached"
        isWrapped
        options={whoReached}
        chosen={who}
        error={at.errorOf('reached')}
        onChoose={(value) => at.onType('reached', value)}
      />
      {who === 'patient' || who === 'carer' ? <Reached at={at} /> : null}
      {who === 'nobody' ? (
        <RadioGroup
          name={`${at.prefix}againInHours`}
          legend={say('try-again-in')}
          isWrapped
          options={hoursWith(againHours, mostHours)}
          chosen={at.typed.againInHours ?? null}
          error={at.errorOf('againInHours')}
          onChoose={(value) => at.onType('againInHours', value)}
        />
      ) : null}
      <SendButton id={at.buttonId} aria-disabled={at.submit.isBusy || undefined}>
        {say('record-contact')}
      </SendButton>
    </PostedForm>
  );
};
