/** One page for the colleague. It repeats the record, in the order in which it is needed. */

import { degreesAllowed } from '#core/episode/limit-degrees.ts';
import { dayInWords, jointInWords, listed } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { PlanView } from '#ui/clinician/danger/plan-view.tsx';
import { doseInWords, doseTitle } from '#ui/clinician/dose-words.ts';
import { type ClinicClock, momentInWords } from '#ui/clinician/when.ts';
import { decisionStatus, methodInWords } from '#ui/clinician/words.ts';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import type { Colleagues, HandoverAnswer } from '../episode/answers.ts';
import { stateInWords } from '../episode/episode-words.ts';
import { OwnPauseForm } from './own-pause-form.tsx';

export interface HandoverProps {
  readonly patientId: string;
  readonly handover: HandoverAnswer;
  readonly colleagues: Colleagues;
  readonly clock: ClinicClock;
  readonly day: Day;
}

const Empty = ({ children }: { readonly children: string }) => <p className="soft">{children}</p>;

const Dangers = ({ handover, clock }: HandoverProps) => (
  <section className="stack-close wide">
    <h3>Urgent</h3>
    {handover.dangers.length === 0 ? <Empty>None open.</Empty> : null}
    <ul>
      {handover.dangers.map((danger) => (
        <li key={danger.key}>
          <StatusTag shape="stop" tone="danger">
            {danger.acknowledgedBy ? 'Acknowledged' : 'Not acknowledged'}
          </StatusTag>{' '}
          {danger.sentence}{' '}
          <span className="soft">
            Since {momentInWords(danger.since, clock)}.{' '}
            {danger.acknowledgedBy ? `By ${danger.acknowledgedBy}. ` : ''}
            {danger.assignedName ? `With ${danger.assignedName}.` : 'Nobody has taken it.'}
          </span>
        </li>
      ))}
    </ul>
    <p className="soft">
      {handover.coveringClinician
        ? `Urgent items not acknowledged in time pass to ${handover.coveringClinician.name}.`
        : 'No covering clinician is named. Urgent items not acknowledged in time pass to nobody.'}
    </p>
  </section>
);

const Pauses = ({ handover, patientId, colleagues, clock, day }: HandoverProps) => (
  <section className="stack-close">
    <h3>Pauses and who follows them up</h3>
    {handover.pauses.length === 0 ? <Empty>No joint is paused.</Empty> : null}
    <ul>
      {handover.pauses.map(({ decisionId, joint, since, owner }) => (
        <li key={decisionId} className="stack-close">
          <p>
            <strong>{jointInWords(joint)}</strong>, paused {momentInWords(since, clock)}.{' '}
            {owner
              ? `${owner.name} follows it up until ${dayInWords(owner.until, day)}${owner.isOver ? '; that day has passed' : ''}.`
              : 'Nobody follows it up.'}
          </p>
          <OwnPauseForm patientId={patientId} decisionId={decisionId} colleagues={colleagues} />
        </li>
      ))}
    </ul>
  </section>
);

const untilWords = (to: Day | null, isExpired: boolean, day: Day): string =>
  to === null
    ? 'until lifted'
    : `${isExpired ? 'ended' : 'until'} ${dayInWords(to, day)}${isExpired ? '; it still applies until it is reviewed' : ''}`;

const Limits = ({ handover, day }: HandoverProps) => (
  <section className="stack-close">
    <h3>Limits</h3>
    {handover.limits.length === 0 ? <Empty>None in force.</Empty> : null}
    <ul>
      {handover.limits.map((limit) => (
        <li key={`${limit.joint} ${limit.kind} ${limit.from}`}>
          <strong>{jointInWords(limit.joint)}</strong>: {limit.kind.replace('-', ' ')}
          {limit.limitKg === null ? '' : `, no more than ${limit.limitKg} kg`}
          {degreesAllowed(limit)}, {untilWords(limit.to, limit.isExpired, day)}.{' '}
          <span className="soft">Set by {limit.author}.</span>
        </li>
      ))}
    </ul>
  </section>
);

