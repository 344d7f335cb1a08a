/** Warning signs and pauses of one patient: what is open, what was tried, and what may be done about it. */
import { holdsBack, type PauseState, type SignState } from '#core/danger/danger-state.ts';
import { signsInWords } from '#core/danger/sign-words.ts';
import { exerciseTitle } from '#core/exercises/catalogue.ts';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import type { DangerAnswer } from '../answers.ts';
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
  patient: 'told on the phone',
  telephone: 'told to the clinic',
  clinician: 'raised by a clinician',
  record: 'found in the record',
} as const;

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

const OpenSign = ({ state, clock }: { readonly state: SignState; readonly clock: ClinicClock }) => {
  const { sign, acknowledged, failedAttempts, contactDueAt } = state;
  return (
    <li>
      <StatusTag shape="stop" tone="danger">
        {sign.urgency === 'emergency' ? 'Emergency' : sign.urgency === 'same-day' ? 'Same day' : 'Routine'}
      </StatusTag>{' '}
      <strong>{capital(signsInWords(sign.flags))}</strong>
      {sign.joint ? `, ${jointInWords(sign.joint)}` : ''}; {sourceInWords[sign.source]}{' '}
      {momentInWords(sign.reportedAt, clock)}.{' '}
      <span className="soft">
        {acknowledged ? `Acknowledged by ${acknowledged.by}. ` : 'Not acknowledged. '}
        {failedAttempts > 0
          ? `Tried ${failedAttempts === 1 ? 'once' : `${failedAttempts} times`}, nobody reached. `
          : ''}
        {contactDueAt === null ? '' : `Contact due ${momentInWords(contactDueAt, clock)}.`}
      </span>
    </li>
  );
};

const OpenSigns = ({ patientId, danger, clock }: DangerProps) => {
  const open = danger.plan.signs.filter(({ endedBy }) => endedBy === null);
  const calls = danger.plan.asks.filter(
    ({ settled, contact }) => settled === null && (contact === 'same-day' || contact === 'emergency'),
  );
  return (
    <section className="stack-close" aria-labelledby="open-signs">
      <h2 id="open-signs">Open warning signs</h2>
      {open.length === 0 ? <p className="soft">None is open.</p> : null}
      <ul>
        {open.map((state) => (
          <OpenSign key={state.sign.id} state={state} clock={clock} />
        ))}
        {calls.map(({ id, joint, evaluatedAt }) => (
          <li key={id}>
            A call is asked for today about the {jointInWords(joint)}, {momentInWords(evaluatedAt, clock)}.
          </li>
        ))}
      </ul>
      {open.length + calls.length > 0 ? (
        <>
          {open.length > 0 ? (
            <p>
              Everything is paused. A sign ends only by a contact that reached the patient, or the person who
              cares for her or him.
            </p>
          ) : null}
          <h3>Contact</h3>
          <ContactForm
            key={danger.contacts.length}
            patientId={patientId}
            signIds={open.map(({ sign }) => sign.id)}
            decisionIds={calls.map(({ id }) => id)}
            againHours={danger.againHours}
            now={clock.now}
          />
        </>
      ) : null}
    </section>
  );
};

const causeInWords = {
  'warning-sign': 'After a warning sign',
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
        , since {momentInWords(pause.at, props.clock)}: {pause.reason}{' '}
        <span className="soft">{pause.by}.</span>{' '}
        {pause.until ? `To be looked at on ${dayInWords(pause.until, props.day)}.` : ''}
      </p>
      {state.isSignOpen ? (
        <p className="soft">Its warning sign is open; nothing can be resumed yet.</p>
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
    {props.danger.plan.pauses.length === 0 ? <p className="soft">Nothing is paused.</p> : null}
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
              ? `nobody reached${one.nextAt ? `; to be tried again ${momentInWords(one.nextAt, clock)}` : ''}.`
              : `reached the ${one.reached === 'carer' ? 'person who cares for the patient' : 'patient'}. Found: ${one.found} Advised: ${one.advised}${one.referredTo ? ` Referred to ${one.referredTo}.` : ''}`}
          </li>
        ))}
      </ul>
    </section>
  );

export const DangerScreen = (props: DangerProps) => (
  <div className="stack-wide">
    <OpenSigns {...props} />
    <PlanView plan={props.danger.plan} />
    <Pauses {...props} />
    <Contacts {...props} />
    <section className="stack-close screen-only">
      <Disclosure summary="Report a warning sign told by telephone">
        <ReportForm patientId={props.patientId} />
      </Disclosure>
      <Disclosure summary="Pause one joint or everything">
        <PauseForm patientId={props.patientId} />
      </Disclosure>
    </section>
    <p className="soft">
      Classes and times are proposed, to be confirmed by a licensed clinician and local rules. Not checked:
      anything not entered in Loadgate.
    </p>
  </div>
);
