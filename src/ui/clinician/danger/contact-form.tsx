'use client';
/** One attempt to speak with the patient. Reached: what was found and advised. Not reached: when it is tried again. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { longestFinding } from '#core/danger/danger-fields.ts';
import { say } from '#messages/en/staff/danger.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { LongTextField, TextField } from '#ui/design-system/text-field.tsx';
import { client } from '../client.ts';
import { tooLong } from '../forms/typed.ts';
import { useSubmit } from '../forms/use-submit.ts';

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
  /** Stands before every id, so that several forms can share a page. */
  readonly prefix?: string;
  /** Told of the contact once it is on record, in place of reading the page anew. */
  readonly onRecorded?: (contactId: string) => void;
}

const textOf = (typed: string): string | null => typed.trim() || null;

const problemsOf = (found: string, advised: string) =>
  [
    { field: 'found', label: 'Found', text: found.trim(), missing: say('enter-what-you-found') },
    { field: 'advised', label: 'Advised', text: advised.trim(), missing: say('enter-what-you-advised') },
  ].flatMap(({ field, label, text, missing }) => {
    if (text === '') return [{ field, text: missing }];
    return text.length > longestFinding ? [{ field, text: tooLong(label, text.length, longestFinding) }] : [];
  });

const useContact = (props: ContactFormProps) => {
  const { patientId, signIds, decisionIds, againHours, prefix = 'contact-', onRecorded } = props;
  const router = useRouter();
  const [who, setWho] = useState<Who | null>(null);
  const [found, setFound] = useState('');
  const [advised, setAdvised] = useState('');
  const [referredTo, setReferredTo] = useState('');
  const [hours, setHours] = useState(String(againHours));
  const submit = useSubmit(prefix, `${prefix}send`);
  const onSubmit = async (event: FormEvent) => {
    event.preventDefault();
    const isReached = who === 'patient' || who === 'carer';
    const missing = [
      ...(who ? [] : [{ field: 'reached', text: say('say-who-was-reached') }]),
      ...(isReached ? problemsOf(found, advised) : []),
    ];
    await submit.send(missing, async () => {
      const contactId = await client.clinician.danger.recordContact.mutate({
        patientId,
        contact: {
          signIds,
          decisionIds,
          reached: who,
          found: isReached ? textOf(found) : null,
          advised: isReached ? textOf(advised) : null,
          referredTo: isReached ? textOf(referredTo) : null,
          againInHours: isReached ? null : Number(hours),
        },
      });
      if (onRecorded) onRecorded(contactId);
      else router.refresh();
    });
  };
  return {
    prefix,
    who,
    setWho,
    found,
    setFound,
    advised,
    setAdvised,
    referredTo,
    setReferredTo,
    hours,
    setHours,
    submit,
    onSubmit,
  };
};

type Contact = ReturnType<typeof useContact>;

const Reached = ({ at }: { readonly at: Contact }) => (
  <div className="contact-said">
    <LongTextField
      name={`${at.prefix}found`}
      label="Found"
      value={at.found}
      error={at.submit.errorOf('found')}
      onChange={(event) => at.setFound(event.target.value)}
    />
    <LongTextField
      name={`${at.prefix}advised`}
      label="Advised"
      value={at.advised}
      error={at.submit.errorOf('advised')}
      onChange={(event) => at.setAdvised(event.target.value)}
    />
    <TextField
      name={`${at.prefix}referredTo`}
      label={say('referred-to')}
      isOptional
      value={at.referredTo}
      onChange={(event) => at.setReferredTo(event.target.value)}
    />
  </div>
);

export const ContactForm = (props: ContactFormProps) => {
  const at = useContact(props);
  return (
    <form
      method="post"
      className="stack-close screen-only"
      noValidate
      onSubmit={(event) => void at.onSubmit(event)}
    >
      <ErrorSummary problems={at.submit.problems} />
      <RadioGroup
        name={`${at.prefix}reached`}
        legend="Reached"
        isWrapped
        options={whoReached}
        chosen={at.who}
        error={at.submit.errorOf('reached')}
        onChoose={at.setWho}
      />
      {at.who === 'patient' || at.who === 'carer' ? <Reached at={at} /> : null}
      {at.who === 'nobody' ? (
        <RadioGroup
          name={`${at.prefix}againInHours`}
          legend={say('try-again-in')}
          isWrapped
          options={[...new Set([props.againHours, ...inHours])]
            .toSorted((a, b) => a - b)
            .map((count) => ({
              value: String(count),
              label: say('hours', { count }),
            }))}
          chosen={at.hours}
          error={at.submit.errorOf('againInHours')}
          onChoose={at.setHours}
        />
      ) : null}
      <Button type="submit" id={`${at.prefix}send`} aria-disabled={at.submit.isBusy || undefined}>
        {say('record-contact')}
      </Button>
    </form>
  );
};
