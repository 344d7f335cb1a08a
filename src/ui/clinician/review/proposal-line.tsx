/** A dose that came of a decision: what changes, the whole of it, its signature where it waits for one. */
import { sameAgain } from '#core/prescribing/changes-in-words.ts';
import { say } from '#messages/en/staff/review/decisions.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { Prescriptions, Proposal } from '../answers.ts';
import { doseInWords, doseTitle } from '../dose-words.ts';
import { SignButton } from '../prescribing/sign-button.tsx';
import type { ClinicClock } from '../when.ts';

/** What comes of it and what changes; nobody is told of the same dose twice, or of a dose where there is no session. */
const effectInWords = ({ kind, effect, changes }: Proposal): string => {
  const others = changes.filter((change) => change !== sameAgain);
  return kind === 'stop' ? others.join(' ') : [`${say(`effect.${effect}`)}.`, ...others].join(' ');
};

interface LineProps {
  readonly proposal: Proposal;
  readonly at: {
    readonly patientId: string;
    readonly prescriptions: Prescriptions;
    readonly signer: string;
    readonly clock: ClinicClock;
  };
}

export const ProposalLine = ({ proposal, at }: LineProps) => {
  const isToSign = proposal.effect === 'awaits-signature';
  const unsigned = at.prescriptions.unsigned.filter(({ itemId }) => isToSign && itemId === proposal.itemId);
  const waiting = unsigned.find(({ decisionId }) => decisionId === proposal.decisionId);
  return (
    <li className="stack-close">
      <p>
        <strong>{doseTitle(proposal.dose)}</strong>: {effectInWords(proposal)}
      </p>
      {proposal.effect === 'repeat' ? null : <p className="soft">{doseInWords(proposal.dose)}</p>}
      {waiting ? (
        <SignButton
          patientId={at.patientId}
          prescriptionId={waiting.id}
          signer={at.signer}
          title={doseTitle(waiting.dose)}
          readAt={at.clock.now}
        />
      ) : unsigned.length > 0 ? (
        <p>
          {say('waits-elsewhere')}{' '}
          <a href={`/patients/${at.patientId}/prescriptions#unsigned`}>{say('waits-link')}</a>
        </p>
      ) : null}
    </li>
  );
};

/** What the patient reads of it, in the patient's words. */
export const ToPatient = ({ proposals }: { readonly proposals: readonly Proposal[] }) =>
  proposals.length === 0 ? null : (
    <Disclosure summary={say('to-patient')}>
      <ul className="plain-list stack-close">
        {proposals.map(({ id, toPatient }) => (
          <li key={id}>“{toPatient}”</li>
        ))}
      </ul>
    </Disclosure>
  );
