/** What is to be measured again and when, each with its rhythm, to change or to stop. */
import type { RetestDue, RetestStopped } from '#core/assessment/retest-plan.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import { addDays, type Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/outcomes.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { RetestForm, StopRetestForm } from './retest-forms.tsx';

interface RetestsProps {
  readonly patientId: string;
  readonly retests: readonly RetestDue[];
  readonly day: Day;
}

const dueInWords = ({ on }: RetestDue, day: Day): string => {
  if (on === null) return say('retest.done');
  if (on === day) return say('retest.today');
  return say(on < day ? 'retest.due' : 'retest.next', { date: dayInWords(on, day) });
};

const aboutRetest = (retest: RetestDue, day: Day): string =>
  [
    retest.everyDays === null ? say('retest.once') : say('retest.every', { days: retest.everyDays }),
    retest.lastOn === null
      ? say('retest.never')
      : say('retest.last', { date: dayInWords(retest.lastOn, day) }),
  ].join(' · ');

const Retest = ({
  retest,
  patientId,
  day,
}: Omit<RetestsProps, 'retests'> & { readonly retest: RetestDue }) => (
  <li className="stack-close keep-together">
    <p>
      <a href={`/patients/${patientId}/measurements?kind=${retest.measure}`}>{retest.title}</a>{' '}
      <strong>{dueInWords(retest, day)}</strong> <span className="soft">{aboutRetest(retest, day)}</span>
    </p>
    <div className="screen-only">
      <Disclosure
        summary={
          <>
            {say('retest.change')}
            <span className="visually-hidden">: {retest.title}</span>
          </>
        }
      >
        <RetestForm patientId={patientId} planned={retest} />
        <StopRetestForm patientId={patientId} measure={retest.measure} />
      </Disclosure>
    </div>
  </li>
);

/** What is no longer due, and why: not measuring it again was somebody's choice. */
const Stopped = ({ stopped, day }: { readonly stopped: readonly RetestStopped[]; readonly day: Day }) =>
  stopped.length === 0 ? null : (
    <ul className="plain-list lined">
      {stopped.map(({ measure, title, on, reason }) => (
        <li key={measure} className="soft">
          {say('retest.stopped', { measure: title, date: dayInWords(on, day), reason })}
        </li>
      ))}
    </ul>
  );

export const Retests = ({
  retests,
  stopped,
  ...at
}: RetestsProps & { readonly stopped: readonly RetestStopped[] }) => (
  <section className="stack-close" id="retests">
    <h2>{say('retest.title')}</h2>
    {retests.length === 0 ? <p className="soft">{say('retest.none')}</p> : null}
    <ul className="plain-list lined">
      {retests.map((retest) => (
        <Retest key={retest.measure} retest={retest} {...at} />
      ))}
    </ul>
    <Stopped stopped={stopped} day={at.day} />
    <div className="screen-only">
      <Disclosure summary={say('retest.plan')}>
        <RetestForm patientId={at.patientId} planned={null} />
      </Disclosure>
    </div>
  </section>
);

/** Beside the week that is planned: what falls due in it, and what is due already. */
export const RetestsThisWeek = ({ retests, patientId, day }: RetestsProps) => {
  const due = retests.filter(({ on }) => on !== null && on < addDays(day, 7));
  return due.length === 0 ? null : (
    <section className="stack-close">
      <h2>{say('retest.week')}</h2>
      <ul className="plain-list lined">
        {due.map((retest) => (
          <li key={retest.measure}>
            <a href={`/patients/${patientId}/measurements?kind=${retest.measure}`}>{retest.title}</a>{' '}
            <span className="soft">{dueInWords(retest, day)}</span>
          </li>
        ))}
      </ul>
    </section>
  );
};
