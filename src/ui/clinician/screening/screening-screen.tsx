/** Screening: what it leaves of each method, then the sheet, then the earlier versions. */

import { dayInWords } from '#core/review/plain-words.ts';
import type { MethodOutcome } from '#core/screening/screening.ts';
import { type Day, daysBetween } from '#core/time/day.ts';
import { say } from '#messages/en/staff/screening.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import type { ScreeningFormAnswer } from '../answers.ts';
import { ClearanceForm } from './clearance-form.tsx';
import { OutcomeTable } from './outcome-table.tsx';
import { ScreeningForm } from './screening-form.tsx';

const ageInWords = (newest: ScreeningFormAnswer['newest'], day: Day): string => {
  if (!newest) return say('none');
  const days = daysBetween(newest.day, day);
  const when =
    days === 0 ? 'today' : days === 1 ? 'yesterday' : say('days-ago', { days, date: dayInWords(newest.day) });
  return say('newest', { version: newest.version, when, answers: newest.answers.length });
};

interface ScreeningScreenProps {
  readonly patientId: string;
  readonly screening: ScreeningFormAnswer;
  readonly outcomes: readonly MethodOutcome[];
  readonly day: Day;
  /** The whole sheet was asked for, whatever little is asked again. */
  readonly isWhole: boolean;
}

const hasExpired = (outcomes: readonly MethodOutcome[]): boolean =>
  outcomes.some(({ reasons }) => reasons.some(({ code }) => code === 'screening-expired'));

/** The sheet stands open while it is due: never filled in, not wholly answered, or too old. */
const isSheetDue = ({ newest, items }: ScreeningFormAnswer, outcomes: readonly MethodOutcome[]): boolean =>
  !newest || newest.answers.length < items.length || hasExpired(outcomes);

const Sheet = ({ patientId, screening, outcomes, isWhole }: ScreeningScreenProps) => {
  const form = <ScreeningForm patientId={patientId} screening={screening} />;
  return isWhole || isSheetDue(screening, outcomes) ? (
    <section className="stack-close screen-only">
      <h2>{screening.newest ? say('again') : say('screen')}</h2>
      {form}
    </section>
  ) : (
    <section className="screen-only" aria-label={say('again')}>
      <Disclosure summary={say('again')}>{form}</Disclosure>
    </section>
  );
};

const isLittleAsked = ({ screening, outcomes, isWhole }: ScreeningScreenProps): boolean =>
  screening.again.items.length > 0 && !isWhole && !hasExpired(outcomes);

/** What a change of treatment asks again, in place of the whole sheet, which one press opens. */
const AskAgain = ({ patientId, screening, day }: ScreeningScreenProps) => {
  const { events, items } = screening.again;
  const asked = {
    ...screening,
    items: screening.items.filter(({ id }) => items.some((item) => item === id)),
  };
  return (
    <section className="stack-close screen-only">
      <h2>{say('again.title')}</h2>
      <ul className="plain-list">
        {events.map((event) => (
          <li key={event.id}>
            {dayInWords(event.day, day)}: {event.what}
          </li>
        ))}
      </ul>
      <p className="soft">{say('again.why')}</p>
      <ScreeningForm patientId={patientId} screening={asked} isAgain />
      <p>
        <a href={`/patients/${patientId}/screening?whole=1`}>{say('again.whole')}</a>
      </p>
    </section>
  );
};

export const ScreeningScreen = (props: ScreeningScreenProps) => (
  <div className="stack-wide">
    {/* Recorded wholly, the sheet folds and takes its own word of it along. */}
    <p role="status" className="lead">
      {ageInWords(props.screening.newest, props.day)}
    </p>
    <section className="stack-close">
      <h2>Eligibility</h2>
      <OutcomeTable outcomes={props.outcomes} />
      {props.screening.newest ? (
        <Disclosure summary={say('clear.summary')}>
          <ClearanceForm patientId={props.patientId} outcomes={props.outcomes} />
        </Disclosure>
      ) : null}
    </section>
    {isLittleAsked(props) ? <AskAgain {...props} /> : <Sheet {...props} />}
  </div>
);
