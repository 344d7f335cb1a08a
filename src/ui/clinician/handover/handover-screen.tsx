/** One page for the colleague. It repeats the record, in the order in which it is needed. */

import { boundInWords } from '#core/episode/limit-degrees.ts';
import { dayInWords, jointInWords, listed } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/handover.ts';
import { PlanView } from '#ui/clinician/danger/plan-view.tsx';
import { type ClinicClock, momentInWords } from '#ui/clinician/when.ts';
import { decisionStatus, methodInWords } from '#ui/clinician/words.ts';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import type { Colleagues, HandoverAnswer } from '../episode/answers.ts';
import { stateInWords } from '../episode/episode-words.ts';
import { Doses } from './handover-doses.tsx';
import { OwnPauseForm } from './own-pause-form.tsx';

export interface HandoverProps {
  readonly patientId: string;
  readonly handover: HandoverAnswer;
  readonly colleagues: Colleagues;
  readonly clock: ClinicClock;
  readonly day: Day;
}

const Dangers = ({ handover, clock }: HandoverProps) => (
  <section className="stack-close wide">
    <h3>Urgent</h3>
    {handover.dangers.length === 0 ? <p className="soft">{say('none-open')}</p> : null}
    <ul>
      {handover.dangers.map((danger) => (
        <li key={danger.key}>
          <StatusTag shape="stop" tone="danger">
            {danger.acknowledgedBy ? 'Acknowledged' : say('not-acknowledged')}
          </StatusTag>{' '}
          {danger.sentence}{' '}
          <span className="soft">
            {say('since', { since: momentInWords(danger.since, clock) })}{' '}
            {danger.acknowledgedBy ? `${say('by', { name: danger.acknowledgedBy })} ` : ''}
            {danger.assignedName ? say('with', { name: danger.assignedName }) : say('nobody-has-taken')}
          </span>
        </li>
      ))}
    </ul>
    <p className="soft">
      {handover.coveringClinician
        ? say('passes-to', { name: handover.coveringClinician.name })
        : say('passes-to-nobody')}
    </p>
  </section>
);

const Pauses = ({ handover, patientId, colleagues, clock, day }: HandoverProps) => (
  <section className="stack-close">
    <h3>{say('pauses')}</h3>
    {handover.pauses.length + handover.plan.pauses.length === 0 ? (
      <p className="soft">{say('nothing-is-paused')}</p>
    ) : null}
    <ul>
      {handover.plan.pauses.map(({ pause }) => (
        <li key={pause.id}>
          {say('paused-by', {
            what: pause.joint ? jointInWords(pause.joint) : say('paused-all'),
            since: momentInWords(pause.at, clock),
            name: pause.by,
            reason: pause.cause === 'warning-sign' ? say('after-sign') : pause.reason,
          })}
        </li>
      ))}
      {handover.pauses.map(({ decisionId, joint, since, owner }) => (
        <li key={decisionId} className="stack-close">
          <p>
            <strong>{jointInWords(joint)}</strong>, {say('paused', { since: momentInWords(since, clock) })}{' '}
            {owner
              ? say(owner.isOver ? 'follows-up-over' : 'follows-up', {
                  name: owner.name,
                  until: dayInWords(owner.until, day),
                })
              : say('nobody-follows-it-up')}
          </p>
          <OwnPauseForm patientId={patientId} decisionId={decisionId} colleagues={colleagues} />
        </li>
      ))}
    </ul>
  </section>
);

const untilWords = (to: Day | null, isExpired: boolean, day: Day): string =>
  to === null ? say('until-lifted') : say(isExpired ? 'ended' : 'until', { end: dayInWords(to, day) });

type Part<K extends keyof HandoverAnswer> = Pick<HandoverProps, 'day' | 'clock'> & {
  readonly handover: Pick<HandoverAnswer, K>;
};

export const Limits = ({ handover, day }: Part<'limits'>) => (
  <section className="stack-close">
    <h3>Limits</h3>
    {handover.limits.length === 0 ? <p className="soft">{say('none-in-force')}</p> : null}
    <ul>
      {handover.limits.map((limit) => (
        <li key={`${limit.joint} ${limit.kind} ${limit.from}`}>
          <strong>{jointInWords(limit.joint)}</strong>: {limit.kind.replace('-', ' ')}
          {limit.limitKg === null ? '' : `, ${say('no-more-than-kg', { load: limit.limitKg })}`}
          {boundInWords(limit)}, {untilWords(limit.to, limit.isExpired, day)}.{' '}
          <span className="soft">{say('set-by', { author: limit.author })}</span>
        </li>
      ))}
    </ul>
  </section>
);

const clearedWords = {
  clinician: say('a-clinician-may-clear'),
  physician: say('a-physician-must-clear'),
} as const;

export const IneligibleMethods = ({ handover }: Pick<Part<'closed'>, 'handover'>) => (
  <section className="stack-close wide">
    <h3>{say('methods')}</h3>
    {handover.closed.length === 0 ? <p className="soft">{say('no-method')}</p> : null}
    <ul>
      {handover.closed.map((line) => (
        <li key={`${line.method} ${line.text}`}>
          <strong>{methodInWords[line.method]}</strong>: {line.text}{' '}
          <span className="soft">
            {line.limbs.length === 4
              ? `${say('every-limb')} `
              : `${listed(line.limbs.map(({ limb, side }) => `${side} ${limb}`))}. `}
            {line.clearedBy ? clearedWords[line.clearedBy] : ''}
          </span>
        </li>
      ))}
    </ul>
  </section>
);

export const Decisions = ({ handover, clock, day }: Part<'decisions' | 'overrides'>) => (
  <section className="stack-close">
    <h3>{say('last-three-decisions')}</h3>
    {handover.decisions.length === 0 ? <p className="soft">{say('none-yet')}</p> : null}
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
                ? `${say('no-rule-prevented-progress')} `
                : `${listed(row.reasons.map((reason) => `${reason.rule} (${reason.threshold})`))}. `}
              {row.answer ? say('answered-by', { name: row.answer.answeredName }) : say('not-answered')}
            </span>
          </li>
        );
      })}
    </ul>
    <h4>Overrides</h4>
    {handover.overrides.length === 0 ? <p className="soft">{say('no-override-is-in-force')}</p> : null}
    <ul>
      {handover.overrides.map((row) => (
        <li key={`${row.joint} ${row.until}`}>
          <strong>{jointInWords(row.joint)}</strong>:{' '}
          {say('override', {
            word: decisionStatus[row.instead].word,
            proposed: decisionStatus[row.engine].word,
            until: dayInWords(row.until, day),
          })}{' '}
          <span className="soft">
            {row.by}: {row.reason}
          </span>
        </li>
      ))}
    </ul>
  </section>
);

const careWords = ({ state, change }: HandoverAnswer['episodeStatus'], day: Day): string =>
  state === 'not-recorded' || !change
    ? say('no-episode-of-care')
    : say('care-since', {
        state: stateInWords[change.to],
        on: dayInWords(change.on, day),
        reason: change.reason,
      });

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
      <Doses handover={props.handover} />
    </div>
  </div>
);
