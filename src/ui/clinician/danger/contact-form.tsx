'use client';
/** One attempt to speak with the patient. Reached: what was found and advised. Not reached: when it is tried again. */
import { useRouter } from 'next/navigation';
import { type FormEvent, useState } from 'react';
import { say } from '#messages/en/staff/danger.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import { RadioGroup } from '#ui/design-system/radio-group.tsx';
import { LongTextField, TextField } from '#ui/design-system/text-field.tsx';
import { client } from '../client.ts';
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
}

const textOf = (typed: string): string | null => typed.trim() || null;

const useContact = ({ patientId, signIds, decisionIds, againHours }: ContactFormProps) => {
  const router = useRouter();
  const [who, setWho] = useState<Who | null>(null);
  const [found, setFound] = useState('');
  const [advised, setAdvised] = useState('');
  const [referredTo, setReferredTo] = useState('');
  const [hours, setHours] = useState(String(againHours));
  const submit = useSubmit('contact-', 'contact-send');
  const onSubmit = async (event: FormEvent) => {
    event.preventDefault();
    const isReached = who === 'patient' || who === 'carer';
    const missing = [
      ...(who ? [] : [{ field: 'reached', text: say('say-who-was-reached') }]),
      ...(isReached && !textOf(found) ? [{ field: 'found', text: say('enter-what-you-found') }] : []),
      ...(isReached && !textOf(advised) ? [{ field: 'advised', text: say('enter-what-you-advised') }] : []),
    ];
    const taken = await submit.send(missing, async () => {
      await client.clinician.danger.recordContact.mutate({
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
    });
    if (taken) router.refresh();
  };
  return {
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
  <>
    <LongTextField
      name="contact-found"
      label="Found"
      value={at.found}
      error={at.submit.errorOf('found')}
      onChange={(event) => at.setFound(event.target.value)}
    />
    <LongTextField
      name="contact-advised"
      label="Advised"
      value={at.advised}
      error={at.submit.errorOf('advised')}
      onChange={(event) => at.setAdvised(event.target.value)}
    />
    <TextField
      name="contact-referredTo"
      label={say('referred-to')}
      isOptional
      value={at.referredTo}
      onChange={(event) => at.setReferredTo(event.target.value)}
    />
  </>
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
        name="contact-reached"
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
          name="contact-againInHours"
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
      <Button type="submit" id="contact-send" aria-disabled={at.submit.isBusy || undefined}>
        {say('record-contact')}
      </Button>
    </form>
  );
};
