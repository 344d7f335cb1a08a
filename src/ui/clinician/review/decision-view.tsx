/** One decision, whole: its answers, every reason, what it was not told, what follows, what a clinician said. */

import { isOfWarningSign } from '#core/decision/decisions-in-force.ts';
import { stepInWords } from '#core/decision/explain.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/review.ts';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import type { Decision, Prescriptions, Proposal, Response } from '../answers.ts';
import { doseInWords, doseTitle } from '../dose-words.ts';
import { SignButton } from '../prescribing/sign-button.tsx';
import { type ClinicClock, momentInWords } from '../when.ts';
import { contactInWords, decisionStatus, factInWords, todayInWords } from '../words.ts';
import { ReasonView, unknownIn } from './reason-view.tsx';
import { RespondForm } from './respond-form.tsx';
import { WhatWouldChange } from './what-would-change.tsx';

export interface DecisionContext {
  readonly patientId: string;
  readonly responses: readonly Response[];
  readonly proposals: readonly Proposal[];
  readonly prescriptions: Prescriptions;
  readonly signer: string;
  readonly clock: ClinicClock;
}

const sentence = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const causeInWords: Readonly<Record<Decision['cause'], string>> = {
  session: say('cause.session'),
  morning: say('cause.morning'),
  amendment: say('cause.amendment'),
  clinician: say('cause.clinician'),
};

const effectInWords: Readonly<Record<Proposal['effect'], string>> = {
  'acts-at-once': say('effect.acts-at-once'),
  'awaits-signature': say('effect.awaits-signature'),
  repeat: say('effect.repeat'),
};

const ProposalLine = ({ proposal, at }: { readonly proposal: Proposal; readonly at: DecisionContext }) => {
  const waiting = at.prescriptions.unsigned.find(
    (version) => version.itemId === proposal.itemId && version.decisionId === proposal.decisionId,
  );
  return (
    <li className="stack-close">
      <p>
        <strong>{doseTitle(proposal.dose)}</strong>: {effectInWords[proposal.effect]}.{' '}
        {proposal.changes.join(' ')}
      </p>
      {proposal.effect === 'repeat' ? null : <p className="soft">{doseInWords(proposal.dose)}</p>}
      <p className="soft">{say('to-patient', { text: proposal.toPatient })}</p>
      {waiting ? (
        <SignButton
          patientId={at.patientId}
          prescriptionId={waiting.id}
          signer={at.signer}
          title={doseTitle(waiting.dose)}
        />
      ) : null}
    </li>
  );
};

export const responseInWords = (response: Response, clock: ClinicClock): string => {
  const by = say('answered-by', {
    name: response.answeredName,
    time: momentInWords(response.answeredAt, clock),
  });
  if (response.kind === 'accept') return say('accepted', { by });
  const word = response.decision
    ? decisionStatus[response.decision].word.toLowerCase()
    : say('another-answer');
  return say('overridden', { word, until: response.until ?? '', by, reason: response.reason });
};

/** Reasons that decided first, then those that agree with less. */
const unknownOf = (decision: Decision): readonly string[] => {
  const missing = decision.reasons.flatMap((reason) =>
    Array.isArray(reason.observed.missing) ? (reason.observed.missing as string[]) : [],
  );
  return [
    ...new Set([
      ...missing.map((name) => factInWords(String(name))),
      ...decision.reasons.flatMap((row) => unknownIn(row.observed)),
    ]),
  ];
};

const Reasons = ({ decision }: { readonly decision: Decision }) =>
  decision.reasons.length > 0 ? (
    <ul className="plain-list reasons">
      {decision.reasons.map((reason) => (
        <ReasonView key={reason.rule} reason={reason} />
      ))}
    </ul>
  ) : (
    <p className="soft">{say('no-rule')}</p>
  );

const KnownAtTheTime = ({ decision }: { readonly decision: Decision }) => {
  const unknown = unknownOf(decision);
  return (
    <>
      {decision.correctedSince ? <p>{say('corrected-since')}</p> : null}
      {unknown.length > 0 ? <p>{say('unknown', { facts: unknown.join(', ') })}</p> : null}
    </>
  );
};

/** A decision that came with a warning sign is not answered: the sign asks for a contact. */
const Answer = (props: {
  readonly decision: Decision;
  readonly patientId: string;
  readonly seen: string | null;
}) =>
  isOfWarningSign(props.decision) ? (
    <p className="screen-only">
      {say('sign-note')} <a href={`/patients/${props.patientId}/warning-signs`}>{say('sign-contact')}</a>.
    </p>
  ) : (
    <RespondForm patientId={props.patientId} decisionId={props.decision.id} seen={props.seen} />
  );

export const DecisionView = ({
  decision,
  at,
}: {
  readonly decision: Decision;
  readonly at: DecisionContext;
}) => {
  const { word, shape, tone } = decisionStatus[decision.decision];
  const proposals = at.proposals.filter((proposal) => proposal.decisionId === decision.id);
  const response = at.responses.find((one) => one.decisionId === decision.id);
  return (
    <article className="decision stack-close" id={`decision-${decision.id}`} tabIndex={-1}>
      <h3>
        <StatusTag shape={shape} tone={tone}>
          {word}
        </StatusTag>{' '}
        {jointInWords(decision.joint)},{' '}
        <span className="soft">
          {momentInWords(decision.evaluatedAt, at.clock)}, {causeInWords[decision.cause]}
        </span>
      </h3>
      <p>
        {decision.largestStep ? `${say('largest-step', { step: stepInWords[decision.largestStep] })} ` : ''}
        {sentence(`${todayInWords[decision.today]}; ${contactInWords[decision.contact]}.`)}
      </p>
      <Reasons decision={decision} />
      <KnownAtTheTime decision={decision} />
      {proposals.length > 0 ? (
        <>
          <h4>{say('next.doses')}</h4>
          <ul className="plain-list stack-close">
            {proposals.map((proposal) => (
              <ProposalLine key={proposal.id} proposal={proposal} at={at} />
            ))}
          </ul>
        </>
      ) : null}
      <WhatWouldChange patientId={at.patientId} decisionId={decision.id} />
      {response ? <p>{responseInWords(response, at.clock)}</p> : null}
      <Answer decision={decision} patientId={at.patientId} seen={response?.id ?? null} />
      <p className="soft">{say('engine', { version: decision.engineVersion })}</p>
    </article>
  );
};
