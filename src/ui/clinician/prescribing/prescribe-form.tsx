'use client';
/** Asking for a dose: the server computes it, shows its working and cautions, and nothing is kept until asked. */
import { type FormEvent, useState } from 'react';
import { exerciseById } from '#core/exercises/catalogue.ts';
import type { Method } from '#core/prescribing/methods.ts';
import { say } from '#messages/en/staff/prescribing.ts';
import { Button } from '#ui/design-system/button.tsx';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { ErrorSummary } from '#ui/design-system/error-summary.tsx';
import type { Proposed } from '../answers.ts';
import { client } from '../client.ts';
import { DescriptorFields } from '../forms/descriptor-fields.tsx';
import { readTyped, type Typed } from '../forms/typed.ts';
import { useSubmit } from '../forms/use-submit.ts';
import type { LadderRow } from './ladder-rows.ts';
import { LadderTable } from './ladder-table.tsx';
import { ProposalView } from './proposal-view.tsx';
import { askedFields, exerciseChoices, requestFrom, schemeChoices, withScheme } from './request-fields.ts';
import { SaveAndSign } from './save-and-sign.tsx';

export interface PrescribeFormProps {
  readonly patientId: string;
  readonly method: Method;
  readonly ladders: Readonly<Record<string, readonly LadderRow[]>>;
  readonly signer: string;
  /** The line a new version is written for; null for a new prescribed exercise. */
  readonly line: {
    readonly itemId: string;
    readonly exerciseId: string;
    readonly side: string;
  } | null;
}

interface Shown {
  readonly request: Readonly<Record<string, unknown>>;
  readonly proposed: Proposed;
}

const hints = {
  knownOneRepMaxKg: say('maximum-hint'),
  percent: say('percent-hint'),
  tightness: say('tightness-hint'),
};

const startOf = (line: PrescribeFormProps['line']): Typed =>
  line ? { exerciseId: line.exerciseId, side: line.side } : {};

const ShownProposal = ({ shown, of }: { readonly shown: Shown; readonly of: PrescribeFormProps }) => (
  <section className="stack proposal" aria-label={say('proposed')}>
    <h2>{say('proposed')}</h2>
    <ProposalView proposed={shown.proposed} />
    <SaveAndSign
      patientId={of.patientId}
      request={shown.request}
      itemId={of.line?.itemId ?? null}
      signer={of.signer}
    />
  </section>
);

export const PrescribeForm = (props: PrescribeFormProps) => {
  const { method, patientId } = props;
  const [typed, setTyped] = useState<Typed>(startOf(props.line));
  const [shown, setShown] = useState<Shown | null>(null);
  const submit = useSubmit('', 'propose');
  const asked = askedFields(method, typed);
  const family = exerciseById(typed.exerciseId ?? '')?.family ?? '';
  const type = (path: string, text: string) => {
    // What was proposed no longer answers what is asked.
    setShown(null);
    setTyped(withScheme(typed, path, text));
  };
  const propose = async (event: FormEvent) => {
    event.preventDefault();
    const { value, problems } = readTyped([...asked.first, ...asked.usual], typed);
    const request = requestFrom(method, value);
    await submit.send(problems, async () => {
      const proposed = await client.clinician.prescriptions.propose.mutate({ patientId, request });
      setShown({ request, proposed: proposed as Proposed });
    });
  };
  const shared = { typed, onType: type, errorOf: submit.errorOf, hints };
  const choices = { exerciseId: exerciseChoices(method), schemeId: schemeChoices };
  return (
    <div className="stack-wide">
      <form method="post" className="stack" noValidate onSubmit={(event) => void propose(event)}>
        <ErrorSummary problems={submit.problems} />
        <DescriptorFields {...shared} fields={asked.first} choices={choices} />
        {method === 'variation' && props.ladders[family] ? (
          <LadderTable
            rows={props.ladders[family]}
            chosen={typed.exerciseId ?? ''}
            onChoose={(id) => type('exerciseId', id)}
          />
        ) : null}
        <Disclosure summary={say('defaults')}>
          <DescriptorFields {...shared} fields={asked.usual} />
        </Disclosure>
        <Button type="submit" id="propose" aria-disabled={submit.isBusy || undefined}>
          {submit.isBusy ? 'Computing…' : say('propose')}
        </Button>
      </form>
      {shown ? <ShownProposal shown={shown} of={props} /> : null}
    </div>
  );
};
