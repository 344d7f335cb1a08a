/** At the end of a page: what was entered there, each line with a way to mark it as entered in error. */
import type { CorrectionSubject } from '#core/corrections/correction.ts';
import { dayInWords } from '#core/review/plain-words.ts';
import type { Day } from '#core/time/day.ts';
import { say } from '#messages/en/staff/corrections.ts';
import { Disclosure } from '#ui/design-system/disclosure.tsx';
import { StatusTag } from '#ui/design-system/status-tag.tsx';
import type { Correction, EnteredRow } from '../answers.ts';
import { StruckNote } from '../notes/struck-note.tsx';
import { CorrectEntry } from './correct-entry.tsx';
import { entryInWords } from './entry-words.ts';
import { NewPlan } from './new-plan.tsx';

export interface CorrectionsSectionProps {
  readonly patientId: string;
  readonly day: Day;
  readonly of: readonly { readonly subject: CorrectionSubject; readonly rows: readonly EnteredRow[] }[];
  readonly corrections: readonly Correction[];
}

const titles: Readonly<Record<CorrectionSubject, string>> = {
  measurement: 'Measurements',
  screening: 'Screenings',
  event: 'Events',
  limit: 'Limits',
  goal: 'Goals',
  baseline: say('baselines'),
  'effusion-test': say('knee-effusion-tests'),
  clearance: say('findings-cleared'),
  'supervised-session': say('supervised-sessions'),
  'home-answers': say('answers-at-home'),
  contact: 'Contacts',
  note: 'Notes',
  visit: 'Appointments',
};

interface LineProps {
  readonly patientId: string;
  readonly day: Day;
  readonly subject: CorrectionSubject;
  readonly row: EnteredRow;
}

const Line = ({ patientId, day, subject, row }: LineProps) => {
  const words = `${dayInWords(row.day, day)}: ${entryInWords(subject, row.entered)}`;
  if (row.enteredInError) {
    const { reason, by, replacedById } = row.enteredInError;
    return (
      <li>
        <StatusTag shape="note" tone="soft">
          {say('entered-in-error')}
        </StatusTag>{' '}
        <s>{words}</s>{' '}
        {say(replacedById ? 'replaced-by' : 'struck-out-by', { by: by ?? '', reason: reason ?? '' })}
        {subject === 'note' ? <StruckNote entered={row.entered} /> : null}
      </li>
    );
  }
  return (
    <li>
      {words} <CorrectEntry patientId={patientId} subject={subject} row={row} words={words} />
    </li>
  );
};

/** Each with its new plan to look at; nothing where none waits. */
export const CorrectionsWaiting = ({
  patientId,
  corrections,
}: Pick<CorrectionsSectionProps, 'patientId' | 'corrections'>) =>
  corrections
    .filter((row) => row.waitsToBeSeen)
    .map((row) => (
      <div key={row.id} className="notice notice-care stack-close">
        <p>
          {say('corrected-by', { name: row.correctedName })}{' '}
          {row.was ? entryInWords(row.subject, row.was) : ''}{' '}
          {row.now ? say('is-now', { entry: entryInWords(row.subject, row.now) }) : say('is-struck-out')}.{' '}
          {say('both-count')}
        </p>
        <NewPlan patientId={patientId} correctionId={row.id} />
      </div>
    ));

export const CorrectionsSection = (props: CorrectionsSectionProps) => (
  <section className="stack-close screen-only">
    <h2>Corrections</h2>
    <CorrectionsWaiting {...props} />
    <div className="opens-in-row">
      {props.of.map(({ subject, rows }) => (
        <Disclosure key={subject} summary={say('correct-an-entry', { subject: titles[subject] })}>
          <ul className="plain-list stack-close">
            {rows.map((row) => (
              <Line key={row.id} patientId={props.patientId} day={props.day} subject={subject} row={row} />
            ))}
          </ul>
          {rows.length === 0 ? <p>{say('nothing-is-recorded-yet')}</p> : null}
        </Disclosure>
      ))}
    </div>
  </section>
);
