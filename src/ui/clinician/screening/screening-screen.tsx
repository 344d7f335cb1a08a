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

export const ScreeningScreen = (props: {
  readonly patientId: string;
  readonly screening: ScreeningFormAnswer;
  readonly outcomes: readonly MethodOutcome[];
  readonly day: Day;
}) => (
  <div className="stack-wide">
    <p className="lead">{ageInWords(props.screening.newest, props.day)}</p>
    <section className="stack-close">
      <h2>Eligibility</h2>
      <OutcomeTable outcomes={props.outcomes} />
      {props.screening.newest ? (
        <Disclosure summary={say('clear.summary')}>
          <ClearanceForm patientId={props.patientId} outcomes={props.outcomes} />
        </Disclosure>
      ) : null}
    </section>
    <section className="stack-close screen-only">
      <h2>{props.screening.newest ? say('again') : 'Screen'}</h2>
      <ScreeningForm patientId={props.patientId} screening={props.screening} />
    </section>
  </div>
);
