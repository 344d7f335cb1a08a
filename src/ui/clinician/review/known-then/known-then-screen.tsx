/** A record as it was known at a past instant: for looking into what happened, with nothing in it that came later. */
import { dayInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/review/known-then.ts';
import { Button } from '#ui/design-system/button.tsx';
import { ErrorMessage } from '#ui/design-system/error-message.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import { TextField } from '#ui/design-system/text-field.tsx';
import type { KnownThen, KnownThenAnswer } from '../../answers.ts';
import { PlanView } from '../../danger/plan-view.tsx';
import { Doses } from '../../handover/handover-doses.tsx';
import { Decisions, IneligibleMethods, Limits } from '../../handover/handover-screen.tsx';
import { type ClinicClock, momentInWords } from '../../when.ts';
import { AnswersThen } from './answers-then.tsx';
import { OnThePhone } from './on-the-phone.tsx';
import { InForce, MessagesThen, ScreeningThen, SignsAndPauses, UsualValues } from './to-the-clinician.tsx';

const Worklist = ({ known, clock }: { readonly known: KnownThen; readonly clock: ClinicClock }) => (
  <section className="stack-close" aria-labelledby="then-worklist">
    <h3 id="then-worklist">{say('worklist')}</h3>
    {known.items.length === 0 ? <p className="soft">{say('worklist.none')}</p> : null}
    <ul>
      {known.items.map((item) => (
        <li key={item.key}>
          {item.work === 'danger' ? (
            <>
              <StatusTag shape="stop" tone="danger">
                Urgent
              </StatusTag>{' '}
            </>
          ) : null}
          {item.sentence}{' '}
          <span className="soft">
            {say('worklist.since', { at: momentInWords(item.since, clock) })}{' '}
            {item.acknowledgedBy
              ? say('worklist.read', { name: item.acknowledgedBy })
              : say('worklist.unread')}{' '}
            {item.assignedName ? say('worklist.with', { name: item.assignedName }) : ''}
          </span>
        </li>
      ))}
    </ul>
  </section>
);

interface ThenProps {
  readonly answer: KnownThenAnswer & { readonly known: KnownThen };
  /** Stands at the instant that is looked at, so that nothing is told as seen from today. */
  readonly clock: ClinicClock;
}

const Then = ({ answer: { known, day }, clock }: ThenProps) => {
  const { handover } = known;
  return (
    <>
      <p>
        {say('person.as-then', {
          name: known.name,
          born: dayInWords(known.birthDay),
          diagnosis: known.diagnosis ?? say('person.none'),
        })}
      </p>
      <OnThePhone phone={known.phone} />
      <Worklist known={known} clock={clock} />
      <h3>{say('clinic')}</h3>
      <div className="handover">
        <PlanView plan={handover.plan} clock={clock} />
        <InForce known={known} />
        <Decisions handover={handover} clock={clock} day={day} />
        <SignsAndPauses known={known} clock={clock} />
        <Limits handover={handover} clock={clock} day={day} />
        <UsualValues known={known} />
        <Doses handover={handover} />
        <ScreeningThen known={known} />
        <IneligibleMethods handover={handover} />
        <MessagesThen known={known} clock={clock} />
      </div>
      <h3>{say('answers', { date: dayInWords(known.since) })}</h3>
      <AnswersThen known={known} clock={clock} />
    </>
  );
};

const hasRecord = (answer: KnownThenAnswer): answer is ThenProps['answer'] => answer.known !== null;

export interface KnownThenScreenProps {
  readonly patientId: string;
  /** Null while no instant was asked for. */
  readonly answer: KnownThenAnswer | null;
  readonly refused: string | null;
  /** Offered where none was asked for. */
  readonly start: string;
  readonly zone: string;
}

export const KnownThenScreen = ({ patientId, answer, refused, start, zone }: KnownThenScreenProps) => (
  <div className="stack">
    <h2>{say('title')}</h2>
    <p>
      <a href={`/patients/${patientId}/review`}>{say('back')}</a>
    </p>
    <form
      method="get"
      action={`/patients/${patientId}/review/known-then`}
      className="stack-close screen-only"
    >
      <TextField
        name="at"
        type="datetime-local"
        label={say('when')}
        hint={say('when.hint')}
        defaultValue={answer ? `${answer.day}T${answer.time}` : start}
      />
      <Button type="submit">{say('show')}</Button>
    </form>
    {refused ? <ErrorMessage id="known-then-refused">{refused}</ErrorMessage> : null}
    {answer ? (
      <p className="lead">{say('lead', { date: dayInWords(answer.day), time: answer.time })}</p>
    ) : null}
    {answer ? <p>{say('anew')}</p> : null}
    {answer && !hasRecord(answer) ? <p>{say('nobody')}</p> : null}
    {answer && hasRecord(answer) ? <Then answer={answer} clock={{ zone, now: answer.at }} /> : null}
  </div>
);
