/** What a clinician who opened the record then would have read beside the plan. */
import { signsInWords } from '#core/danger/sign-words.ts';
import { dayInWords, jointInWords } from '#core/review/plain-words.ts';
import { say } from '#messages/en/staff/review/known-then.ts';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import type { KnownThen } from '../../answers.ts';
import { type ClinicClock, momentInWords } from '../../when.ts';
import { contactInWords, decisionStatus, todayInWords } from '../../words.ts';

interface Props {
  readonly known: KnownThen;
  readonly clock: ClinicClock;
}

const said = (value: number | null): string => (value === null ? say('not-said') : String(value));

/** What stood for each joint: the newest decision, or what a clinician had put in its place. */
export const InForce = ({ known }: Pick<Props, 'known'>) => {
  const joints = [...known.handover.plan.joints.values()];
  return (
    <section className="stack-close">
      <h3>{say('in-force')}</h3>
      {joints.length === 0 ? <p className="soft">{say('in-force.none')}</p> : null}
      <ul>
        {joints.map(({ joint, decision, today, contact, from }) => {
          const { word, shape, tone } = decisionStatus[decision];
          return (
            <li key={joint}>
              <StatusTag shape={shape} tone={tone}>
                {word}
              </StatusTag>{' '}
              {jointInWords(joint)}: {todayInWords[today]}, {contactInWords[contact]}.{' '}
              <span className="soft">{say(`in-force.${from}`)}</span>
            </li>
          );
        })}
      </ul>
    </section>
  );
};

export const UsualValues = ({ known }: Pick<Props, 'known'>) => (
  <section className="stack-close">
    <h3>{say('usual')}</h3>
    {known.baselines.length === 0 ? <p className="soft">{say('usual.none')}</p> : null}
    <ul>
      {known.baselines.map((row) => (
        <li key={row.joint}>
          {say('usual.line', {
            'joint-name': jointInWords(row.joint),
            pain: said(row.usualPain),
            top: said(row.usualPainTop),
            limit: row.acceptablePainLimit,
            on: dayInWords(row.setOn),
            by: row.setBy,
          })}
        </li>
      ))}
    </ul>
  </section>
);

export const SignsAndPauses = ({ known, clock }: Props) => {
  const { signs, pauses } = known.handover.plan;
  return (
    <section className="stack-close">
      <h3>{say('signs')}</h3>
      {signs.length === 0 ? <p className="soft">{say('signs.none')}</p> : null}
      <ul>
        {signs.map(({ sign, endedBy }) => (
          <li key={sign.id}>
            {say('signs.line', {
              signs: signsInWords(sign.flags),
              at: momentInWords(sign.reportedAt, clock),
            })}{' '}
            {endedBy
              ? say('signs.ended', { name: endedBy.by, at: momentInWords(endedBy.at, clock) })
              : say('signs.open')}
          </li>
        ))}
      </ul>
      <h3>{say('pauses')}</h3>
      {pauses.length + known.handover.pauses.length === 0 ? (
        <p className="soft">{say('pauses.none')}</p>
      ) : null}
      <ul>
        {pauses.map(({ pause }) => (
          <li key={pause.id}>
            {say('pauses.line', {
              what: pause.joint ? jointInWords(pause.joint) : say('pauses.all'),
              since: momentInWords(pause.at, clock),
            })}
          </li>
        ))}
        {known.handover.pauses.map(({ decisionId, joint, since }) => (
          <li key={decisionId}>
            {say('pauses.line', { what: jointInWords(joint), since: momentInWords(since, clock) })}
          </li>
        ))}
      </ul>
    </section>
  );
};

export const ScreeningThen = ({ known: { screening } }: Pick<Props, 'known'>) => (
  <section className="stack-close">
    <h3>{say('screening')}</h3>
    {screening === null ? (
      <p>{say('screening.none')}</p>
    ) : (
      <p>
        {say(screening.answers.length === 0 ? 'screening.clear' : 'screening.some', {
          date: dayInWords(screening.day),
        })}
      </p>
    )}
    <ul>
      {screening?.answers.map(({ item, answer, question }) => (
        <li key={item}>
          {question}: {say(answer === 'yes' ? 'screening.yes' : 'screening.unknown')}
        </li>
      ))}
    </ul>
  </section>
);

const written = ({ messages, patientMessages }: KnownThen) =>
  [
    ...messages.map(({ id, text, sentAt, sentName }) => ({ id, text, at: sentAt, by: sentName })),
    ...patientMessages.map(({ id, text, recordedAt, byName }) => ({
      id,
      text,
      at: recordedAt,
      by: say('messages.from-patient', { name: byName }),
    })),
  ].sort((a, b) => b.at - a.at);

export const MessagesThen = ({ known, clock }: Props) => (
  <section className="stack-close">
    <h3>{say('messages')}</h3>
    {written(known).length === 0 ? <p className="soft">{say('messages.none')}</p> : null}
    <ul className="plain-list stack-close">
      {written(known).map(({ id, text, at, by }) => (
        <li key={id}>
          {text}{' '}
          <span className="soft">
            {by}, {momentInWords(at, clock)}
          </span>
        </li>
      ))}
    </ul>
    <p className="soft small">{say('messages.read')}</p>
  </section>
);
