/** What was proposed, read from its heading on, with the signature under what changes the dose. */
import { type ReactNode, useEffect, useRef, useState } from 'react';
import type { Joint } from '#core/exercises/joints.ts';
import { dosesBeside } from '#core/prescribing/beside.ts';
import { say } from '#messages/en/staff/prescribing.ts';
import type { Proposed } from '../answers.ts';
import type { Held } from './held.ts';
import type { PrescribeFormProps } from './prescribe-form-props.ts';
import { ProposalCard } from './proposal-card.tsx';
import { SignProposal } from './sign-proposal.tsx';

export interface ShownProposal {
  readonly request: Readonly<Record<string, unknown>>;
  readonly proposed: Proposed;
  /** As it was proposed beside: once signed, the new version is the one in force. */
  readonly inForce: PrescribeFormProps['inForce'];
}

export const ProposalResult = (props: {
  readonly shown: ShownProposal;
  readonly patientId: string;
  readonly signer: string;
  readonly held: readonly Held[];
  readonly readAt: number;
  readonly allInForce: PrescribeFormProps['allInForce'];
  readonly usualPainUnknown?: readonly Joint[];
  readonly plannedDays?: number | null;
  readonly onKept: () => void;
  readonly onSigned?: () => void;
  /** What to do once it is signed. */
  readonly next?: ReactNode;
}) => {
  const { shown } = props;
  const [isSigned, setSigned] = useState(false);
  const heading = useRef<HTMLHeadingElement>(null);
  useEffect(() => heading.current?.focus(), []);
  return (
    <section className="proposal" aria-labelledby="proposal-heading">
      <h2 id="proposal-heading" ref={heading} tabIndex={-1} className="visually-hidden">
        {say('proposed')}
      </h2>
      <ProposalCard
        proposed={shown.proposed}
        inForce={shown.inForce}
        beside={dosesBeside(shown.proposed.dose, shown.inForce?.itemId ?? null, props.allInForce)}
        held={props.held}
        isSigned={isSigned}
        usualPainUnknown={props.usualPainUnknown}
        plannedDays={props.plannedDays}
      >
        <SignProposal
          patientId={props.patientId}
          request={shown.request}
          proposed={shown.proposed}
          inForce={shown.inForce}
          signer={props.signer}
          readAt={props.readAt}
          onKept={props.onKept}
          onSigned={() => {
            setSigned(true);
            props.onSigned?.();
          }}
          next={props.next}
        />
      </ProposalCard>
    </section>
  );
};