const clearedWords = {
  clinician: 'A clinician may clear it.',
  physician: 'A physician must clear it.',
} as const;

const IneligibleMethods = ({ handover }: HandoverProps) => (
  <section className="stack-close wide">
    <h3>Methods not available, and why</h3>
    {handover.closed.length === 0 ? <Empty>No method is contraindicated or needs clearance.</Empty> : null}
    <ul>
      {handover.closed.map((line) => (
        <li key={`${line.method} ${line.text}`}>
          <strong>{methodInWords[line.method]}</strong>: {line.text}{' '}
          <span className="soft">
            {line.limbs.length === 4
              ? 'Every limb. '
              : `${listed(line.limbs.map(({ limb, side }) => `${side} ${limb}`))}. `}
            {line.clearedBy ? clearedWords[line.clearedBy] : ''}
          </span>
        </li>
      ))}
    </ul>
  </section>
);

const Decisions = ({ handover, clock, day }: HandoverProps) => (
  <section className="stack-close">
    <h3>Last three decisions</h3>
    {handover.decisions.length === 0 ? <Empty>None yet.</Empty> : null}
    <ul>
      {handover.decisions.map((row) => {
        const { word, shape, tone } = decisionStatus[row.decision];
        return (
          <li key={row.id}>
            <StatusTag shape={shape} tone={tone}>
              {word}
            </StatusTag>{' '}
            {jointInWords(row.joint)}, {momentInWords(row.evaluatedAt, clock)}.{' '}
            <span className="soft">
              {row.reasons.length === 0
                ? 'No rule prevented progress. '
                : `${listed(row.reasons.map((reason) => `${reason.rule} (${reason.threshold})`))}. `}
              {row.answer ? `Answered by ${row.answer.answeredName}.` : 'Not accepted or overridden yet.'}
            </span>
          </li>
        );
      })}
    </ul>
    <h4>Overrides</h4>
    {handover.overrides.length === 0 ? <Empty>No override is in force.</Empty> : null}
    <ul>
      {handover.overrides.map((row) => (
        <li key={`${row.joint} ${row.until}`}>
          <strong>{jointInWords(row.joint)}</strong>: {decisionStatus[row.instead].word} instead of{' '}
          {decisionStatus[row.engine].word}, until {dayInWords(row.until, day)}.{' '}
          <span className="soft">
            {row.by}: {row.reason}
          </span>
        </li>
      ))}
    </ul>
  </section>
);

const Doses = ({ handover }: HandoverProps) => (
  <section className="stack-close">
    <h3>Not signed yet</h3>
    {handover.unsigned.length === 0 ? <Empty>No prescription needs signing.</Empty> : null}
    <ul>
      {handover.unsigned.map(({ id, dose }) => (
        <li key={id}>
          <strong>{doseTitle(dose)}</strong>: {doseInWords(dose)}.
        </li>
      ))}
    </ul>
    <h4>In force</h4>
    {handover.inForce.length === 0 ? <Empty>No prescription is in force.</Empty> : null}
    <ul>
      {handover.inForce.map(({ id, dose, signedName }) => (
        <li key={id}>
          <strong>{doseTitle(dose)}</strong>: {doseInWords(dose)}.{' '}
          <span className="soft">Signed by {signedName}.</span>
        </li>
      ))}
    </ul>
  </section>
);

const careWords = ({ state, change }: HandoverAnswer['episodeStatus'], day: Day): string =>
  state === 'not-recorded' || !change
    ? 'No episode of care is recorded.'
    : `${stateInWords[change.to]} since ${dayInWords(change.on, day)}: ${change.reason}`;

export const HandoverScreen = (props: HandoverProps) => (
  <div className="stack-wide">
    <p className="lead">{careWords(props.handover.episodeStatus, props.day)}</p>
    <div className="handover">
      <Dangers {...props} />
      <PlanView plan={props.handover.plan} clock={props.clock} />
      <Pauses {...props} />
      <Limits {...props} />
      <IneligibleMethods {...props} />
      <Decisions {...props} />
      <Doses {...props} />
    </div>
  </div>
);
