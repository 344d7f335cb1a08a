/** Warning signs and pauses of one patient: what is open, what was tried, and what may be done about it. */
import { mostHoursOf } from '#core/danger/contact-again.ts';
import { holdsBack, type PauseState, type SignState } from '#core/danger/danger-state.ts';
import { signsInWords } from '#core/danger/sign-words.ts';
import { exerciseTitle } from '#core/exercises/catalogue.ts';
import { openSigns } from '#core/plan/plan.ts';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say as sayIncident } from '#messages/en/staff/administration/incidents.ts';
import { say } from '#messages/en/staff/danger.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import type { DangerAnswer } from '../answers.ts';
import { capital } from '../capital.ts';
import { type ClinicClock, momentInWords } from '../when.ts';
import { ContactForm } from './contact-form.tsx';
import { PlanView } from './plan-view.tsx';
import { PauseForm, ReportForm } from './report-forms.tsx';
import { ResumeForm } from './resume-form.tsx';

export interface DangerProps {
  readonly patientId: string;
  readonly danger: DangerAnswer;
  readonly clock: ClinicClock;
  readonly day: Day;
}

const sourceInWords = {
  patient: say('sent-by-the-patient'),
  telephone: say('reported-to-the-clinic'),
  clinician: say('raised-by-a-clinician'),
  record: say('found-in-the-record'),
} as const;

const OpenSign = ({ state, clock }: { readonly state: SignState; readonly clock: ClinicClock }) => {
  const { sign, acknowledged, failedAttempts, contactDueAt } = state;
  return (
    <li>
      <StatusTag shape="stop" tone="danger">
        {sign.urgency === 'emergency'
          ? 'Emergency'
          : sign.urgency === 'same-day'
            ? say('same-day')
            : 'Routine'}
      </StatusTag>{' '}
      <strong>{capital(signsInWords(sign.flags))}</strong>
      {sign.joint ? `, ${jointInWords(sign.joint)}` : ''}; {sourceInWords[sign.source]}{' '}
      {momentInWords(sign.reportedAt, clock)}.{' '}
      <span className="soft">
        {acknowledged ? say('acknowledged-by', { name: acknowledged.by }) : say('not-acknowledged')}{' '}
        {failedAttempts > 0 ? `${say('tried', { count: failedAttempts })} ` : ''}
        {contactDueAt === null ? '' : say('contact-due', { at: momentInWords(contactDueAt, clock) })}
      </span>
    </li>
  );
};

const OpenSigns = ({ patientId, danger, clock }: DangerProps) => {
  const open = openSigns(danger.plan);
  const calls = danger.plan.asks.filter(
    ({ settled, contact }) => settled === null && (contact === 'same-day' || contact === 'emergency'),
  );
  return (
    <section className="stack-close" aria-labelledby="open-signs">
      <h2 id="open-signs">{say('open-warning-signs')}</h2>
      {open.length === 0 ? <p className="soft">{say('none-is-open')}</p> : null}
      <ul>
        {open.map((state) => (
          <OpenSign key={state.sign.id} state={state} clock={clock} />
        ))}
        {calls.map(({ id, joint, contact, evaluatedAt }) => (
          <li key={id}>
            {say(contact === 'emergency' ? 'call-emergency' : 'call-today', {
              'joint-name': jointInWords(joint),
              'evaluated-at': momentInWords(evaluatedAt, clock),
            })}
          </li>
        ))}
      </ul>
      {open.length + calls.length > 0 ? (
        <>
          {open.length > 0 ? <p>{say('everything-is-paused')}</p> : null}
          <h3 className="screen-only">Contact</h3>
          <ContactForm
            key={danger.contacts.length}
            patientId={patientId}
            signIds={open.map(({ sign }) => sign.id)}
            decisionIds={calls.map(({ id }) => id)}
            againHours={danger.againHours}
            mostHours={mostHoursOf(
              [...open.map(({ sign }) => sign.urgency), ...calls.map(({ contact }) => contact)],
              danger.mostAgainHours,
            )}
          />
        </>
      ) : null}
    </section>
  );
};

const causeInWords = {
  'warning-sign': say('after-a-warning-sign'),
  holiday: 'Holiday',
  operation: 'Operation',
  other: 'Paused',
} as const;

const OnePause = ({ state, ...props }: DangerProps & { readonly state: PauseState }) => {
  const { pause } = state;
  const held = props.danger.plan.items
    .filter((item) => holdsBack(state, item))
    .map(({ itemId, exerciseId }) => ({ itemId, title: exerciseTitle(exerciseId) }));
  return (
    <li className="stack-close">
      <p>
        <strong>{causeInWords[pause.cause]}</strong>, {pause.joint ? jointInWords(pause.joint) : 'everything'}
        , {say('since', { at: momentInWords(pause.at, props.clock), reason: pause.reason })}{' '}
        <span className="soft">({pause.by})</span>{' '}
        {pause.until ? say('look-again-on', { until: dayInWords(pause.until, props.day) }) : ''}
      </p>
      {openSigns(props.danger.plan).length > 0 ? (
        <p className="soft">{say('sign-is-open')}</p>
      ) : (
        <ResumeForm
          key={held.map(({ itemId }) => itemId).join()}
          patientId={props.patientId}
          pauseId={pause.id}
          held={held}
        />
      )}
    </li>
  );
};

const Pauses = (props: DangerProps) => (
  <section className="stack-close" aria-labelledby="pauses">
    <h2 id="pauses">Pauses</h2>
    {props.danger.plan.pauses.length === 0 ? <p className="soft">{say('nothing-is-paused')}</p> : null}
    <ul className="plain-list stack">
      {props.danger.plan.pauses.map((state) => (
        <OnePause key={state.pause.id} state={state} {...props} />
      ))}
    </ul>
  </section>
);

const Contacts = ({ danger, clock }: DangerProps) =>
  danger.contacts.length === 0 ? null : (
    <section className="stack-close" aria-labelledby="contacts">
      <h2 id="contacts">Contacts</h2>
      <ul>
        {danger.contacts.toReversed().map((one) => (
          <li key={one.id}>
            {momentInWords(one.at, clock)}, {one.by}:{' '}
            {one.reached === 'nobody'
              ? one.nextAt
                ? say('reached.nobody-yet', { at: momentInWords(one.nextAt, clock) })
                : say('reached.nobody')
              : [
                  say(one.reached === 'carer' ? 'reached.carer' : 'reached.patient'),
                  say('found-and-advised', { found: one.found ?? '', advised: one.advised ?? '' }),
                  one.referredTo ? say('referred-to-whom', { name: one.referredTo }) : '',
                ]
                  .filter(Boolean)
                  .join(' ')}
          </li>
        ))}
      </ul>
    </section>
  );

export const DangerScreen = (props: DangerProps) => (
  <div className="stack-wide">
    <div className="sections">
      <OpenSigns {...props} />
      <div className="stack-wide">
        <PlanView plan={props.danger.plan} clock={props.clock} />
        <Pauses {...props} />
      </div>
    </div>
    {/* A contact just recorded is announced; until then nothing stands here. */}
    <div aria-live="polite">
      <Contacts {...props} />
    </div>
    <section className="stack-close screen-only">
      <Disclosure summary={say('report-by-telephone')}>
        <ReportForm patientId={props.patientId} />
      </Disclosure>
      <Disclosure summary={say('pause')}>
        <PauseForm patientId={props.patientId} />
      </Disclosure>
      <a href={`/incidents?patient=${props.patientId}`}>{sayIncident('from-record')}</a>
    </section>
    <p className="soft">{say('proposed')}</p>
  </div>
);
