/** One decision, whole: what it asks, what stands until it is answered, why, and the answer. */

import { isOfWarningSign } from '#core/decision/decisions-in-force.ts';
import { stepInWords } from '#core/decision/explain.ts';
import { jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/review/decisions.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import type { Decision, Prescriptions, Proposal, Response } from '../answers.ts';
import { type ClinicClock, momentInWords } from '../when.ts';
import { contactInWords, decisionStatus, factInWords, todayInWords } from '../words.ts';
import { questionOf } from './decision-question.ts';
import { ProposalLine, ToPatient } from './proposal-line.tsx';
import { ReasonInShort, ReasonView, unknownIn } from './reason-view.tsx';
import { RespondForm } from './respond-form.tsx';
import { responseInWords } from './response-words.ts';
import { WhatWouldChange } from './what-would-change.tsx';

export interface DecisionContext {
  readonly patientId: string;
  readonly responses: readonly Response[];
  readonly proposals: readonly Proposal[];
  readonly prescriptions: Prescriptions;
  readonly signer: string;
  readonly clock: ClinicClock;
  /** A warning sign of the person that no contact has ended. */
  readonly isSignOpen: boolean;
  /** Decisions that a later one of the same day replaced. */
  readonly replaced: ReadonlySet<string>;
}

interface CardProps {
  readonly decision: Decision;
  readonly at: DecisionContext;
  /** Whether this one can still be answered; of an earlier one it is only read what was said. */
  readonly isLive: boolean;
}

/** A day as planned without a contact is what stands anyway; anything else is said. */
const MayComeOfIt = ({ decision: { largestStep, today, contact } }: Pick<CardProps, 'decision'>) => {
  const said = [
    ...(largestStep ? [say('largest-step', { step: stepInWords[largestStep] })] : []),
    ...(today === 'as-planned' && contact === 'none'
      ? []
      : [say('by-itself', { today: todayInWords[today], contact: contactInWords[contact] })]),
  ];
  return said.length === 0 ? null : <p>{said.join(' ')}</p>;
};

/** An override proposes anew: of each exercise only its last word stands. */
const newestOfItem = (proposals: readonly Proposal[]): readonly Proposal[] => [
  ...new Map(
    proposals.toSorted((a, b) => a.madeAt - b.madeAt).map((proposal) => [proposal.itemId, proposal]),
  ).values(),
];

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

/** As many as stand open; they come most restrictive first. */
const shownReasons = 3;

const Reasons = ({ decision: { reasons } }: Pick<CardProps, 'decision'>) =>
  reasons.length > 0 ? (
    <>
      <ul className="plain-list lined facts-found">
        {reasons.slice(0, shownReasons).map((reason) => (
          <ReasonInShort key={reason.rule} reason={reason} />
        ))}
      </ul>
      <Disclosure summary={say('reasons', { count: reasons.length })}>
        <ul className="plain-list reasons">
          {reasons.map((reason) => (
            <ReasonView key={reason.rule} reason={reason} />
          ))}
        </ul>
      </Disclosure>
    </>
  ) : (
    <p className="soft">{say('no-rule')}</p>
  );

const KnownAtTheTime = ({ decision }: Pick<CardProps, 'decision'>) => {
  const unknown = unknownOf(decision);
  return (
    <>
      {decision.correctedSince ? <p>{say('corrected-since')}</p> : null}
      {unknown.length > 0 ? <p>{say('unknown', { facts: unknown.join(', ') })}</p> : null}
    </>
  );
};

/** A decision that came with a warning sign is not answered: the sign asks for a contact. */
const Answer = ({
  decision,
  at,
  response,
}: Omit<CardProps, 'isLive'> & { readonly response: Response | undefined }) =>
  isOfWarningSign(decision) ? (
    <p className="screen-only">
      {say(at.isSignOpen ? 'sign-note' : 'sign-ended')}{' '}
      <a href={`/patients/${at.patientId}/warning-signs`}>
        {say(at.isSignOpen ? 'sign-contact' : 'sign-resume')}
      </a>
      .
    </p>
  ) : (
    <RespondForm
      patientId={at.patientId}
      decisionId={decision.id}
      seen={response?.id ?? null}
      isAnswered={response !== undefined}
      isWaiting={at.prescriptions.unsigned.length > 0}
    />
  );

export const DecisionCard = ({ decision, at, isLive }: CardProps) => {
  const { word, shape, tone } = decisionStatus[decision.decision];
  const proposals = newestOfItem(at.proposals.filter(({ decisionId }) => decisionId === decision.id));
  const response = at.responses.find((one) => one.decisionId === decision.id);
  return (
    <article className="decision stack-close" id={`decision-${decision.id}`} tabIndex={-1}>
      <p>
        <StatusTag shape={shape} tone={tone}>
          {word}
        </StatusTag>{' '}
        <span className="soft">
          {jointInWords(decision.joint)} · {momentInWords(decision.evaluatedAt, at.clock)},{' '}
          {say(`cause.${decision.cause}`)}
        </span>
      </p>
      <h2 className="decision-question">
        {isLive
          ? questionOf(decision, proposals, at.prescriptions.unsigned)
          : say('was', { date: momentInWords(decision.evaluatedAt, at.clock), word: word.toLowerCase() })}
      </h2>
      {isLive || response ? null : (
        <p>{say(at.replaced.has(decision.id) ? 'replaced-that-day' : 'nobody-answered')}</p>
      )}
      <MayComeOfIt decision={decision} />
      {proposals.length > 0 ? (
        <ul className="plain-list stack-close" aria-label={say('next.doses')}>
          {proposals.map((proposal) => (
            <ProposalLine key={proposal.id} proposal={proposal} at={at} />
          ))}
        </ul>
      ) : null}
      <KnownAtTheTime decision={decision} />
      {response ? <p>{responseInWords(response, at.clock)}</p> : null}
      {isLive ? <Answer decision={decision} at={at} response={response} /> : null}
      <Reasons decision={decision} />
      <ToPatient proposals={proposals} />
      <div className="screen-only">
        <WhatWouldChange patientId={at.patientId} decisionId={decision.id} />
        <a href={`/patients/${at.patientId}/review/known-then?at=${decision.evaluatedAt}`}>
          {say('known-then')}
        </a>{' '}
        <a href={`/certificate?patient=${at.patientId}&decision=${decision.id}`} download>
          {say('certificate')}
        </a>
      </div>
      <p className="soft small">{say('engine', { version: decision.engineVersion })}</p>
    </article>
  );
};
